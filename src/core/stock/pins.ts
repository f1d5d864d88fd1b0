import { inches, mm } from '../length/mm.ts';
import type { Pin, System } from '../joint/types.ts';

const INCH_STOCK: readonly (readonly [diameter: number, lengths: readonly number[]])[] = [
  [1 / 4, [1, 1 + 1 / 4, 1 + 1 / 2]],
  [5 / 16, [1 + 1 / 4, 1 + 1 / 2]],
  [3 / 8, [1 + 1 / 4, 1 + 1 / 2, 2]],
  [1 / 2, [1 + 1 / 2, 2, 2 + 1 / 2]],
];

const MILLIMETER_STOCK: readonly (readonly [diameter: number, lengths: readonly number[]])[] = [
  [6, [30, 40]],
  [8, [30, 35, 40, 50]],
  [10, [40, 50, 60]],
  [12, [40, 50, 60]],
];

/**
 * Dowel pins that shops commonly keep, smallest first. From memory; a user can enter their own.
 * @param system 'in' or 'mm'
 */
export function stockPins(system: System): readonly Pin[] {
  const [rows, length] = system === 'in' ? [INCH_STOCK, inches] : [MILLIMETER_STOCK, mm];
  return rows.flatMap(([diameter, lengths]) =>
    lengths.map((each) => ({ diameter: length(diameter), length: length(each) })),
  );
}
