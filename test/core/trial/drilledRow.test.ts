import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RowErrors, closingOdds, drilledRow, mm } from '../../../src/core/index.ts';

function row(pins: number, more: Partial<RowErrors> = {}): RowErrors {
  return {
    positions: Array.from({ length: pins }, (_, j) => mm(38 + 79 * j)),
    radialPlay: mm(0.1),
    sigmaAlong: mm(0.05),
    sigmaAcross: mm(0.06),
    length: mm(76 + 79 * (pins - 1)),
    mayTurn: true,
    seed: 1,
    ...more,
  };
}

describe('drilledRow', () => {
  it.each([
    [3, false],
    [3, true],
    [6, true],
  ])('drills the very joints that the odds count: %i pins, turning %s', (pins, mayTurn) => {
    const trials = 300;
    const input = row(pins, { mayTurn });
    const drilled = Array.from({ length: trials }, (_, index) => drilledRow(input, index));
    const odds = closingOdds({ ...input, trials, flushTolerance: mm(0.1) });
    const flush = drilled.filter(
      ({ fits, step }) => fits && Math.max(Math.abs(step.start), Math.abs(step.end)) <= 0.1 + 1e-6,
    );
    expect(drilled.filter(({ fits }) => fits).length).toBe(Math.round(odds.probability * trials));
    expect(flush.length).toBe(Math.round(odds.flush.probability * trials));
    expect(odds.probability).toBeGreaterThan(0.1);
    expect(odds.probability).toBeLessThan(0.99);
  });

  it('keeps the errors of the first pins when a pin is added', () => {
    const offsets = (pins: number) => drilledRow(row(pins), 7).pins.map(({ off }) => off);
    expect(offsets(10).slice(0, 4)).toEqual(offsets(4));
  });

  it('names the first pin that stops the row: those before it went in', () => {
    let stopped = 0;
    for (let index = 0; index < 60; index++) {
      const { fits, stoppedBy, pins, miss } = drilledRow(row(6), index);
      expect(pins.every(({ goesIn }) => goesIn)).toBe(fits);
      expect(miss <= 1e-6).toBe(fits);
      if (stoppedBy === null) continue;
      stopped++;
      expect(drilledRow(row(stoppedBy), index).fits).toBe(true);
      expect(drilledRow(row(stoppedBy + 1), index).fits).toBe(false);
    }
    expect(stopped).toBeGreaterThan(10);
  });

  it('names the pins of which any one, left out, lets the others in', () => {
    let found = 0;
    for (let index = 0; index < 60; index++) {
      const { fits, spoilers, pins } = drilledRow(row(4), index);
      if (fits) expect(spoilers).toEqual([]);
      found += spoilers.length;
      for (const spoiler of spoilers) {
        // A pin with play to spare is as good as one left out.
        const radialPlay = pins.map((_, j) => mm(j === spoiler ? 50 : 0.1));
        expect(drilledRow(row(4, { radialPlay }), index).fits).toBe(true);
      }
    }
    expect(found).toBeGreaterThan(10);
  });

  it('lets every error that all pins share go into the shift, and shows it as the step', () => {
    fc.assert(
      fc.property(fc.nat(50), fc.double({ min: -2, max: 2, noNaN: true }), (index, off) => {
        const still = { mayTurn: false };
        const plain = drilledRow(row(4, still), index);
        const bias = { along: mm(0), across: mm(off) };
        const biased = drilledRow(row(4, { ...still, bias }), index);
        expect(biased.miss).toBeCloseTo(plain.miss, 9);
        expect(biased.step.start - plain.step.start).toBeCloseTo(off, 9);
        expect(biased.step.end - plain.step.end).toBeCloseTo(off, 9);
      }),
    );
  });

  it('leaves of each offset what neither shift nor turn takes up', () => {
    const input = row(5);
    const { pins, shift, turn, step } = drilledRow(input, 3);
    pins.forEach(({ off, left }, j) => {
      expect(left.along).toBeCloseTo(off.along - shift.along, 12);
      expect(left.across).toBeCloseTo(off.across - shift.across - turn * input.positions[j]!, 12);
    });
    expect(step.start).toBe(shift.across);
    expect(step.end).toBeCloseTo(shift.across + turn * input.length, 12);
  });

  it('refuses what makes no sense, by name', () => {
    expect(() => drilledRow(row(3), -1)).toThrow(/index must be 0 or more/);
    expect(() => drilledRow(row(3), 1.5)).toThrow(/index must be a whole number/);
    expect(() => drilledRow(row(3, { sigmaAlong: mm(-1) }), 0)).toThrow(/sigmaAlong/);
    expect(() => drilledRow(row(3, { length: mm(0) }), 0)).toThrow(/length must be more than 0/);
  });
});
