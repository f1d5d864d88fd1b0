import type { DryFit } from '../../core/trial/dryFit.ts';
import type { Trial } from '../../core/trial/trial.ts';
import { diameterOfPin } from '../../core/fit/fit.ts';

/** A pin where it comes to rest, mm. */
export interface Seat {
  /** How much of it is in each hole. */
  readonly inA: number;
  readonly inB: number;
  /** From A's end or edge to B, at this pin. */
  readonly opening: number;
}

/** Two boards as far together as they go, mm. */
export interface Seated {
  /**
   * From A's end or edge to B at the two ends of the joint: how it stands open on pins that are too
   * long, pressed in the middle; or, alike at both, where a pin that won't go in holds the boards.
   */
  readonly opening: { readonly start: number; readonly end: number };
  /** A pin won't go in: the boards are not as far together as their depths allow. */
  readonly stuck: boolean;
  readonly seats: readonly Seat[];
}

/** A pin's ends are eased: that much enters a hole that is too small for the rest of it, mm. */
export function easeOf(diameter: number, length: number): number {
  return Math.min(diameter / 8, length / 6);
}

/**
 * How far the boards go together and where each pin rests. A pin that misses its hole in B rests on
 * B's surface; one too thick for a hole enters it by its eased end; one whose holes lean apart
 * enters B until it begins to bind.
 */
export function seatPins(trial: Trial, outcome: DryFit): Seated {
  const most = trial.pins.map(({ pin, a, b }, j) => {
    const found = outcome.pins[j]!;
    const { length } = pin;
    const ease = easeOf(diameterOfPin(pin), length);
    const enters = (depth: number, tight: boolean) =>
      Math.min(depth, length, tight ? ease : Infinity);
    const inA = enters(a.depth, found.fit.a.clearance < 0);
    let inB = enters(b.depth, found.fit.b.clearance < 0);
    let stuck = found.tight;
    if (!outcome.fits && found.miss > 1e-6) {
      inB = 0;
      stuck = true;
    } else if (found.binds && !found.tight) {
      const apart = Math.hypot(a.lean.along + b.lean.along, a.lean.across + b.lean.across);
      const left = apart - found.fit.a.clearance / Math.max(inA, 1e-6);
      if (left > 0) inB = Math.min(inB, found.fit.b.clearance / left);
      stuck = true;
    }
    return { length, inA, inB, stuck };
  });
  const stuck = most.some((pin) => pin.stuck);
  const level = Math.max(outcome.gap, ...most.map(({ length, inA, inB }) => length - inA - inB));
  const { start, end } = stuck ? { start: level, end: level } : outcome.opening;
  return {
    opening: { start, end },
    stuck,
    seats: most.map(({ length, inA, inB }, j) => {
      const opening = start + ((end - start) * trial.pins[j]!.a.along) / trial.length;
      // Held off, a pin sits where it was put in first, in A; else both holes share the room.
      const least = Math.max(0, length - opening - inB);
      const held = stuck ? inA : Math.min(length, (least + inA) / 2);
      return { inA: held, inB: Math.max(0, length - opening - held), opening };
    }),
  };
}
