import { requireNumber } from '../trial/require.ts';

/** Temperatures of the published table, °C (30 to 130 °F). */
export const tableTemperatures = { from: -1, to: 55 } as const;

/** Whether a temperature in °C lies within the published table: beyond it the equation is only stretched. */
export function tableReach(celsius: number): 'within the table' | 'beyond the table' {
  requireNumber('celsius', celsius);
  return celsius >= tableTemperatures.from && celsius <= tableTemperatures.to
    ? 'within the table'
    : 'beyond the table';
}

/**
 * Moisture content, in percent of dry weight, that wood comes to in air of a temperature (°C)
 * and a relative humidity (0 to 1), given weeks enough. `tableReach` says whether the
 * temperature lies in the published table.
 *
 * Throws a TypeError for what is not a finite number; a RangeError for a humidity outside 0 to
 * 1, and for air so hot or cold that the equation gives nothing (about −37 to 128 °C serve).
 *
 * Source: Wood Handbook, FPL-GTR-190, Eq. 4-5 (read). W, K, K1 and K2 are its fitted
 * quantities: two layers of water, K1 and K2 how tightly they are held.
 * @example equilibriumMoisture(21, 0.5) // 9.2 (rounded)
 */
export function equilibriumMoisture(celsius: number, relativeHumidity: number): number {
  requireNumber('celsius', celsius);
  requireNumber('relativeHumidity', relativeHumidity);
  if (relativeHumidity < 0 || relativeHumidity > 1) {
    throw new RangeError(`relativeHumidity must be from 0 to 1, not ${relativeHumidity}`);
  }
  const squared = celsius ** 2;
  const W = 349 + 1.29 * celsius + 0.0135 * squared;
  const K = 0.805 + 0.000736 * celsius - 0.00000273 * squared;
  const K1 = 6.27 - 0.00938 * celsius - 0.000303 * squared;
  const K2 = 1.91 + 0.0407 * celsius - 0.000293 * squared;
  if (K <= 0 || K >= 1 || K1 <= 0 || K2 <= 0) {
    throw new RangeError(`celsius is beyond what the equation can give: ${celsius}`);
  }
  const Kh = K * relativeHumidity;
  const dissolved = Kh / (1 - Kh);
  const bound = (K1 * Kh + 2 * K1 * K2 * Kh ** 2) / (1 + K1 * Kh + K1 * K2 * Kh ** 2);
  return (1800 / W) * (dissolved + bound);
}
