import type { Standing } from '../core/index.ts';

/**
 * What a value is counted in: a length, in mm, which the reader sees in the reader's unit; or a
 * unit that stands as it was published, with the decimals that it was published to.
 */
export type CheckUnit = 'length' | { readonly name: string; readonly decimals: number };

/** A rule that leaves room: anything from `from` to `to` keeps to it. */
export interface PublishedRange {
  readonly from: number;
  readonly to: number;
}

/** One published value beside the calculator's own. */
export interface CheckRow {
  /** What is compared, in plain words. */
  readonly what: string;
  readonly unit: CheckUnit;
  readonly published: number | PublishedRange;
  readonly computed: number;
  /**
   * How far the two may lie apart: what the published value was rounded to, or says of itself.
   * null: shown only, because rules of the shop differ among themselves and none is the true one.
   */
  readonly tolerance: number | null;
  readonly source: string;
  readonly standing: Standing;
}

/** Rows about one subject. */
export interface CheckGroup {
  /** Its address on the page. */
  readonly id: string;
  readonly title: string;
  /** What is compared with what, in a sentence or two. */
  readonly says: string;
  readonly rows: readonly CheckRow[];
}

/** `shown`: nothing was judged, since the published value is too weak or only one habit of several. */
export type Verdict = 'agrees' | 'differs' | 'shown';

/** Computed less published; from a range, how far beyond its nearer end, 0 within it. */
export function differenceOf({ published, computed }: CheckRow): number {
  if (typeof published === 'number') return computed - published;
  if (computed < published.from) return computed - published.from;
  return Math.max(0, computed - published.to);
}

/**
 * Whether a row agrees. Only what follows from the shape or was read in a copy of its source is
 * judged; a value that is second-hand, common practice or from memory proves nothing either way.
 */
export function verdictOf(row: CheckRow): Verdict {
  const strong = row.standing === 'geometry' || row.standing === 'read';
  if (!strong || row.tolerance === null) return 'shown';
  return Math.abs(differenceOf(row)) <= row.tolerance ? 'agrees' : 'differs';
}
