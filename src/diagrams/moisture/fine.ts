import type { Reading, Unit } from '../drafting/reading.ts';

/** A small length, or a small difference of lengths: thousandths of an inch, hundredths of a millimeter. */
export function fine(length: number): Reading {
  const write = (value: number, digits: number) =>
    // What rounds to nothing has no sign.
    value
      .toFixed(digits)
      .replace(/^-(?=0\.0+$)/, '')
      .replace('-', '−');
  return { in: write(length / 25.4, 3), mm: write(length, 2) };
}

/** The same with its unit in words. @example spokenFine(0.1, 'in') // '0.004 inch' */
export function spokenFine(length: number, unit: Unit): string {
  const number = fine(length)[unit].replace('−', 'minus ');
  return `${number} ${unit === 'in' ? 'inch' : 'millimeters'}`;
}
