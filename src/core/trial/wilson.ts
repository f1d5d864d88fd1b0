import { requireCount } from './require.ts';

/** Standard normal quantile for 95 %, both tails left out alike. */
const Z = 1.959963984540054;

/** A share of trials, and the interval that holds the true odds 95 times in 100. */
export interface Odds {
  /** 0 to 1. */
  readonly probability: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The odds that lie behind a count of successes, with Wilson's 95 % interval, which stays within
 * 0 to 1 and is right for few trials too. Throws a TypeError or a RangeError for counts that are
 * not whole, negative, or more successes than trials.
 *
 * Source: geometry of the score test: the odds at which the count lies 1.96 standard deviations off.
 * @example wilson(5, 10) // { probability: 0.5, low: 0.2366, high: 0.7634 }
 */
export function wilson(successes: number, trials: number): Odds {
  requireCount('trials', trials, 1);
  requireCount('successes', successes, 0);
  if (successes > trials) {
    throw new RangeError(`successes must be no more than trials (${trials}), not ${successes}`);
  }
  const probability = successes / trials;
  const square = Z ** 2 / trials;
  const middle = (probability + square / 2) / (1 + square);
  const half = Math.sqrt(probability * (1 - probability) * square + square ** 2 / 4) / (1 + square);
  return {
    probability,
    low: successes === 0 ? 0 : middle - half,
    high: successes === trials ? 1 : middle + half,
  };
}
