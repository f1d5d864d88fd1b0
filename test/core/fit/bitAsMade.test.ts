import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bitAsMade } from '../../../src/core/fit/bitAsMade.ts';
import { inches, mm } from '../../../src/core/length/mm.ts';

describe('a bit made to h8', () => {
  it.each([
    [6, 0.018],
    [6.001, 0.022],
    [8, 0.022],
    [10, 0.022],
    [12, 0.027],
    [30, 0.033],
  ])('of %d mm is its name, or up to %d mm under it', (name, grade) => {
    const made = bitAsMade(mm(name))!;
    expect(made.most).toBe(name);
    expect(made.most - made.least).toBeCloseTo(grade, 9);
  });

  it('counts a size in inches by its millimeters: 3/8 in is 9.525', () => {
    expect(inches(3 / 8) - bitAsMade(inches(3 / 8))!.least).toBeCloseTo(0.022, 9);
  });

  it('says nothing of sizes that the table it was held against does not have', () => {
    expect(bitAsMade(mm(3))).toBeNull();
    expect(bitAsMade(mm(30.1))).toBeNull();
    expect(() => bitAsMade(mm(0))).toThrow('nominal');
  });

  it('may miss by more the thicker it is', () => {
    const size = fc.double({ min: 3.01, max: 30, noNaN: true });
    fc.assert(
      fc.property(size, size, (a, b) => {
        const miss = (d: number) => d - bitAsMade(mm(d))!.least;
        expect(miss(Math.min(a, b))).toBeLessThanOrEqual(miss(Math.max(a, b)) + 1e-9);
      }),
    );
  });
});
