import type { Sheet } from '../../../diagrams/drafting/ink.ts';
import type { Spot } from '../../../diagrams/fault/balloon.ts';

/** A question's drawing, laid out: plain data, so that a page that shows it needs not draw it. */
export interface QuestionDrawing {
  readonly title: string;
  /** What it shows, in sentences, in both units. */
  readonly description: string;
  /** For a narrow screen, and one for a broad one where that is another. */
  readonly sheets: readonly [narrow: Sheet, broad?: Sheet];
  /** The places to be pointed at, by the ids of the question's choices. */
  readonly spots: Readonly<Record<string, Spot>>;
}
