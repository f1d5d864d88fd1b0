import { mm, type Mm } from '../length/mm.ts';
import { requireAtLeast } from '../trial/require.ts';

/** The moisture, in percent, between which the coefficients of movement are said to hold. */
export const coefficientRange = { from: 6, to: 14 } as const;

/** True where every moisture given lies in the range for which the coefficients are said to hold. */
export function coefficientsHold(...moisture: readonly number[]): boolean {
  return moisture.every((m) => m >= coefficientRange.from && m <= coefficientRange.to);
}

export interface DimensionalChangeInput {
  /** Size across the grain at `fromMoisture`, mm, 0 or more. */
  readonly size: Mm;
  /** Change per 1 % of moisture: a species' `radial` or `tangential`, 0 or more. */
  readonly coefficient: number;
  /** Moisture of the wood when `size` was measured, in percent. */
  readonly fromMoisture: number;
  /** Moisture that it comes to, in percent. */
  readonly toMoisture: number;
}

/**
 * How much a piece of wood grows (positive) or shrinks (negative) across the grain, in mm:
 * ΔD = D C (M_to − M_from). Said to hold from 6 to 14 % (`coefficientsHold`); outside it is a
 * rougher guess. Throws a TypeError for what is not a finite number and a RangeError for what
 * is negative.
 *
 * Source: Wood Handbook, FPL-GTR-190, Eq. 13-2 (read).
 * @example dimensionalChange({ size: mm(232), coefficient: 0.00245, fromMoisture: 8, toMoisture: 11 }) // 1.7052
 */
export function dimensionalChange(input: DimensionalChangeInput): Mm {
  const { size, coefficient, fromMoisture, toMoisture } = input;
  requireAtLeast('size', size, 0);
  requireAtLeast('coefficient', coefficient, 0);
  requireAtLeast('fromMoisture', fromMoisture, 0);
  requireAtLeast('toMoisture', toMoisture, 0);
  return mm(size * coefficient * (toMoisture - fromMoisture));
}
