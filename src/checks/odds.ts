import { closingOdds, mm } from '../core/index.ts';
import type { CheckRow } from './checkRow.ts';

/** Play of the pins over the spread of the holes, r/σ. */
export const playOverSpread: readonly number[] = [0.25, 0.5, 1, 1.5, 2, 3];

/** The exact odds of two pins whose boards can't turn. @param ratio r/σ */
export function exactOdds(ratio: number): number {
  return 1 - Math.exp(-(ratio ** 2) / 2);
}

const trials = 20_000;

/** Two pins, by trial. @param ratio r/σ */
export function triedOdds(ratio: number, seed: number, count = trials) {
  return closingOdds({
    positions: [mm(40), mm(160)],
    radialPlay: mm(ratio * 0.1),
    sigmaAlong: mm(0.1),
    sigmaAcross: mm(0.1),
    length: mm(200),
    flushTolerance: mm(0.1),
    mayTurn: false,
    trials: count,
    seed,
  });
}

/** Odds by trial against the formula, within four standard deviations of the sample. */
export const oddsRows: readonly CheckRow[] = playOverSpread.map((ratio) => {
  const published = exactOdds(ratio);
  return {
    what: `Two pins that can’t turn, play ${ratio} times the spread of the holes`,
    unit: { name: 'of the joints close', decimals: 3 },
    published,
    computed: triedOdds(ratio, 1).probability,
    tolerance: 4 * Math.sqrt((published * (1 - published)) / trials),
    source: 'The formula 1 − exp(−r²/(2σ²)), for 20,000 trials',
    standing: 'geometry',
  };
});
