import type { Mm } from './mm.ts';

/** How a length is written: inches as fractions, or millimeters in steps. */
export type LengthFormat =
  | { readonly unit: 'in'; readonly denominator: 16 | 32 | 64 }
  | { readonly unit: 'mm'; readonly step: 0.1 | 0.5 | 1 };

/** Whole billionths of a millimeter, freed of binary noise: 19.049999999999997 is 19.05. */
function exact(length: number): bigint {
  if (!Number.isFinite(length)) {
    throw new TypeError(`formatLength: mm must be a finite number, got ${length}`);
  }
  return BigInt(length.toFixed(9).replace('.', ''));
}

/** The whole number nearest to a quotient; a tie goes to the even one. Both are exact. */
function nearest(over: bigint, under: bigint): bigint {
  const size = over < 0n ? -over : over;
  const below = size / under;
  const rest = 2n * (size % under);
  const whole = rest > under || (rest === under && below % 2n === 1n) ? below + 1n : below;
  return over < 0n ? -whole : whole;
}

/** A count of 1/denominator inches, as a whole number and a reduced fraction. */
function inchFraction(parts: bigint, denominator: number): string {
  const size = parts < 0n ? -parts : parts;
  const sign = parts < 0n ? '-' : '';
  const whole = size / BigInt(denominator);
  let over = Number(size % BigInt(denominator));
  let under = denominator;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return `${sign}${whole}`;
  return whole === 0n ? `${sign}${over}/${under}` : `${sign}${whole} ${over}/${under}`;
}

/**
 * Writes a length without its unit, rounded to the nearest step; a tie goes to the even step.
 *
 * @param length in mm; a signed length keeps its sign
 * @throws TypeError where the length is not a finite number
 * @example formatLength(mm(34.925), { unit: 'in', denominator: 16 }) // '1 3/8'
 * @example formatLength(mm(34.925), { unit: 'mm', step: 0.1 }) // '34.9'
 */
export function formatLength(length: Mm, format: LengthFormat): string {
  const billionths = exact(length);
  if (format.unit === 'in') {
    const parts = nearest(billionths * BigInt(format.denominator), 25_400_000_000n);
    return inchFraction(parts, format.denominator);
  }
  const tenths = BigInt(format.step * 10);
  return String(Number(nearest(billionths, tenths * 100_000_000n) * tenths) / 10);
}

/** True where writing the length this way loses something, so that it wants a '≈'. */
export function isRounded(length: Mm, format: LengthFormat): boolean {
  const step = format.unit === 'in' ? 25.4 / format.denominator : format.step;
  return Math.abs(length / step - Math.round(length / step)) * step > 1e-6;
}

/** A rounded 64th that is off by more than this share of the length says too little. */
const TOO_COARSE = 0.1;

/**
 * A length as a reader at the bench wants it: inches to the nearest 1/64 or millimeters to the
 * nearest 0.1, with '≈' where that rounds it. A length so small that the rounding would hide it
 * is written in thousandths of an inch or hundredths of a millimeter. Without its unit.
 * @example formatReadable(mm(12.7), 'in') // '1/2'
 * @example formatReadable(mm(0.2), 'in') // '≈0.008'
 */
export function formatReadable(length: Mm, unit: 'in' | 'mm'): string {
  const format: LengthFormat =
    unit === 'in' ? { unit: 'in', denominator: 64 } : { unit: 'mm', step: 0.1 };
  if (!isRounded(length, format)) return formatLength(length, format);
  const step = unit === 'in' ? 25.4 / 64 : 0.1;
  const off = Math.abs(length - Math.round(length / step) * step);
  if (off > TOO_COARSE * Math.abs(length)) {
    const fine = unit === 'in' ? length / 25.4 : length;
    return `≈${fine.toFixed(unit === 'in' ? 3 : 2)}`;
  }
  return `≈${formatLength(length, format)}`;
}

/**
 * A length as it stands in a working: a fraction where it is exactly a 64th, else inches to a
 * thousandth; millimeters to a hundredth. Without its unit.
 * @example formatWorking(mm(2.8616), 'in') // '0.113'
 */
export function formatWorking(length: Mm, unit: 'in' | 'mm'): string {
  if (unit === 'mm') return String(Number(length.toFixed(2)));
  const sixtyFourths: LengthFormat = { unit: 'in', denominator: 64 };
  return isRounded(length, sixtyFourths)
    ? (length / 25.4).toFixed(3)
    : formatLength(length, sixtyFourths);
}

/**
 * A length with its unit in words, for a screen reader.
 * @example spokenLength(mm(12.7), 'in') // '1/2 inch'
 */
export function spokenLength(length: Mm, unit: 'in' | 'mm'): string {
  const number = formatReadable(length, unit).replace('≈', 'about ');
  if (unit === 'mm') return `${number} millimeter${number === '1' ? '' : 's'}`;
  return `${number} inch${number !== '0' && Math.abs(length) <= 25.4 + 1e-6 ? '' : 'es'}`;
}
