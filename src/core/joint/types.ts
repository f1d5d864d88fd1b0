import type { Mm } from '../length/mm.ts';
import type { Sentence } from '../working/sentence.ts';
import type { WorkingStep } from '../working/types.ts';

/** Which stock, shop-table bands and defaults serve; not what the reader sees. */
export type System = 'in' | 'mm';

/**
 * The six joints. In each, board A is drilled in its end or edge and board B receives it.
 * - `edge`: two boards edge to edge into a panel
 * - `corner`: A's end or edge against B's face, at B's end
 * - `tee`: A's end or edge against B's face, away from B's ends
 * - `frame`: A, a rail's end, against B, a stile's edge
 * - `miter`: two members of a frame, both cut at 45°
 * - `leg`: A, an apron's end, into B, a square leg, with a second apron from the next side
 */
export type JointKind = 'edge' | 'corner' | 'tee' | 'frame' | 'miter' | 'leg';

/** A board as measured. `length` runs with the grain. */
export interface Board {
  readonly thickness: Mm;
  readonly width: Mm;
  readonly length: Mm;
  /** A species of `speciesNames`; without it the seasons can't be worked out. */
  readonly species?: string;
}

/** A dowel pin by its nominal size. */
export interface Pin {
  readonly diameter: Mm;
  readonly length: Mm;
}

/** What stands beyond the full diameter at the tip of a bit. */
export type BitPoint =
  /** A twist bit; `angle` is the included angle of its point in degrees (over 0, under 180). */
  | { readonly kind: 'twist'; readonly angle: number }
  /** A brad point; without a measured `spur`, 0.3 of the diameter (from memory). */
  | { readonly kind: 'brad'; readonly spur?: Mm }
  /** A bit with a long center point. */
  | { readonly kind: 'center'; readonly spur: Mm }
  /** A bit that is square at the tip: no point. */
  | { readonly kind: 'square' };

export interface Bit {
  /** Default: the pin's nominal diameter. */
  readonly diameter?: Mm;
  /** Default: a twist bit of 118°. */
  readonly point?: BitPoint;
}

/** The drilling guide, as measured. */
export interface Guide {
  /** Length of the bushing that the bit passes through. Default: 1 in or 25 mm. */
  readonly bushing?: Mm;
  /** Gap between the bushing and the wood. Default 0. */
  readonly standoff?: Mm;
  /** How far its hole lies off the middle of the board, signed; away from the reference face is positive. Default 0. */
  readonly offset?: Mm;
  /** True where the guide finds the middle of whatever board it is on. Default false. */
  readonly centering?: boolean;
}

/** Limits of the row of pins; each has a default that depends on the joint. */
export interface LayoutRule {
  /** From the end of the joint line to the first pin's center (miter: from the heel). */
  readonly endMargin?: Mm;
  readonly maxPitch?: Mm;
  readonly minPitch?: Mm;
  /** Smallest division of the rule that the marks are laid out with. Default 1/32 in or 0.5 mm. */
  readonly graduation?: Mm;
}

/** What the learner sets. Lengths in mm; everything but the kind, system and boards has a default. */
export interface JointSpec {
  readonly kind: JointKind;
  readonly system: System;
  readonly a: Board;
  readonly b: Board;
  /** Where A is drilled in a corner or tee joint. Default 'end'. */
  readonly drilled?: 'end' | 'edge';
  /** Length of the joint line, where it is not the drilled side's own. */
  readonly jointLength?: Mm;
  /** Default 'choose': the calculator picks from stock. */
  readonly pin?: Pin | 'choose';
  /** Pins at hand. Default: `stockPins(system)`. */
  readonly stock?: readonly Pin[];
  /** Default 'shop-table'. */
  readonly diameterRule?: 'shop-table' | 'ratio';
  /** Free depth past the pin's end in each hole. Default 1/8 in or 3 mm. */
  readonly allowance?: Mm;
  /** Wood beyond the bit's point. Default: by the rule in MODEL.md. */
  readonly leave?: Mm;
  readonly bit?: Bit;
  readonly guide?: Guide;
  readonly layout?: LayoutRule;
  /** Corner: B's end beyond A's face. Default 0. */
  readonly overhang?: Mm;
  /** Tee, frame: from B's reference end to A's reference face (tee) or edge (frame). Default 0. */
  readonly at?: Mm;
  /** Edge, frame: how far A's reference face lies behind B's. Default 0. */
  readonly reveal?: Mm;
  /** Leg: from the leg's outer face to the apron's. Default 1/8 in or 3 mm. */
  readonly setback?: Mm;
  /** Leg: how far the second apron's row is shifted along the leg. Default 0. */
  readonly stagger?: Mm;
}

