import { type Mm, inches, mm } from '../length/mm.ts';
import type { SourceId } from '../working/sources.ts';

/** A board size by the name it is sold under, with what it measures. */
export interface SoldSize {
  /** What the yard calls it: '4/4', '1 × 6', '18 mm'. */
  readonly name: string;
  /** Actual thickness in mm. */
  readonly thickness: Mm;
  /** Actual width in mm, where the name fixes it. */
  readonly width?: Mm;
}

/** Sizes sold under one rule. */
export interface SoldGroup {
  readonly name: string;
  readonly source: SourceId;
  readonly sizes: readonly SoldSize[];
}

const SOFTWOOD_THICKNESS: readonly (readonly [nominal: string, actual: number])[] = [
  ['1', 3 / 4],
  ['1 1/4', 1],
  ['1 1/2', 1 + 1 / 4],
  ['2', 1 + 1 / 2],
];

const SOFTWOOD_WIDTH: readonly (readonly [nominal: string, actual: number])[] = [
  ['2', 1 + 1 / 2],
  ['3', 2 + 1 / 2],
  ['4', 3 + 1 / 2],
  ['6', 5 + 1 / 2],
  ['8', 7 + 1 / 4],
  ['10', 9 + 1 / 4],
  ['12', 11 + 1 / 4],
];

const HARDWOOD: readonly (readonly [quarters: string, actual: number])[] = [
  ['1/2', 5 / 16],
  ['5/8', 7 / 16],
  ['3/4', 9 / 16],
  ['4/4', 13 / 16],
  ['5/4', 1 + 1 / 16],
  ['6/4', 1 + 5 / 16],
  ['8/4', 1 + 3 / 4],
  ['12/4', 2 + 3 / 4],
  ['16/4', 3 + 3 / 4],
];

const METRIC_THICKNESS = [12, 15, 16, 18, 20, 22, 25, 30, 40];

/**
 * Boards by the name they are sold under: softwood by PS 20, dry and dressed; hardwood in
 * quarters, surfaced two sides; metric by its own number. A name is not a measurement: the
 * actual board is measured, and this only gives a start.
 */
export const boardsAsSold: readonly SoldGroup[] = [
  {
    name: 'Softwood, dressed',
    source: 'softwood-standard',
    sizes: SOFTWOOD_THICKNESS.flatMap(([thick, thickness]) =>
      SOFTWOOD_WIDTH.map(([wide, width]) => ({
        name: `${thick} × ${wide}`,
        thickness: inches(thickness),
        width: inches(width),
      })),
    ),
  },
  {
    name: 'Hardwood, surfaced two sides',
    source: 'hardwood-tables',
    sizes: HARDWOOD.map(([name, thickness]) => ({ name, thickness: inches(thickness) })),
  },
  {
    name: 'Metric, by thickness',
    source: 'setting',
    sizes: METRIC_THICKNESS.map((thickness) => ({
      name: `${thickness} mm`,
      thickness: mm(thickness),
    })),
  },
];
