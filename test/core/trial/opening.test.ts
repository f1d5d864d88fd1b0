import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../../src/core/length/mm.ts';
import { restOn } from '../../../src/core/trial/opening.ts';

/** Pins 60 mm apart, each too long by so much, in a joint of 300 mm. */
const rest = (...over: readonly number[]) =>
  restOn(
    over.map((by, j) => ({ along: mm(30 + 60 * j), over: mm(by) })),
    mm(300),
  );

describe('restOn', () => {
  it('closes where no pin is too long', () => {
    expect(rest(0, -3, 0)).toEqual({ start: 0, end: 0, rocks: false });
  });
  it('lies level on pins that are all too long alike', () => {
    expect(rest(2, 2, 2, 2, 2)).toEqual({ start: 2, end: 2, rocks: false });
  });
  it('rocks on one long pin in the very middle', () => {
    expect(rest(0, 0, 2, 0, 0)).toEqual({ start: 2, end: 2, rocks: true });
  });
  it('touches at one end and stands open at the other, where a pin there is too long', () => {
    expect(rest(0, 0, 0, 0, 2)).toEqual({
      start: 0,
      end: expect.closeTo((2 * 300) / 270, 9) as number,
      rocks: false,
    });
  });
  it('never sinks below a pin or an end', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 1, maxLength: 5 }),
        (over) => {
          const { start, end } = rest(...over);
          expect(Math.min(start, end)).toBeGreaterThanOrEqual(0);
          over.forEach((by, j) => {
            const here = start + ((end - start) * (30 + 60 * j)) / 300;
            expect(here).toBeGreaterThanOrEqual(by - 1e-6);
          });
        },
      ),
    );
  });
});
