import { describe, expect, test } from 'vitest';
import { type JointKind, type JointSpec, inches, mm, planJoint } from '../../../src/core/index.ts';
import { sectionShapes } from '../../../src/diagrams/section/geometry.ts';
import type { SectionShapes } from '../../../src/diagrams/section/shapes.ts';
import { KINDS, board, ordinaryJoint } from '../../support/joints.ts';

const ORDINARY = KINDS.map(
  (kind) => [kind, planJoint(ordinaryJoint(kind, 'in', inches(3 / 4)))] as const,
);
/** Kinds whose pins lie level, with the joint at x = 0 and B to the right. */
const level = ([kind]: readonly [JointKind, unknown]) => kind !== 'leg';

const xs = (points: readonly { x: number }[]) => points.map((p) => p.x);
const ys = (points: readonly { y: number }[]) => points.map((p) => p.y);
const boreIn = (shapes: SectionShapes, member: 'a' | 'b') =>
  shapes.bores.find((bore) => bore.member === member)!;

describe('the section of an ordinary joint', () => {
  test.each(ORDINARY)(
    '%s: each hole ends its depth from the joint, its point the tip beyond',
    (_, plan) => {
      const shapes = sectionShapes(plan);
      const { tip } = plan.spec.bit;
      expect(Math.min(...xs(boreIn(shapes, 'a').outline))).toBeCloseTo(-plan.a.holeDepth - tip, 9);
      expect(Math.max(...xs(boreIn(shapes, 'b').outline))).toBeCloseTo(plan.b.holeDepth + tip, 9);
      expect(boreIn(shapes, 'a').shoulder![0].x).toBeCloseTo(-plan.a.holeDepth, 9);
      expect(boreIn(shapes, 'b').shoulder![0].x).toBeCloseTo(plan.b.holeDepth, 9);
    },
  );

  test.each(ORDINARY)(
    '%s: the pin runs from its engagement in A to its engagement in B',
    (_, plan) => {
      const pin = xs(sectionShapes(plan).dowels[0]!.outline);
      expect(Math.min(...pin)).toBeCloseTo(-plan.a.engagement, 9);
      expect(Math.max(...pin)).toBeCloseTo(plan.b.engagement, 9);
    },
  );

  test.each(ORDINARY)('%s: hole and pin are as wide as bit and pin', (_, plan) => {
    const shapes = sectionShapes(plan);
    const height = (values: number[]) => Math.max(...values) - Math.min(...values);
    expect(height(ys(boreIn(shapes, 'a').outline))).toBeCloseTo(plan.spec.bit.diameter, 9);
    expect(height(ys(shapes.dowels[0]!.outline))).toBeCloseTo(plan.pin!.diameter, 9);
  });

  test.each(ORDINARY)('%s: nothing comes out of the wood', (_, plan) => {
    const shapes = sectionShapes(plan);
    expect(shapes.bores.flatMap((bore) => bore.through)).toEqual([]);
    expect(shapes.cautions).toEqual([]);
  });

  test.each(ORDINARY)('%s: every measure has the length that it names', (_, plan) => {
    for (const measure of sectionShapes(plan).measures) {
      if (measure.openAt !== undefined) continue;
      const level = measure.side === 'above' || measure.side === 'below';
      const drawn = level ? measure.to.x - measure.from.x : measure.to.y - measure.from.y;
      expect(drawn, measure.id).toBeCloseTo(measure.value, 9);
    }
  });

  test.each(ORDINARY.filter(level))('%s: apart, the pin is clear of both boards', (_, plan) => {
    const shapes = sectionShapes(plan, 1);
    const pin = xs(shapes.dowels[0]!.outline);
    const mouthOfB = boreIn(shapes, 'b').mouth[0].x;
    expect(Math.min(...pin)).toBeGreaterThan(0);
    expect(Math.max(...pin)).toBeLessThan(mouthOfB);
    expect(shapes.measures.map((m) => m.id)).not.toContain('a.engagement');
  });
});

