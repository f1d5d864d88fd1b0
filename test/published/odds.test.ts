import { describe, expect, it } from 'vitest';
import { exactOdds, playOverSpread, triedOdds } from '../../src/checks/odds.ts';
import { mm } from '../../src/core/length/mm.ts';
import { closingOdds } from '../../src/core/trial/closingOdds.ts';
import { plainOdds } from '../bench/plainOdds.ts';

describe('odds of two pins that can’t turn: 1 − exp(−r²/(2σ²)) (geometry)', () => {
  it.each(playOverSpread)('with play of %d sigma, in 19 of 20 intervals', (ratio) => {
    const exact = exactOdds(ratio);
    const seeds = 60;
    let held = 0;
    for (let seed = 1; seed <= seeds; seed++) {
      const { low, high } = triedOdds(ratio, seed, 5000);
      if (low <= exact && exact <= high) held++;
    }
    // 57 are expected; fewer than 50 would come by chance once in a thousand.
    expect(held).toBeGreaterThanOrEqual(50);
  });
});

describe('odds of a row that can’t turn, by d3-hierarchy’s circles and d3-random’s errors (independent)', () => {
  it.each([
    [3, 0.12],
    [6, 0.2],
    [10, 0.25],
  ])('%d pins with a play of %d', (count, play) => {
    const trials = 20_000;
    const odds = closingOdds({
      positions: Array.from({ length: count }, (_, j) => mm(40 + 60 * j)),
      radialPlay: mm(play),
      sigmaAlong: mm(0.1),
      sigmaAcross: mm(0.1),
      length: mm(800),
      flushTolerance: mm(0.1),
      mayTurn: false,
      trials,
      seed: 5,
    });
    const plain = plainOdds(count, play, 0.1, trials, 0.5);
    // Both are samples: four standard deviations of their difference.
    const spread = 4 * Math.sqrt((2 * plain * (1 - plain)) / trials);
    expect(Math.abs(odds.probability - plain)).toBeLessThan(spread);
  });
});
