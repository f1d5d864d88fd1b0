import { type Dimensions, arrowAt } from './dimension.ts';
import type { Stroke } from './ink.ts';
import { type Label, NUMBER_SIZE, textWidth } from './label.ts';
import { open } from './path.ts';
import { type Point, shift } from './point.ts';
import type { Reading } from './reading.ts';

const GAP = 6;
const TAIL = 30;

/** A length that lies neither level nor upright, in px. */
export interface Slant {
  readonly from: Point;
  readonly to: Point;
  readonly text: Reading;
  /** How far the dimension line stands to the left of the way from `from` to `to`. */
  readonly offset: number;
  readonly set?: boolean;
  readonly caution?: boolean;
}

/**
 * A dimension along a slanted length, its number upright. Where the length is too short for its
 * arrowheads they point at it from outside, and the number stands beyond `to`.
 */
export function slantedDimension(slant: Slant): Dimensions {
  const { from, to, offset, text } = slant;
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const [p, q] = [from, to].map((end) => shift(end, uy * offset, -ux * offset)) as [Point, Point];
  const look = {
    ...(slant.set === true && { set: true }),
    ...(slant.caution === true && { caution: true }),
  };
  const strokes: Stroke[] = [];
  const line = (...points: Point[]) => strokes.push({ pen: 'thin', d: open(points), ...look });
  const arrow = (tip: Point, dx: number, dy: number) =>
    strokes.push({ pen: 'arrow', d: arrowAt(tip, dx, dy), ...look });
  if (offset !== 0) {
    for (const [feature, end] of [
      [from, p],
      [to, q],
    ] as const) {
      const away = Math.sign(offset);
      strokes.push({
        pen: 'thin',
        d: open([
          shift(feature, uy * away * 3, -ux * away * 3),
          shift(end, uy * away * 4, -ux * away * 4),
        ]),
      });
    }
  }
  const width = textWidth(text, 'number');
  // The number stands upright in a slanted line: it breaks as much of it as its box covers.
  const broken = Math.min(
    width / Math.max(Math.abs(ux), 1e-6),
    (NUMBER_SIZE + 4) / Math.max(Math.abs(uy), 1e-6),
  );
  if (length >= broken + 44) {
    const middle = shift(p, (ux * length) / 2, (uy * length) / 2);
    const half = broken / 2 + GAP;
    line(p, shift(middle, -ux * half, -uy * half));
    line(shift(middle, ux * half, uy * half), q);
    arrow(p, -ux, -uy);
    arrow(q, ux, uy);
    return { strokes, labels: [{ ...middle, anchor: 'middle', kind: 'number', text, ...look }] };
  }
  const end = shift(q, ux * TAIL, uy * TAIL);
  line(p, end);
  arrow(p, ux, uy);
  arrow(q, -ux, -uy);
  const label: Label = {
    x: end.x + Math.sign(ux) * GAP,
    y: end.y,
    anchor: ux < 0 ? 'end' : 'start',
    kind: 'number',
    text,
    ...look,
  };
  return { strokes, labels: [label] };
}
