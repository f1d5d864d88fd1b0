import { formatLength, isRounded } from '../length/formatLength.ts';
import type { Mm } from '../length/mm.ts';
import type { LengthUnit } from '../length/parseLength.ts';

/** Decimals that a caliper shows: a hundredth of a millimeter, half a thousandth of an inch. */
const DECIMALS: Record<LengthUnit, number> = { in: 4, mm: 2 };

/**
 * A length as a caliper reads it, without its unit: millimeters to a hundredth; inches as a
 * fraction where it is exactly a 64th, else to a ten-thousandth. '≈' where that rounds it.
 * @example formatReading(mm(9.47), 'mm') // '9.47'
 * @example formatReading(mm(9.47), 'in') // '≈0.3728'
 */
export function formatReading(length: Mm, unit: LengthUnit): string {
  if (unit === 'in' && !isRounded(length, { unit: 'in', denominator: 64 })) {
    return formatLength(length, { unit: 'in', denominator: 64 });
  }
  const value = unit === 'in' ? length / 25.4 : length;
  const text = value.toFixed(DECIMALS[unit]);
  const rounded = Math.abs(value - Number(text)) > 1e-7;
  return `${rounded ? '≈' : ''}${String(Number(text))}`;
}
