import { type Dimensions, type Span, dimensionRow } from '../drafting/dimension.ts';
import type { Stroke } from '../drafting/ink.ts';
import { type Label, labelBox, textWidth } from '../drafting/label.ts';
import type { Point } from '../drafting/point.ts';
import { shownReading, words } from '../drafting/reading.ts';
import { type Frame, type Look, FIRST_ROW, ROW, tiersOf } from './frame.ts';
import type { Measure, SectionShapes, Side } from './shapes.ts';

/** More of it where the name of a row stands over its line instead of beside it. */
export const NAME_OVER = 18;

function spanOf(measure: Measure, frame: Frame, look: Look): Span {
  const [from, to] = [frame.place(measure.from), frame.place(measure.to)];
  const alongX = measure.side === 'above' || measure.side === 'below';
  const end = (p: Point) => (alongX ? { along: p.x, feature: p.y } : { along: p.y, feature: p.x });
  return {
    from: measure.openAt === 'from' ? { ...end(from), feature: null } : end(from),
    to: measure.openAt === 'to' ? { ...end(to), feature: null } : end(to),
    text: shownReading(measure.text, look.unit),
    outside: measure.outside,
    ...(measure.openAt && { openAt: measure.openAt }),
    ...(measure.caution === true && { caution: true }),
    ...(look.set.includes(measure.id) && { set: true }),
  };
}

/** Where a row of dimensions lies across its direction, in px. */
function rowAt(side: Side, tier: number, frame: Frame, widest: number): number {
  const { box, row } = frame;
  if (side === 'above') return box.top - FIRST_ROW - tier * row;
  if (side === 'below') return box.bottom + FIRST_ROW - ROW - 4 + (tier + 1) * row;
  const out = 16 + widest / 2 + tier * (widest + 12);
  return side === 'left' ? box.left - out : box.right + out;
}

/** All rows of dimensions as they are drawn. */
export interface Rows extends Dimensions {
  /** How far words on the left run into the rows, in px. */
  readonly crowding: number;
}

/** The rows of dimensions on all four sides, with their names from `nameX` on. */
export function drawRows(
  shapes: SectionShapes,
  frame: Frame,
  narrow: boolean,
  look: Look,
  nameX: number,
  apart: boolean,
): Rows {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  let crowding = 0;
  for (const side of ['above', 'below', 'left', 'right'] as const) {
    const axis = side === 'above' || side === 'below' ? 'x' : 'y';
    for (let tier = 0; tier < tiersOf(shapes, side); tier++) {
      const measures = shapes.measures.filter((m) => m.side === side && m.tier === tier);
      const spans = measures.map((m) => spanOf(m, frame, look));
      const widest = Math.max(
        0,
        ...measures.map((m) => textWidth(shownReading(m.text, look.unit), 'number')),
      );
      const across = rowAt(side, tier, frame, widest);
      const row = dimensionRow(axis, across, spans);
      strokes.push(...row.strokes);
      labels.push(...row.labels);
      const name = shapes.rowNames[`${side} ${tier}`];
      if (axis === 'y' || name === undefined || spans.length === 0) continue;
      const label: Label = {
        x: nameX,
        y: frame.row > ROW ? across - NAME_OVER : across,
        anchor: 'start',
        kind: 'word',
        text: words(narrow ? name.short : name.long),
      };
      const numbers = row.labels.map(labelBox);
      // A name over its line only has to keep clear of a number that stands over it too.
      const leftmost =
        frame.row > ROW
          ? Math.min(...numbers.filter((box) => box.bottom < across).map((box) => box.left))
          : Math.min(
              ...spans.map((span) => Math.min(span.from.along, span.to.along) - 6),
              ...numbers.map((box) => box.left),
            );
      const over = labelBox(label).right + 12 - leftmost;
      // Names that the joint at home has taught make way when it is pulled apart.
      if (apart && over > 0) continue;
      labels.push(label);
      crowding = Math.max(crowding, over);
    }
  }
  return { strokes, labels, crowding };
}
