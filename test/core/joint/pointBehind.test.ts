import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type Mm, inches, mm, planJoint } from '../../../src/core/index.ts';
import { type Drilling, pointBehind } from '../../../src/core/joint/pointBehind.ts';
import { ordinaryJoint } from '../../support/joints.ts';

const plan = planJoint(ordinaryJoint('corner', 'in', inches(3 / 4)));

const drilling = (more: Partial<Drilling> = {}): Drilling => ({
  bushing: plan.spec.guide.bushing,
  standoff: plan.spec.guide.standoff,
  stop: plan.b.stop,
  slip: mm(0),
  tip: plan.spec.bit.tip as Mm,
  thickness: plan.spec.b.thickness,
  behind: 'waste',
  waste: inches(3 / 4),
  ...more,
});

describe('where the point ends', () => {
  it('is as planned while the collar stays put', () => {
    const { depth, woodLeft, beyond, ends } = pointBehind(drilling());
    expect(depth).toBeCloseTo(plan.b.holeDepth, 9);
    expect(woodLeft).toBeCloseTo(plan.b.woodLeft, 9);
    expect([beyond, ends]).toEqual([0, 'board']);
  });

  it.each([
    ['waste', 2, 'waste'],
    ['waste', 40, 'bench'],
    ['bench', 2, 'bench'],
    ['hand', 2, 'hand'],
  ] as const)('behind a board on %s, slipped by %s mm, it is the %s', (behind, slip, ends) => {
    expect(pointBehind(drilling({ behind, slip: mm(slip) })).ends).toBe(ends);
  });

  test('what slips is taken from the wood left, to the last of it and beyond', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (slip) => {
        const { woodLeft, beyond } = pointBehind(drilling({ slip: mm(slip) }));
        expect(woodLeft).toBeCloseTo(plan.b.woodLeft - slip, 6);
        expect(beyond).toBeCloseTo(Math.max(0, slip - plan.b.woodLeft), 5);
      }),
    );
  });

  it('makes no hole with a stop that the guide uses up', () => {
    expect(pointBehind(drilling({ stop: inches(1 / 2) })).depth).toBe(0);
  });

  it('refuses a length below zero, by its name', () => {
    expect(() => pointBehind(drilling({ slip: mm(-1) }))).toThrow(/slip must be 0 or more, got -1/);
  });
});
