import type { Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { circle, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';

/** Half of a balloon's width, px: as large as a button has to be at least. */
export const BALLOON = 15;

/** The letters of balloons; A and B are the boards. */
export const BALLOON_LETTERS = 'PQRSTUVWXYZ';

/** A place of a drawing that can be pointed at: the middle of its balloon on the sheet, px. */
export interface Spot extends Point {
  readonly letter: string;
}

/** A letter in a circle, with a line that ends in a dot on what is meant (ISO 6433). */
export function drawBalloon(
  { letter, ...center }: Spot,
  tip: Point,
): { readonly strokes: readonly Stroke[]; readonly label: Label } {
  const away = Math.hypot(tip.x - center.x, tip.y - center.y);
  const rim = {
    x: center.x + ((tip.x - center.x) / away) * BALLOON,
    y: center.y + ((tip.y - center.y) / away) * BALLOON,
  };
  return {
    strokes: [
      { pen: 'thin', d: open([rim, tip]) },
      { pen: 'arrow', d: circle(tip, 2.5) },
      { pen: 'hole', d: circle(center, BALLOON) },
      { pen: 'mark', d: circle(center, BALLOON) },
    ],
    label: { ...center, anchor: 'middle', kind: 'number', text: words(letter) },
  };
}
