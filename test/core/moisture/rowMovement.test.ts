import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SEASON, mm, publishedRow, rowMovement } from '../../../src/core/index.ts';

const rail = { span: mm(100), coefficient: 0.00369, clearance: mm(0.1), ...SEASON };

describe('rowMovement', () => {
  it('holds the change of the span against the play in both holes of both outer pins', () => {
    const { change, play, widest } = rowMovement(rail);
    expect(change).toBeCloseTo(100 * 0.00369 * 6, 9);
    expect(play).toBeCloseTo(0.2, 9);
    expect(widest).toBeCloseTo(0.2 / (0.00369 * 6), 9);
  });

  it('uses the play up just at the widest span', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0005, max: 0.005, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (coefficient, clearance) => {
          const own = { ...rail, coefficient, clearance: mm(clearance) };
          const at = rowMovement({ ...own, span: rowMovement(own).widest });
          expect(at.change).toBeCloseTo(at.play, 9);
        },
      ),
    );
  });

  it('gives a tight pin no play, and lets boards that move together be as wide as they like', () => {
    expect(rowMovement({ ...rail, clearance: mm(-0.1) })).toMatchObject({ play: 0, widest: 0 });
    expect(rowMovement({ ...rail, coefficient: 0 })).toMatchObject({ change: 0, widest: Infinity });
  });

  it('names what is out of range', () => {
    expect(() => rowMovement({ ...rail, span: mm(-1) })).toThrow('span');
    expect(() => rowMovement({ ...rail, damp: 5 })).toThrow('damp');
    expect(() => rowMovement({ ...rail, clearance: mm(NaN) })).toThrow('clearance');
  });
});

describe('publishedRow', () => {
  it.each([
    [21, 70],
    [-20, 30],
    [25, 80],
    [60, 140],
  ])('%i °C: the row at %i °F', (celsius, fahrenheit) => {
    expect(publishedRow(celsius).fahrenheit).toBe(fahrenheit);
  });
});
