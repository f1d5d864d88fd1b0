import { describe, expect, test } from 'vitest';
import { type BitPoint, type Mm, inches, mm, planJoint } from '../../../src/core/index.ts';
import { arrangeStop } from '../../../src/diagrams/stop/arrange.ts';
import { describeStop } from '../../../src/diagrams/stop/describe.ts';
import { stopShapes } from '../../../src/diagrams/stop/geometry.ts';
import { ordinaryJoint } from '../../support/joints.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const POINTS: readonly BitPoint[] = [
  { kind: 'twist', angle: 118 },
  { kind: 'brad' },
  { kind: 'center', spur: mm(6) },
  { kind: 'square' },
];

describe('the stop on the bit', () => {
  test.each(POINTS)('$kind: bushing, gap and hole depth add up to the stop', (point) => {
    const plan = planJoint({
      ...ordinaryJoint('corner', 'in', inches(3 / 4)),
      bit: { point },
      guide: { bushing: inches(1), standoff: inches(1 / 4) },
    });
    for (const member of ['a', 'b'] as const) {
      const shapes = stopShapes(plan, member);
      const alongs = shapes.bit.map((p) => p.along);
      expect(shapes.bushing.to - shapes.bushing.from).toBeCloseTo(25.4, 9);
      expect(shapes.bushing.to).toBeCloseTo(-6.35, 9);
      expect(shapes.holeDepth - shapes.collar).toBeCloseTo(plan[member].stop, 9);
      expect(Math.max(...alongs) - shapes.collar).toBeCloseTo(plan[member].stopFromPoint, 9);
    }
  });

  test('the worked corner joint: 1 in of bushing and 5/8 in of hole stop at 1 5/8 in', () => {
    const plan = planJoint({
      ...ordinaryJoint('corner', 'in', inches(3 / 4)),
      pin: { diameter: inches(3 / 8), length: inches(3 / 2) },
      leave: inches(1 / 8),
      bit: { point: { kind: 'square' } },
    });
    const shapes = stopShapes(plan, 'b');
    expect(shapes.holeDepth - shapes.collar).toBeCloseTo(1.625 * 25.4, 9);
    expect(shapes.wood).toEqual({ depth: 19.05, whole: true });
  });
});

describe('a collar that is not set as planned', () => {
  const plan = planJoint({
    ...ordinaryJoint('corner', 'in', inches(3 / 4)),
    pin: { diameter: inches(3 / 8), length: inches(3 / 2) },
    guide: { bushing: inches(1), standoff: inches(1 / 8) },
  });
  const { stop, holeDepth } = plan.b;
  const { tip } = plan.spec.bit;
  const WRONG = {
    'to the point': mm(stop - tip),
    'without the bushing': mm(stop - inches(1)),
    'without the gap': mm(stop - inches(1 / 8)),
    'for the other board': plan.a.stop,
  };

  test.each(Object.entries(WRONG))('%s: the hole is off by what was left out', (_, collar) => {
    const shapes = stopShapes(plan, 'b', collar);
    expect(shapes.reach - holeDepth).toBeCloseTo(collar - stop, 9);
    expect(shapes.holeDepth).toBeCloseTo(Math.max(0, shapes.reach), 9);
    expect(shapes.meant).toBeCloseTo(holeDepth, 9);
    expect(shapes.stop).toBeCloseTo(collar, 9);
    expect(shapes.stopFromPoint).toBeCloseTo(collar + tip, 9);
  });

  test('with the bushing forgotten the bit stays in the guide, and there is no hole', () => {
    const shapes = stopShapes(plan, 'b', WRONG['without the bushing']);
    expect(shapes.reach).toBeLessThan(-shapes.standoff);
    expect(shapes.holeDepth).toBe(0);
    expect(shapes.through).toBe(false);
  });

  test('set for the other board it comes through the face', () => {
    expect(stopShapes(plan, 'b', plan.a.stop).through).toBe(true);
    expect(stopShapes(plan, 'a', plan.b.stop).through).toBe(false);
  });

  test.each(Object.entries(WRONG))('%s: numbers stay apart and on the sheet', (_, collar) => {
    for (const width of [300, 440, 900]) {
      for (const unit of ['in', 'mm', 'both'] as const) {
        const sheet = arrangeStop([stopShapes(plan, 'b', collar)], width, { unit, set: [] });
        expect(labelFaults(sheet), `${width} px, ${unit}`).toEqual([]);
      }
    }
  });

  test('the description says how far off the hole is, and whether there is one', () => {
    const says = (collar: Mm) => describeStop(plan, 'b', 'in', { b: collar });
    expect(says(WRONG['without the bushing'])).toMatch(
      /1 inch too shallow: the bit never leaves the guide/,
    );
    expect(says(plan.a.stop)).toMatch(/too deep.*comes through by/);
    expect(describeStop(plan, 'b', 'in')).not.toMatch(/too (?:deep|shallow)/);
  });
});
