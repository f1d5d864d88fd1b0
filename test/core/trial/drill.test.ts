import { describe, expect, it } from 'vitest';
import { type JointPlan, planJoint } from '../../../src/core/index.ts';
import { mm } from '../../../src/core/length/mm.ts';
import { type BenchSetup, drill, slippedHoles, soundSetup } from '../../../src/core/trial/drill.ts';
import { KINDS, ordinaryJoint } from '../../support/joints.ts';

const corner = planJoint({
  kind: 'corner',
  system: 'mm',
  a: { thickness: mm(18), width: mm(300), length: mm(600) },
  b: { thickness: mm(18), width: mm(310), length: mm(800) },
});
const edge = planJoint({
  kind: 'edge',
  system: 'mm',
  a: { thickness: mm(18), width: mm(90), length: mm(600) },
  b: { thickness: mm(22), width: mm(90), length: mm(640) },
  guide: { offset: mm(0.5), standoff: mm(2) },
});

function along(setup: BenchSetup, member: 'a' | 'b'): readonly number[] {
  return drill(setup).pins.map((pin) => pin[member].along);
}

describe('drill', () => {
  it.each(KINDS)('puts both holes of every pin of a sound %s joint in one place', (kind) => {
    const plan = planJoint(ordinaryJoint(kind, 'mm', mm(18)));
    for (const { a, b } of drill(soundSetup(plan)).pins) {
      expect(b.along).toBeCloseTo(a.along, 9);
      expect(b.across).toBeCloseTo(a.across, 9);
    }
  });

  it('drills what the collar lets through beyond bushing and gap, and never less than nothing', () => {
    const sound = soundSetup(edge);
    const depth = (collar: number): number | undefined =>
      drill({ ...sound, a: { ...sound.a, stop: { collar: mm(collar) } } }).pins[0]?.a.depth;
    expect(depth(60)).toBeCloseTo(60 - 25 - 2, 9);
    expect(depth(20)).toBe(0);
  });

  it('counts from the other end where the rule is hooked on it', () => {
    const sound = soundSetup(edge);
    const hooked = { ...sound, b: { ...sound.b, end: 'other' as const } };
    // In the order of the row: the first hole drilled is the last along the joint.
    expect(along(hooked, 'b')).toEqual(edge.marks.map((mark) => 640 - mark).toReversed());
    expect(along(hooked, 'a')).toEqual(edge.marks);
  });

  it('counts across from the other face where a board is turned over, guide’s offset and all', () => {
    const sound = soundSetup(edge);
    const turned = drill({ ...sound, b: { ...sound.b, face: 'other' } });
    expect(turned.pins[0]?.b.across).toBeCloseTo(22 - (9 + 0.5), 9);
    expect(turned.pins[0]?.a.across).toBeCloseTo(9.5, 9);
  });

  it('mirrors a row drilled in the wrong face of a corner’s B', () => {
    const sound = soundSetup(corner);
    const turned = { ...sound, b: { ...sound.b, face: 'other' as const } };
    expect(along(turned, 'b')).toEqual(corner.marks.map((mark) => 310 - mark).toReversed());
    const both = { ...turned, b: { ...turned.b, end: 'other' as const } };
    expect(along(both, 'b')).toEqual(corner.marks);
  });

  it('lets a slipped collar be, until it is set anew for the other board', () => {
    const count = (plan: JointPlan): number => plan.holes.length;
    const slip = (plan: JointPlan, after: number, first: 'a' | 'b' = 'a'): BenchSetup => ({
      ...soundSetup(plan),
      first,
      slip: { after, by: mm(2) },
    });
    // In the corner the two stops differ; in the edge joint one setting serves both boards.
    expect(corner.a.stop).not.toBe(corner.b.stop);
    expect(edge.a.stop).toBe(edge.b.stop);
    expect(slippedHoles(slip(corner, 1), 'a')).toEqual(corner.marks.map((_, j) => j).slice(1));
    expect(slippedHoles(slip(corner, 1), 'b')).toEqual([]);
    expect(slippedHoles(slip(corner, count(corner) + 1), 'a')).toEqual([]);
    expect(slippedHoles(slip(corner, count(corner) + 1), 'b')[0]).toBe(1);
    expect(slippedHoles(slip(edge, 1), 'b')).toEqual(edge.marks.map((_, j) => j));
    expect(slippedHoles(slip(edge, 1, 'b'), 'a')).toEqual(edge.marks.map((_, j) => j));
  });

  it('names what is wrong with a setup', () => {
    const sound = soundSetup(edge);
    expect(() => drill({ ...sound, a: { ...sound.a, marks: [] } })).toThrow('a.marks');
    expect(() => drill({ ...sound, slip: { after: 0.5, by: mm(1) } })).toThrow('slip.after');
    expect(() => drill({ ...sound, pin: { ...sound.pin, diameter: mm(NaN) } })).toThrow(TypeError);
    expect(() => drill({ ...sound, b: { ...sound.b, stop: { byEye: [mm(1)] } } })).toThrow(
      'b.stop.byEye',
    );
  });
});
