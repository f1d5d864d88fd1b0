import { type ClosingOdds, closingOdds } from '../../../core/trial/closingOdds.ts';
import { MOST_PINS, type RowSettings, TRIALS, rowOf } from './rowSettings.ts';

/** The odds of a row of so many pins. */
export function rowOdds(settings: RowSettings, pins: number): ClosingOdds {
  return closingOdds({
    ...rowOf(settings, pins),
    flushTolerance: settings.flushWithin,
    trials: TRIALS,
  });
}

/** The odds of one pin, of two, and so on up to `MOST_PINS`. */
export function allRowOdds(settings: RowSettings): readonly ClosingOdds[] {
  return Array.from({ length: MOST_PINS }, (_, i) => rowOdds(settings, i + 1));
}
