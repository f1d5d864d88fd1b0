import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { wilson } from '../../../src/core/trial/wilson.ts';

describe('wilson', () => {
  it('ends its interval at the odds from which the count lies 1.96 deviations off', () => {
    const z = jstat.normal.inv(0.975, 0, 1);
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 20_000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (n, share) => {
          const k = Math.min(n - 1, Math.max(1, Math.round(share * n)));
          const { probability, low, high } = wilson(k, n);
          expect(probability).toBe(k / n);
          for (const odds of [low, high]) {
            const deviations = (probability - odds) / Math.sqrt((odds * (1 - odds)) / n);
            expect(Math.abs(deviations)).toBeCloseTo(z, 6);
          }
          expect(low).toBeLessThan(probability);
          expect(high).toBeGreaterThan(probability);
        },
      ),
    );
  });

  it('stays within 0 and 1 where every trial or none succeeds', () => {
    expect(wilson(0, 100)).toMatchObject({ probability: 0, low: 0 });
    expect(wilson(0, 100).high).toBeCloseTo(0.037, 3);
    expect(wilson(100, 100)).toMatchObject({ probability: 1, high: 1 });
    expect(wilson(100, 100).low).toBeCloseTo(0.963, 3);
  });

  it('names counts that cannot be', () => {
    expect(() => wilson(3, 2)).toThrow('successes');
    expect(() => wilson(-1, 2)).toThrow('successes');
    expect(() => wilson(0, 0)).toThrow('trials');
    expect(() => wilson(0.5, 2)).toThrow(RangeError);
  });
});
