import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../../src/core/length/mm.ts';
import { type ClosingOddsInput, closingOdds } from '../../../src/core/trial/closingOdds.ts';

const six = [40, 100, 160, 220, 280, 340].map(mm);
const usual: ClosingOddsInput = {
  positions: six,
  radialPlay: mm(0.2),
  sigmaAlong: mm(0.1),
  sigmaAcross: mm(0.1),
  length: mm(380),
  flushTolerance: mm(0.1),
  mayTurn: false,
  trials: 4000,
  seed: 3,
};

describe('closingOdds', () => {
  it('is certain of one pin', () => {
    for (const mayTurn of [false, true]) {
      const odds = closingOdds({ ...usual, positions: [mm(190)], mayTurn });
      expect(odds.probability).toBe(1);
      expect(odds.high).toBe(1);
    }
  });

  it('gives the same odds for the same seed, and others for another', () => {
    expect(closingOdds(usual)).toEqual(closingOdds(usual));
    expect(closingOdds(usual).probability).not.toBe(closingOdds({ ...usual, seed: 4 }).probability);
  });

  it('never bets on a longer row that begins with the same pins, trial by trial', () => {
    for (const mayTurn of [false, true]) {
      // One trial at a time would restart the streams, so the trials are told apart by their sum.
      for (let trials = 1; trials <= 60; trials++) {
        const closes = (count: number): number =>
          Math.round(
            closingOdds({ ...usual, positions: six.slice(0, count), mayTurn, trials }).probability *
              trials,
          );
        const before = (count: number): number =>
          trials === 1
            ? 0
            : Math.round(
                closingOdds({
                  ...usual,
                  positions: six.slice(0, count),
                  mayTurn,
                  trials: trials - 1,
                }).probability *
                  (trials - 1),
              );
        let last = 1;
        for (let count = 1; count <= six.length; count++) {
          const closed = closes(count) - before(count);
          expect(closed === 0 || closed === 1).toBe(true);
          expect(closed).toBeLessThanOrEqual(last);
          last = closed;
        }
      }
    }
  });

  it('lets more joints close that may turn, and with more play', () => {
    const odds = (change: Partial<ClosingOddsInput>): number =>
      closingOdds({ ...usual, ...change }).probability;
    expect(odds({ mayTurn: true })).toBeGreaterThan(odds({}));
    expect(odds({ radialPlay: mm(0.25) })).toBeGreaterThan(odds({}));
  });

  it('takes one play for all or one for each, alike', () => {
    expect(closingOdds({ ...usual, radialPlay: six.map(() => mm(0.2)) })).toEqual(
      closingOdds(usual),
    );
  });

  it('closes as often whatever the bias, but less often flush', () => {
    for (const mayTurn of [false, true]) {
      const none = closingOdds({ ...usual, mayTurn });
      const bias = { along: mm(0.3), across: mm(0.4) };
      const biased = closingOdds({ ...usual, mayTurn, bias });
      expect(Math.abs(biased.probability - none.probability)).toBeLessThanOrEqual(1 / usual.trials);
      expect(biased.flush.probability).toBeLessThan(none.flush.probability / 2);
      expect(biased.flushable.probability).toBeLessThan(none.flushable.probability);
    }
  });

  it('orders its odds: flush, flushable, closing', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 8 }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.boolean(),
        fc.integer(),
        (count, play, along, across, flush, bias, mayTurn, seed) => {
          const odds = closingOdds({
            positions: Array.from({ length: count }, (_, j) => mm(30 + 50 * j)),
            radialPlay: mm(play),
            sigmaAlong: mm(along),
            sigmaAcross: mm(across),
            bias: { along: mm(bias), across: mm(-bias) },
            length: mm(60 + 50 * count),
            flushTolerance: mm(flush),
            mayTurn,
            trials: 60,
            seed,
          });
          expect(odds.flush.probability).toBeLessThanOrEqual(odds.flushable.probability);
          expect(odds.flushable.probability).toBeLessThanOrEqual(odds.probability);
          for (const { probability, low, high } of [odds, odds.flush, odds.flushable]) {
            expect(low).toBeGreaterThanOrEqual(0);
            expect(low).toBeLessThanOrEqual(probability);
            expect(high).toBeGreaterThanOrEqual(probability);
            expect(high).toBeLessThanOrEqual(1);
          }
        },
      ),
    );
  });

  it('is certain where no hole is off, and flush unless a bias exceeds the tolerance', () => {
    const exact = { ...usual, sigmaAlong: mm(0), sigmaAcross: mm(0), trials: 20 };
    expect(closingOdds(exact).flush.probability).toBe(1);
    const biased = closingOdds({ ...exact, bias: { along: mm(0), across: mm(0.25) } });
    expect(biased).toMatchObject({ probability: 1 });
    expect(biased.flush.probability).toBe(0);
    // The play of 0.2 lets it be pushed to within 0.05.
    expect(biased.flushable.probability).toBe(1);
    const far = closingOdds({ ...exact, bias: { along: mm(0), across: mm(0.31) } });
    expect(far.flushable.probability).toBe(0);
  });

  it.each([
    [{ positions: [] }, 'positions.length'],
    [{ positions: [mm(NaN)] }, 'positions[0]'],
    [{ radialPlay: mm(-1) }, 'radialPlay'],
    [{ radialPlay: [mm(1)] }, 'radialPlay'],
    [{ sigmaAlong: mm(-1) }, 'sigmaAlong'],
    [{ sigmaAcross: mm(Infinity) }, 'sigmaAcross'],
    [{ length: mm(0) }, 'length'],
    [{ flushTolerance: mm(NaN) }, 'flushTolerance'],
    [{ trials: 0.5 }, 'trials'],
    [{ seed: NaN }, 'seed'],
    [{ bias: { along: mm(NaN), across: mm(0) } }, 'bias.along'],
  ] as [Partial<ClosingOddsInput>, string][])('refuses %o and names %s', (change, field) => {
    expect(() => closingOdds({ ...usual, ...change })).toThrow(field);
  });
});
