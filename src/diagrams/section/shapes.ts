import type { Point, Segment } from '../drafting/point.ts';
import type { Reading } from '../drafting/reading.ts';

/** A board in section, in mm. */
export interface Body {
  readonly member: 'a' | 'b' | 'second';
  /** Corner to corner. */
  readonly outline: readonly Point[];
  /** Numbers of the sides where the board goes on; side 0 runs from corner 0 to corner 1. */
  readonly breaks: readonly number[];
  /** What the cut shows. */
  readonly grain: 'end' | 'long';
  /** Turn of the fibers, or of the section lines across them, in degrees clockwise. */
  readonly angle: number;
  readonly letter: { readonly text: string; readonly at: Point };
}

/** A hole in section, in mm. */
export interface Bore {
  readonly member: Body['member'];
  /** From one side of the mouth round the bottom to the other. */
  readonly outline: readonly Point[];
  /** The parts of the outline in the wood. */
  readonly inWood: readonly (readonly Point[])[];
  /** The parts that came out of it. */
  readonly through: readonly (readonly Point[])[];
  /** Where the full diameter ends, if a point goes on. */
  readonly shoulder: Segment | null;
  readonly mouth: Segment;
  /** It lies at another height than the cut. */
  readonly hidden: boolean;
}

/** A pin with eased ends, in mm. */
export interface Dowel {
  readonly outline: readonly Point[];
  readonly hidden: boolean;
}

/** Where a measure stands on the drawing; tiers count from the joint outward. */
export type Side = 'above' | 'below' | 'left' | 'right';

/** A length to be dimensioned, in mm. */
export interface Measure {
  /** As in the plan's working: 'b.engagement'. */
  readonly id: string;
  readonly value: number;
  readonly text: Reading;
  /** The features that it runs between. */
  readonly from: Point;
  readonly to: Point;
  readonly side: Side;
  readonly tier: number;
  readonly openAt?: 'from' | 'to';
  readonly outside: 'before' | 'after' | 'over';
  readonly caution?: boolean;
}

/** A small step at the joint, dimensioned right where it is: overhang, reveal, setback. */
export interface Step {
  readonly id: string;
  readonly value: number;
  readonly text: Reading;
  /** x of the joint; the dimension stands to the left of it. */
  readonly x: number;
  readonly from: number;
  readonly to: number;
}

/** A length that lies neither level nor upright. */
export interface SlantedMeasure {
  readonly id: string;
  readonly value: number;
  readonly text: Reading;
  readonly from: Point;
  readonly to: Point;
  /** Distance of the dimension line in px, to the left of the way from `from` to `to`. */
  readonly offset: number;
  readonly caution?: boolean;
}

/** A word beside a point of the drawing; `dx`, `dy` in px from it. */
export interface Note {
  readonly text: Reading;
  readonly at: Point;
  readonly dx: number;
  readonly dy: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly kind: 'word' | 'number';
  /** What a leader line from the note points into. */
  readonly leader?: Point;
}

/** Everything to be drawn, in mm of the real joint. */
export interface SectionShapes {
  readonly bodies: readonly Body[];
  readonly bores: readonly Bore[];
  readonly dowels: readonly Dowel[];
  readonly axes: readonly Segment[];
  readonly measures: readonly Measure[];
  readonly steps: readonly Step[];
  readonly slanted: readonly SlantedMeasure[];
  readonly notes: readonly Note[];
  /** What a row of measures is called: 'above 0' → 'held'. */
  readonly rowNames: Readonly<Record<string, { readonly short: string; readonly long: string }>>;
  /** Face marks on reference faces, edge marks on reference edges and ends. */
  readonly marks: readonly {
    readonly kind: 'face' | 'edge';
    readonly at: Point;
    /** Degrees clockwise from standing upright on a face that looks up. */
    readonly turn: number;
  }[];
  /** Where a bit came through. */
  readonly cautions: readonly Point[];
}
