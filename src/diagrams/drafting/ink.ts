import type { Label } from './label.ts';

/**
 * How a line or an area is drawn. Thick lines are what is seen, thin lines say something about it
 * (ISO 128-2: two weights, 2 : 1).
 * - `outline` visible edge, thick · `hidden` hidden edge, dashed · `thin` dimension and extension
 *   line, break line · `center` chain line · `phantom` what a bit does beyond the wood, dashed
 * - `arrow` filled arrowhead or dot · areas: `wood-a`, `wood-b`, `hole`, `pin`, `steel`, `glue`
 * - `grain` lines of the wood on a surface · `shade` over a surface that looks away from the light
 * - `mark` face and edge marks · `sign` the caution mark
 */
export type Pen =
  | 'outline'
  | 'hidden'
  | 'thin'
  | 'center'
  | 'phantom'
  | 'arrow'
  | 'wood-a'
  | 'wood-b'
  | 'grain'
  | 'shade'
  | 'hole'
  | 'pin'
  | 'steel'
  | 'glue'
  | 'mark'
  | 'sign';

/** A line or area of a drawing in px, drawn in the order of the list. */
export interface Stroke {
  readonly pen: Pen;
  /** SVG path data. */
  readonly d: string;
  /** Section lines over the area, by the name of their pattern. */
  readonly hatch?: string;
  /** The reader sets what this shows: drawn in the accent, and thicker. */
  readonly set?: boolean;
  readonly caution?: boolean;
}

/** A drawing laid out for a width, in px: one unit of the SVG is one px. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
  readonly hatches: readonly Hatch[];
}

/** A pattern of section lines. */
export interface Hatch {
  readonly name: string;
  readonly grain: 'end' | 'long';
  /** Turn of the lines in degrees, clockwise: 0 runs to the right. */
  readonly angle: number;
  /** Section lines of metal, in ink and not in the color of wood. */
  readonly metal?: boolean;
}
