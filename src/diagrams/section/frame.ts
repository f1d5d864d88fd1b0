import { type Box, type Point, boxAround } from '../drafting/point.ts';
import type { Unit } from '../drafting/reading.ts';
import type { SectionShapes, Side } from './shapes.ts';

/** From one row of dimensions to the next, in px. */
export const ROW = 31;
/** From the joint to the first row, in px. */
export const FIRST_ROW = 30;

/** How the reader has it. */
export interface Look {
  readonly unit: Unit | 'both';
  /** Ids of the measures that the reader controls. */
  readonly set: readonly string[];
}

/** How the page and the joint lie to each other. */
export interface Frame {
  /** px for a mm. */
  readonly scale: number;
  readonly place: (point: Point) => Point;
  /** The joint on the page, in px. */
  readonly box: Box;
  /** From one row of dimensions to the next, in px. */
  readonly row: number;
}

/** How many rows of dimensions a side of the joint has. */
export function tiersOf(shapes: SectionShapes, side: Side): number {
  const tiers = shapes.measures.filter((m) => m.side === side).map((m) => m.tier + 1);
  return Math.max(0, ...tiers);
}

/** The box around all that is drawn of the joint, in mm. */
export function boundsOf(shapes: SectionShapes): Box {
  const points = [
    ...shapes.bodies.flatMap((body) => body.outline),
    ...shapes.bores.flatMap((bore) => bore.outline),
    ...shapes.dowels.flatMap((dowel) => dowel.outline),
  ];
  return boxAround(points) ?? { left: 0, top: 0, right: 1, bottom: 1 };
}