describe('each kind of joint', () => {
  const planOf = (spec: Partial<JointSpec> & Pick<JointSpec, 'kind'>) =>
    planJoint({ ...ordinaryJoint(spec.kind, 'mm', mm(18)), ...spec });
  const bodyOf = (shapes: SectionShapes, member: string) =>
    shapes.bodies.find((body) => body.member === member)!;

  test('edge: both boards show end grain, slanted opposite ways', () => {
    const { bodies } = sectionShapes(planOf({ kind: 'edge' }));
    expect(bodies.map((body) => body.grain)).toEqual(['end', 'end']);
    expect(bodies[0]!.angle).toBe(-bodies[1]!.angle);
  });

  test('corner: B stands its overhang past A, both cut along their fibers', () => {
    const shapes = sectionShapes(planOf({ kind: 'corner', overhang: mm(6) }));
    expect(Math.min(...ys(bodyOf(shapes, 'b').outline))).toBe(-6);
    expect(Math.max(...xs(bodyOf(shapes, 'b').outline))).toBe(18);
    expect(shapes.bodies.map((body) => body.grain)).toEqual(['long', 'long']);
    expect(shapes.steps).toMatchObject([{ id: 'overhang', value: 6 }]);
  });

  test('corner: A drilled in its edge shows end grain', () => {
    const shapes = sectionShapes(planOf({ kind: 'corner', drilled: 'edge' }));
    expect(bodyOf(shapes, 'a').grain).toBe('end');
  });

  test('tee: B goes on both ways', () => {
    const shapes = sectionShapes(planOf({ kind: 'tee', at: mm(200) }));
    expect(bodyOf(shapes, 'b').breaks).toEqual([0, 2]);
  });

  test('frame: the reveal shows as a step, the rail along and the stile across its fibers', () => {
    const shapes = sectionShapes(planOf({ kind: 'frame', reveal: mm(3) }));
    expect(Math.min(...ys(bodyOf(shapes, 'a').outline))).toBe(0);
    expect(Math.min(...ys(bodyOf(shapes, 'b').outline))).toBe(-3);
    expect(shapes.bodies.map((body) => body.grain)).toEqual(['long', 'end']);
  });

  test('miter: heel and toe lie W√2 apart, the outer corner of the last hole its wood from the edge', () => {
    const plan = planOf({ kind: 'miter', a: board(mm(18), mm(60)), b: board(mm(18), mm(60)) });
    const shapes = sectionShapes(plan);
    const [heel, toe] = bodyOf(shapes, 'a').outline;
    expect(heel!.y - toe!.y).toBeCloseTo(60 * Math.SQRT2, 9);
    expect(shapes.dowels).toHaveLength(plan.positions.length);
    const corner = shapes.slanted.find((s) => s.id === 'a.woodLeft')!;
    // Distance to the outer edge, the line at 45° through the toe.
    const distance = (corner.from.x + corner.from.y - toe!.y) / Math.SQRT2;
    expect(distance).toBeCloseTo(plan.a.woodLeft, 9);
    expect(Math.hypot(corner.to.x - corner.from.x, corner.to.y - corner.from.y)).toBeCloseTo(
      plan.a.woodLeft,
      9,
    );
  });

  test('leg: rows at one height are both seen, rows that pass are dashed', () => {
    const leg = { thickness: mm(44), width: mm(44), length: mm(400) };
    const apron = { thickness: mm(19), width: mm(100), length: mm(400) };
    const meet = sectionShapes(planOf({ kind: 'leg', a: apron, b: leg }));
    const pass = sectionShapes(planOf({ kind: 'leg', a: apron, b: leg, stagger: mm(20) }));
    expect(meet.bores.map((bore) => bore.hidden)).toEqual([false, false, false, false]);
    expect(pass.bores.map((bore) => bore.hidden)).toEqual([false, false, true, true]);
    // The second row lies as far in from its outer face as the first from its own.
    const { setback, a } = planOf({ kind: 'leg', a: apron, b: leg }).spec;
    expect(meet.bores[2]!.mouth[0].x + meet.bores[2]!.mouth[1].x).toBeCloseTo(
      2 * (44 - setback - a.thickness / 2),
      9,
    );
  });
});

describe('a joint that does not work', () => {
  const thin = planJoint({
    kind: 'corner',
    system: 'mm',
    a: board(mm(18)),
    b: board(mm(4)),
    pin: { diameter: mm(8), length: mm(40) },
  });

  test('shows the bit coming out of the far face', () => {
    const shapes = sectionShapes(thin);
    const bore = boreIn(shapes, 'b');
    expect(thin.b.woodLeft).toBeLessThan(0);
    expect(Math.max(...xs(bore.inWood.flat()))).toBeCloseTo(4, 9);
    expect(Math.max(...xs(bore.through.flat()))).toBeCloseTo(4 - thin.b.woodLeft, 9);
    expect(shapes.cautions).toHaveLength(1);
    expect(shapes.measures.find((m) => m.id === 'b.woodLeft')).toMatchObject({ caution: true });
  });

  test('begins to break through just at the face, also where the nearest face changes on the way', () => {
    const member = board(mm(18), mm(30));
    const plan = planJoint({
      kind: 'miter',
      system: 'mm',
      a: member,
      b: member,
      pin: { diameter: mm(8), length: mm(50) },
      bit: { point: { kind: 'square' } },
    });
    const line = plan.spec.jointLength;
    // A hole in A may come out of its inner edge, its outer edge, or both.
    const out = sectionShapes(plan).bores.filter(({ member }) => member === 'a');
    const starts = out.flatMap(({ through }) =>
      through.flatMap((part) => [part[0]!, part.at(-1)!]),
    );
    expect(starts.length).toBeGreaterThan(1);
    for (const { x, y } of starts) {
      expect(Math.min(-(x + y), x + y + line)).toBeCloseTo(0, 9);
    }
  });

  test('shows a hole wider than its board breaking out of both faces', () => {
    const plan = planJoint({
      kind: 'edge',
      system: 'mm',
      a: board(mm(5)),
      b: board(mm(5)),
      pin: { diameter: mm(8), length: mm(40) },
    });
    expect(boreIn(sectionShapes(plan), 'a').through.length).toBeGreaterThan(0);
  });
});
