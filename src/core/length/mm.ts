declare const millimeters: unique symbol;

/**
 * A length in millimeters. A plain number when it runs; the brand keeps inches, ratios and
 * counts from being passed where a length is meant. Everything inside the calculator is in
 * millimeters; text is converted only on its way in (`parseLength`) and out (`formatLength`).
 */
export type Mm = number & { readonly [millimeters]: true };

/** Every comparison of lengths allows for this much floating-point noise, in mm. */
export const TOLERANCE = 1e-6;

/** Marks a number of millimeters as a length. @example mm(19.05) */
export function mm(value: number): Mm {
  return value as Mm;
}

/**
 * A length given in inches, as millimeters, freed of binary noise below a nanometer.
 * @example inches(3 / 4) // 19.05
 */
export function inches(value: number): Mm {
  return mm(Math.round(value * 25.4e6) / 1e6);
}

/** True where `x` is less than or equal to `y`, within the tolerance. */
export function atMost(x: number, y: number): boolean {
  return x <= y + TOLERANCE;
}

/** True where `x` is less than `y` by more than the tolerance. */
export function lessThan(x: number, y: number): boolean {
  return x < y - TOLERANCE;
}
