import { describe, expect, test } from 'vitest';
import { inches, mm, planJoint } from '../../../src/core/index.ts';
import { layoutShapes } from '../../../src/diagrams/layout/geometry.ts';
import { KINDS, board, ordinaryJoint } from '../../support/joints.ts';

describe('the layout of a joint', () => {
  test.each(KINDS)('%s: A and B have the same places, and the plan its marks', (kind) => {
    const plan = planJoint(ordinaryJoint(kind, 'in', inches(3 / 4)));
    const [a, b] = layoutShapes(plan).strips;
    expect(a!.holes.map((hole) => hole.along)).toEqual(plan.positions);
    expect(b!.holes.map((hole) => hole.along)).toEqual(plan.positions);
    expect(a!.holes.map((hole) => hole.mark)).toEqual(plan.marks);
    expect(a!.across).toBeCloseTo(plan.holes[0]!.acrossA, 9);
    expect(b!.across).toBeCloseTo(plan.holes[0]!.acrossB, 9);
  });

  test('a stile counts its marks from its own end', () => {
    const plan = planJoint({
      kind: 'frame',
      system: 'mm',
      a: board(mm(20), mm(60)),
      b: board(mm(20), mm(60)),
      at: mm(40),
    });
    const [a, b] = layoutShapes(plan).strips;
    expect(b!.start).toEqual({ at: -40, whole: true });
    expect(b!.holes.map((hole) => hole.mark)).toEqual(a!.holes.map((hole) => hole.mark + 40));
    expect(b!.ownMarks).toBe(true);
  });

  test('a leg has a second face with the second row', () => {
    const plan = planJoint({ ...ordinaryJoint('leg', 'mm', mm(18)), stagger: mm(20) });
    const second = layoutShapes(plan).strips[2]!;
    expect(second.holes.map((hole) => hole.along)).toEqual(plan.secondRow);
  });
});
