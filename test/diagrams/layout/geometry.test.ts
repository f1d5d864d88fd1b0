import { describe, expect, test } from 'vitest';
import { inches, mm, planJoint } from '../../../src/core/index.ts';
import { arrangeLayout } from '../../../src/diagrams/layout/arrange.ts';
import { describeLayout } from '../../../src/diagrams/layout/describe.ts';
import { layoutShapes } from '../../../src/diagrams/layout/geometry.ts';
import { KINDS, board, ordinaryJoint } from '../../support/joints.ts';
import { labelFaults } from '../../support/labelFaults.ts';

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

describe('a mark on B that is off', () => {
  const plan = planJoint(ordinaryJoint('corner', 'in', inches(3 / 4)));
  const astray = (by: number) => plan.marks.map((mark, i) => (i === 1 ? mark + by : mark));

  test('moves its hole alone, and says where it should have been', () => {
    const [a, b] = layoutShapes(plan, astray(3)).strips;
    expect(b!.holes.map(({ along, meant }) => [along, meant])).toEqual(
      plan.positions.map((at, i) => (i === 1 ? [at + 3, at] : [at, undefined])),
    );
    expect(a!.holes.map(({ along }) => along)).toEqual(plan.positions);
    expect(b!.ownMarks).toBe(true);
    expect(describeLayout(plan, 'mm', astray(3))).toContain('On B the mark of pin 2 is at');
  });

  test('is drawn in the color of cautions, with numbers of its own, and nothing else is', () => {
    for (const width of [300, 640, 960]) {
      const right = arrangeLayout(layoutShapes(plan, plan.marks), width, 'in');
      expect(right.labels.filter(({ caution }) => caution)).toEqual([]);
      const sheet = arrangeLayout(layoutShapes(plan, astray(3)), width, 'in');
      expect(sheet.labels.filter(({ caution }) => caution)).toHaveLength(1);
      expect(labelFaults(sheet), `${width} px`).toEqual([]);
    }
  });

  test('what the reader sets stands in the accent', () => {
    const set = (names: readonly ('margin' | 'length')[]) =>
      arrangeLayout(layoutShapes(plan), 900, 'in', names).labels.filter((label) => label.set)
        .length;
    expect([set([]), set(['margin']), set(['margin', 'length'])]).toEqual([0, 1, 2]);
  });
});
