import type { Reading } from '../drafting/reading.ts';

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
