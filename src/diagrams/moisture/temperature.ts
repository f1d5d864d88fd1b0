import type { Reading } from '../drafting/reading.ts';

/** From °C to °F. */
export function fahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}

/** From °F to °C. */
export function celsius(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/** A temperature as readers of inches and of millimeters know it. @example temperature(20).in // '68 °F' */
export function temperature(degrees: number): Reading {
  const write = (value: number, sign: string) =>
    `${Math.round(value)}\u00a0°${sign}`.replace('-', '−');
  return { in: write(fahrenheit(degrees), 'F'), mm: write(degrees, 'C') };
}
