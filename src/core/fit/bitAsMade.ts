import { type Mm, lessThan, mm } from '../length/mm.ts';
import { requirePositive } from '../trial/require.ts';

/** The standard's steps of diameter, mm: over the one, up to and including the next. */
const STEPS = [3, 6, 10, 18, 30] as const;

/** How many of the standard's units wide grade 8 is. */
const GRADE_8 = 25;

/**
 * The diameters that a bit may have when it is made to h8: its name at the most, and under it by
 * no more than grade 8 of ISO 286. null for a name of 3 mm or less, or over 30 mm.
 *
 * The grade is 25 units of 0.45 ∛D + 0.001 D micrometers, with D the geometric mean of the step
 * that the diameter falls in, mm, rounded to a micrometer.
 *
 * Throws a TypeError or a RangeError for what is not more than 0.
 *
 * Source: ISO 286-1. Its table was read (the Checks page holds this against it); the unit, and
 * that twist bits are made to h8, are from memory.
 * @example bitAsMade(mm(8)) // { least: 7.978, most: 8 }
 */
export function bitAsMade(nominal: Mm): { readonly least: Mm; readonly most: Mm } | null {
  requirePositive('nominal', nominal);
  const above = STEPS.findIndex((step) => !lessThan(mm(step), nominal));
  const [from, to] = [STEPS[above - 1], STEPS[above]];
  if (from === undefined || to === undefined) return null;
  const mean = Math.sqrt(from * to);
  const grade = Math.round(GRADE_8 * (0.45 * Math.cbrt(mean) + 0.001 * mean));
  return { least: mm(nominal - grade / 1000), most: nominal };
}
