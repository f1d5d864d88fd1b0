import { describe, expect, test } from 'vitest';
import { type BitPoint, inches, mm, planJoint } from '../../../src/core/index.ts';
import { stopShapes } from '../../../src/diagrams/stop/geometry.ts';
import { ordinaryJoint } from '../../support/joints.ts';

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
