import type { Mm } from '../length/mm.ts';
import { NormalStream } from './normal.ts';
import { requireAtLeast, requireCount, requireNumber, requirePositive } from './require.ts';

/** A row of pins, and how well its holes are drilled. */
export interface RowErrors {
  /** Where the pins stand along the row, mm; at least one. */
  readonly positions: readonly Mm[];
  /** Play of a pin in both holes together, as a radius, mm, 0 or more: one for all, or one for each. */
  readonly radialPlay: Mm | readonly Mm[];
  /** Standard deviation of every hole's error along the row, mm, 0 or more. */
  readonly sigmaAlong: Mm;
  /** The same across the row. */
  readonly sigmaAcross: Mm;
  /** How far all of B's holes lie off A's, mm. Default: nothing. */
  readonly bias?: { readonly along: Mm; readonly across: Mm };
  /** Length of the joint, mm, more than 0: the step is looked at on both its ends. */
  readonly length: Mm;
  /** Whether the boards are free to turn on their pins. */
  readonly mayTurn: boolean;
  /** A whole number; the same seed gives the same errors. */
  readonly seed: number;
}

/**
 * Refuses a row that makes no sense, and returns the play of each pin. Throws a TypeError or a
 * RangeError that names what is out of range.
 */
export function checkedPlay(input: RowErrors): readonly number[] {
  const { positions, radialPlay } = input;
  requireCount('positions.length', positions.length, 1);
  positions.forEach((x, j) => requireNumber(`positions[${j}]`, x));
  const play = typeof radialPlay === 'number' ? positions.map(() => radialPlay) : radialPlay;
  if (play.length !== positions.length) {
    throw new RangeError(`radialPlay must have one entry for each of the positions`);
  }
  play.forEach((r, j) => requireAtLeast(`radialPlay[${j}]`, r, 0));
  requireAtLeast('sigmaAlong', input.sigmaAlong, 0);
  requireAtLeast('sigmaAcross', input.sigmaAcross, 0);
  if (input.bias !== undefined) {
    requireNumber('bias.along', input.bias.along);
    requireNumber('bias.across', input.bias.across);
  }
  requirePositive('length', input.length);
  requireNumber('seed', input.seed);
  return play;
}

/**
 * A stream of deviates for each pin, so that the first pins of a longer row draw the same errors.
 * A joint takes from each stream one along and one across.
 */
export function pinStreams(seed: number, count: number): readonly NormalStream[] {
  return Array.from({ length: count }, (_, j) => new NormalStream(seed, j));
}

/** A's hole and B's are both off: their difference has √2 times the deviation of either. */
export const BOTH_HOLES = Math.SQRT2;
