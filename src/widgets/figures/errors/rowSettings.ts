import { type Mm, mm } from '../../../core/length/mm.ts';
import type { RowErrors } from '../../../core/trial/rowErrors.ts';

/** What the reader sets besides the number of pins. Lengths in mm. */
export interface RowSettings {
  /** From one pin to the next. */
  readonly spacing: Mm;
  /** From the end of the joint to the first pin, and from the last to the other end. */
  readonly margin: Mm;
  /** Hole less pin: half of it in each hole to a side, both holes together as a radius. */
  readonly play: Mm;
  /** Standard deviation of a hole's place along and across the row. */
  readonly sigmaAlong: Mm;
  readonly sigmaAcross: Mm;
  /** How far the guide drills off the middle of the board. */
  readonly guideOff: Mm;
  /** Whether one of the boards was turned over when it was drilled. */
  readonly turnedOver: boolean;
  /** Whether the boards are free to turn on their pins. */
  readonly mayTurn: boolean;
  /** How far the faces may stand off each other and count as flush. */
  readonly flushWithin: Mm;
}

/** The longest row that is tried. */
export const MOST_PINS = 10;
/** Joints tried for each number of pins: as many as an answer within a frame or two allows. */
export const TRIALS = 1000;
export const SEED = 1;

/** A row of so many pins, in a joint as long as it needs. */
export function rowOf(settings: RowSettings, pins: number): RowErrors {
  const { spacing, margin, play, sigmaAlong, sigmaAcross, mayTurn } = settings;
  return {
    positions: Array.from({ length: pins }, (_, j) => mm(margin + j * spacing)),
    radialPlay: play,
    sigmaAlong,
    sigmaAcross,
    bias: { along: mm(0), across: biasOf(settings) },
    length: mm(2 * margin + (pins - 1) * spacing),
    mayTurn,
    seed: SEED,
  };
}

/**
 * How far all of B's holes lie off A's. Both boards drilled from the same face share the guide's
 * offset; with one turned over it counts twice.
 */
export function biasOf({ guideOff, turnedOver }: RowSettings): Mm {
  return mm(turnedOver ? 2 * guideOff : 0);
}