/** A spec with every default filled in, as the plan was worked out from it. */
export interface ResolvedSpec {
  readonly kind: JointKind;
  readonly system: System;
  readonly a: Board;
  readonly b: Board;
  readonly drilled: 'end' | 'edge';
  readonly jointLength: Mm;
  readonly diameterRule: 'shop-table' | 'ratio';
  readonly allowance: Mm;
  readonly leave: Mm;
  readonly bit: { readonly diameter: Mm; readonly point: BitPoint; readonly tip: Mm };
  readonly guide: Required<Guide>;
  readonly layout: Required<LayoutRule>;
  readonly overhang: Mm;
  readonly at: Mm;
  readonly reveal: Mm;
  readonly setback: Mm;
  readonly stagger: Mm;
}

/** The numbers of one member, all in mm. */
export interface MemberPlan {
  /** Length of pin that this member holds. */
  readonly engagement: Mm;
  /** Full-diameter depth of the hole: engagement and allowance. */
  readonly holeDepth: Mm;
  /** Wood along the hole's axis as far as it may go: to the far face, edge or end. */
  readonly limit: Mm;
  /** Wood between the bit's point and the far face; negative where it comes through (an error caution says so). */
  readonly woodLeft: Mm;
  /** Least wood beside the hole; null for a tee's face, which has none to run out of. */
  readonly wall: Mm | null;
  /** From the collar to the full-diameter corner of the bit. */
  readonly stop: Mm;
  /** From the collar to the very point of the bit. */
  readonly stopFromPoint: Mm;
}

/** Where one pin goes, in mm. */
export interface Hole {
  /** Along the joint line from A's reference end (miter: from the heel). */
  readonly along: Mm;
  /** The same pin from B's reference end: `along`, and in a frame `at` more. */
  readonly alongB: Mm;
  /** From A's reference face. */
  readonly acrossA: Mm;
  /** From B's reference face (edge, frame, miter), end (corner, tee) or outer face (leg). */
  readonly acrossB: Mm;
}

/** What became of a stock pin when one was chosen. */
export interface ConsideredPin {
  readonly pin: Pin;
  readonly verdict: 'chosen' | 'fits' | 'rejected';
  readonly reason: Sentence;
}

export type Severity = 'note' | 'caution' | 'error';

/** Something the learner should know. `message` and `remedy` are written in the spec's own system. */
export interface Caution {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly remedy: string;
  /** The same, with lengths left open for the reader's unit. */
  readonly says: { readonly message: Sentence; readonly remedy: Sentence };
}

/** The answer of `planJoint`. Lengths in mm. */
export interface JointPlan {
  readonly kind: JointKind;
  readonly system: System;
  /** False where an error caution says that the joint can't be made as set. */
  readonly ok: boolean;
  readonly spec: ResolvedSpec;
  /** The pin planned with; null only where the input gave nothing to plan with. */
  readonly pin: Pin | null;
  readonly a: MemberPlan;
  readonly b: MemberPlan;
  /** Empty only where the input gave nothing to plan with. */
  readonly holes: readonly Hole[];
  /** Exact distances from A's reference end (miter: from the heel). */
  readonly positions: readonly Mm[];
  /** The positions rounded to the rule's graduation: the same list for both boards. */
  readonly marks: readonly Mm[];
  /** Leg: the second apron's positions from the same end; else empty. */
  readonly secondRow: readonly Mm[];
  readonly considered: readonly ConsideredPin[];
  readonly cautions: readonly Caution[];
  /** How each number came about, in the order of reckoning; ids such as 'b.engagement'. */
  readonly working: readonly WorkingStep[];
}
