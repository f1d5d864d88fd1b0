import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ShopSteps, inches, mm } from '../../../src/core/index.ts';

const step = { in: 1 / 16, mm: 1 };

describe('ShopSteps', () => {
  it('stops at sixteenths for a reader of inches and at millimeters for the other', () => {
    const inch = new ShopSteps(step, 'in', inches(1 / 4), inches(2));
    expect(inch.at(inch.first)).toBe(6.35);
    expect(inch.at(inch.last)).toBe(50.8);
    const metric = new ShopSteps(step, 'mm', mm(6), mm(51));
    expect([metric.first, metric.last]).toEqual([6, 51]);
  });

  it('goes from a length between two steps to the one above or below', () => {
    const steps = new ShopSteps(step, 'in', inches(1 / 4), inches(2));
    const typed = inches(23 / 32);
    expect(steps.at(steps.next(typed, 1))).toBe(inches(3 / 4));
    expect(steps.at(steps.next(typed, -1))).toBe(inches(11 / 16));
    expect(steps.at(steps.next(inches(3 / 4), 1))).toBe(inches(13 / 16));
    expect(steps.at(steps.next(inches(3 / 4), -1))).toBe(inches(11 / 16));
  });

  it('never leaves its range', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (length) => {
        const steps = new ShopSteps(step, 'mm', mm(6), mm(51));
        return [steps.nearest(mm(length)), steps.next(mm(length), 1), steps.next(mm(length), -1)]
          .map((index) => steps.at(index))
          .every((at) => at >= 6 && at <= 51);
      }),
    );
  });
});
