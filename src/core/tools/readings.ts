import { type FitVerdict, fit } from '../fit/fit.ts';
import { type Mm, mm } from '../length/mm.ts';
import { requirePositive } from '../trial/require.ts';

/** What a handful of caliper readings says. Lengths in mm. */
export interface Readings {
  readonly count: number;
  readonly mean: Mm;
  /** Sample standard deviation, with n − 1; null for a single reading, which says nothing of it. */
  readonly spread: Mm | null;
  readonly least: Mm;
  readonly greatest: Mm;
}

/**
 * Mean and spread of readings of one thing, such as the diameters of pins out of one bag; null
 * without any. Throws a TypeError or a RangeError for a reading that is not more than 0.
 *
 * Source: arithmetic; the spread is the sample standard deviation.
 * @example summarize([mm(9.4), mm(9.5), mm(9.6)])?.spread // 0.1
 */
export function summarize(readings: readonly Mm[]): Readings | null {
  const count = readings.length;
  if (count === 0) return null;
  readings.forEach((reading, k) => requirePositive(`readings[${k}]`, reading));
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  return {
    count,
    mean: mm(mean),
    spread: count === 1 ? null : mm(Math.sqrt(squares / (count - 1))),
    least: mm(Math.min(...readings)),
    greatest: mm(Math.max(...readings)),
  };
}

/** Between these two lie all but one in twenty of the things that were measured: two spreads off the mean. */
export function nearlyAll({ mean, spread }: Readings): { readonly least: Mm; readonly most: Mm } {
  const twice = 2 * (spread ?? 0);
  return { least: mm(mean - twice), most: mm(mean + twice) };
}

/** How many pins fit a hole in each way. */
export type FitCount = Readonly<Record<FitVerdict, number>>;

/**
 * How each pin as measured would fit a hole as measured: those that are not `good` are outside the
 * range that `fit` takes for a good glue line. Throws a TypeError or a RangeError for a diameter
 * that is not more than 0.
 * @param hole diameter of the hole that the bit makes, mm
 */
export function countFits(readings: readonly Mm[], hole: Mm): FitCount {
  const count: Record<FitVerdict, number> = { 'ease the pin': 0, starved: 0, good: 0, thick: 0 };
  for (const pin of readings) count[fit({ hole, pin }).verdict] += 1;
  return count;
}
