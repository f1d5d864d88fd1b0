import type { Standing } from '../../../src/core/index.ts';

/** One published value, and how the calculator comes to its own. */
export interface PublishedRow {
  /** What is compared, in plain words. */
  readonly what: string;
  readonly source: string;
  readonly standing: Standing;
  readonly unit: string;
  readonly published: number;
  /** How far the two may lie apart: what the published value was rounded to, or says of itself. */
  readonly tolerance: number;
  readonly compute: () => number;
}
