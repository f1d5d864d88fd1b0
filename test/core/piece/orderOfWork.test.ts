import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, mm, plainText, planJoint } from '../../../src/core/index.ts';
import { canBeMade, orderOfWork } from '../../../src/core/piece/orderOfWork.ts';
import { referencesOf } from '../../../src/core/piece/references.ts';
import { KINDS, ordinaryJoint, sensibleSpec } from '../../support/joints.ts';

function text(plan: ReturnType<typeof planJoint>, id: string): string {
  const step = orderOfWork(plan).find((each) => each.id === id);
  if (!step) throw new Error(`no step ${id}`);
  return `${step.title}. ${plainText(step.says, 'mm')}`;
}

describe('the order of work', () => {
  it.each(KINDS)('of a %s joint names both stops and both depths of the plan', (kind) => {
    const plan = planJoint(ordinaryJoint(kind, 'mm', mm(18)));
    const length = (value: number) =>
      `${Math.round(value * 10) / 10 === value ? '' : '≈'}${Number(value.toFixed(1))} mm`;
    const all = orderOfWork(plan)
      .map(({ says }) => plainText(says, 'mm'))
      .join(' ');
    expect(all).toContain(`Collar at ${length(plan.a.stop)}`);
    expect(text(plan, 'test-a')).toContain(`measure it: ${length(plan.a.holeDepth)}.`);
    expect(text(plan, 'test-b')).toContain(`${length(plan.b.holeDepth)} deep, not through`);
    expect(all).toMatch(/No hand behind the bit/);
  });

  it('tests in offcuts before it drills, and fits dry before it glues', () => {
    fc.assert(
      fc.property(sensibleSpec, (spec) => {
        const plan = planJoint(spec);
        fc.pre(canBeMade(plan));
        const ids = orderOfWork(plan).map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        const inOrder = ['measure', 'marks', 'lay-out', 'stop-a', 'test-a', 'test-b'];
        expect(ids).toEqual([...inOrder, 'drill-b', 'drill-a', 'clean', 'dry-fit', 'glue']);
      }),
      { numRuns: 300 },
    );
  });

  it('sets one stop once, and goes back to the first where there are two', () => {
    const one = planJoint(ordinaryJoint('edge', 'in', inches(3 / 4)));
    expect(one.a.stop).toBeCloseTo(one.b.stop);
    expect(text(one, 'stop-a')).toMatch(/^Stop for A and B/);
    expect(text(one, 'drill-a')).not.toMatch(/Collar/);
    const two = planJoint(ordinaryJoint('corner', 'in', inches(3 / 4)));
    expect(text(two, 'test-b')).toMatch(/Collar at/);
    expect(text(two, 'drill-a')).toMatch(/Collar back at/);
  });

  it('says where on B a shelf or a rail comes', () => {
    const tee = planJoint({ ...ordinaryJoint('tee', 'mm', mm(18)), at: mm(250) });
    expect(text(tee, 'lay-out')).toContain('250 mm from B’s reference end');
    const edgewise = planJoint({
      ...ordinaryJoint('tee', 'mm', mm(18)),
      at: mm(50),
      drilled: 'edge',
    });
    expect(text(edgewise, 'lay-out')).toContain('50 mm from B’s reference edge');
    const frame = planJoint({ ...ordinaryJoint('frame', 'mm', mm(18)), at: mm(120) });
    expect(text(frame, 'lay-out')).toContain('A’s reference edge comes 120 mm from B’s');
  });
});

describe('what boards are measured from', () => {
  it('follows the side that is drilled', () => {
    const tee = ordinaryJoint('tee', 'in', inches(3 / 4));
    expect(referencesOf(planJoint(tee)).a).toMatchObject({ along: 'reference edge' });
    const edgewise = referencesOf(planJoint({ ...tee, drilled: 'edge' }));
    expect(edgewise.a.along).toBe('reference end');
    expect(edgewise.b.across).toBe('reference edge');
    const frame = referencesOf(planJoint(ordinaryJoint('frame', 'in', inches(3 / 4))));
    expect([frame.a.along, frame.b.along]).toEqual(['reference edge', 'reference end']);
  });
});
