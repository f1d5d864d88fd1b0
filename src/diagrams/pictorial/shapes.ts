import type { Place } from './space.ts';

export type Member = 'a' | 'b' | 'second';

/** A corner of a board seen from above. */
export interface Corner {
  readonly x: number;
  readonly y: number;
}

/** A board as an upright prism, in mm of the real joint. */
export interface Solid {
  readonly member: Member;
  /** Corners from above, counterclockwise; side 0 runs from corner 0 to corner 1. */
  readonly base: readonly Corner[];
  readonly bottom: number;
  readonly top: number;
  /** Where the board goes on: numbers of sides, and whether its top or bottom is cut. */
  readonly broken: {
    readonly sides: readonly number[];
    readonly top: boolean;
    readonly bottom: boolean;
  };
  readonly grain: Grain;
  readonly letter: { readonly text: string; readonly at: Place };
}

/** The fibers of a board, and where the pith of its tree ran. */
export interface Grain {
  /** Unit vector along the fibers. */
  readonly along: Place;
  /** A place on the pith. */
  readonly pith: Place;
  /** From one ring of growth that is drawn to the next, mm. */
  readonly ring: number;
}

/** A hole in a mating face, in mm. */
export interface Bore {
  readonly member: Member;
  /** Number of its pin in the row. */
  readonly pin: number;
  /** The middle of its mouth, on the mating face. */
  readonly mouth: Place;
  /** Unit vector into the wood. */
  readonly into: Place;
  readonly radius: number;
  /** At full diameter. */
  readonly depth: number;
}

/** A pin, in mm. */
export interface Dowel {
  /** Middle of the end in A (or in the second apron). */
  readonly from: Place;
  /** Middle of the end in B. */
  readonly to: Place;
  readonly radius: number;
  /** How far its ends are eased. */
  readonly ease: number;
  /** As much of it as stands out of B, from `from`; the rest is hidden in B. */
  readonly seen: number;
}

/** A face or edge mark, on the surface of a board. */
export interface SurfaceMark {
  readonly kind: 'face' | 'edge';
  readonly member: Member;
  /** On the arris that the mark points at. */
  readonly at: Place;
  /** Unit vectors in the surface: along the arris, and from it into the surface. */
  readonly along: Place;
  readonly into: Place;
}

/** A word with an arrow at what it names. */
export interface Cue {
  readonly text: string;
  /** What the arrow points at. */
  readonly at: Place;
  /** Unit vector from there to the word. */
  readonly from: Place;
  /** The reader sets what it says. */
  readonly set?: boolean;
}

/** Where a pin arrives that finds no hole: a circle on a mating face. */
export interface Arrival {
  readonly member: Member;
  readonly at: Place;
  readonly normal: Place;
  readonly radius: number;
}

/** Everything to be drawn. Solids stand in the order in which they are drawn, the farthest first. */
export interface PictorialShapes {
  /** Degrees that the joint is turned before it is looked at. */
  readonly turn: number;
  readonly solids: readonly Solid[];
  readonly bores: readonly Bore[];
  readonly dowels: readonly Dowel[];
  /** From mouth to mouth, along each pin. */
  readonly axes: readonly (readonly [Place, Place])[];
  readonly marks: readonly SurfaceMark[];
  readonly cues?: readonly Cue[];
  readonly arrivals?: readonly Arrival[];
  /** Pins beyond the break of a long joint, which are not drawn. */
  readonly beyond: number;
}
