import type { PinDiameter } from '../fit/fit.ts';
import type { JointKind } from '../joint/types.ts';
import type { Mm } from '../length/mm.ts';
import type { BenchSetup } from './drill.ts';

/** One of the two boards of a joint. */
export type Member = 'a' | 'b';

/** A hole as it was drilled, in the frame of the assembled joint. */
export interface DrilledHole {
  /** Along the joint from A's reference end (miter: from the heel), at the hole's mouth, mm. */
  readonly along: Mm;
  /** Across the joint from where A's reference face is meant to be, at the mouth, mm. */
  readonly across: Mm;
  /** mm, more than 0. */
  readonly diameter: Mm;
  /** Depth at full diameter, mm, 0 or more; 0: the bit never left the bushing. */
  readonly depth: Mm;
  /** How far the hole drifts along and across for each mm that it goes in. */
  readonly lean: { readonly along: number; readonly across: number };
  /** Wood along the hole, to the far face, edge or end, mm. */
  readonly limit: Mm;
  /** What stands beyond the full diameter at the tip of its bit, mm, 0 or more. */
  readonly tip: Mm;
}

/** A pin as it is. */
export interface TrialPin extends PinDiameter {
  /** mm, more than 0. */
  readonly length: Mm;
}

/** Two drilled boards and their pins, about to be pushed together dry. */
export interface Trial {
  readonly kind: JointKind;
  /** Length of the joint, mm, more than 0. */
  readonly length: Mm;
  /** Whether the boards are free to turn on their pins, in the plane of the joint. */
  readonly mayTurn: boolean;
  /** At least one; each pin with its two holes. */
  readonly pins: readonly {
    readonly pin: TrialPin;
    readonly a: DrilledHole;
    readonly b: DrilledHole;
  }[];
  /** How it was drilled, where that is known: it gives faults the name of a setting. */
  readonly setup?: BenchSetup;
}
