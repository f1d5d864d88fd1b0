/**
 * Refuses what is not a finite number: a mistake of the program that calls, not of a learner.
 * Throws a TypeError that names the field.
 */
export function requireNumber(field: string, value: unknown): void {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new TypeError(`${field} must be a finite number, not ${String(value)}`);
  }
}

/** Refuses, besides, what is under `least`: throws a RangeError that names the field. */
export function requireAtLeast(field: string, value: number, least: number): void {
  requireNumber(field, value);
  if (value < least) throw new RangeError(`${field} must be ${least} or more, not ${value}`);
}

/** Refuses what is 0 or less: throws a RangeError that names the field. */
export function requirePositive(field: string, value: number): void {
  requireNumber(field, value);
  if (value <= 0) throw new RangeError(`${field} must be more than 0, not ${value}`);
}

/** Refuses what is not a whole number of at least `least`: throws a RangeError that names the field. */
export function requireCount(field: string, value: number, least: number): void {
  requireAtLeast(field, value, least);
  if (!Number.isInteger(value)) {
    throw new RangeError(`${field} must be a whole number, not ${value}`);
  }
}
