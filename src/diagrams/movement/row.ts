import type { Mm } from '../../core/length/mm.ts';
import type { RowMovement } from '../../core/moisture/rowMovement.ts';
import { dimensionRow } from '../drafting/dimension.ts';
import type { Hatch, Pen, Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, textWidth } from '../drafting/label.ts';
import { breakLine } from '../drafting/breakLine.ts';
import { closed, open } from '../drafting/path.ts';
import { rectangle } from '../drafting/point.ts';
import {
  type Reading,
  type Unit,
  reading,
  shownReading,
  spoken,
  words,
} from '../drafting/reading.ts';
import { fine, spokenFine } from '../moisture/fine.ts';

/** A row of pins across a board's grain, over a year. */
export interface RowOfPins {
  /** A rail's end on a stile's edge, or a shelf's end on a side's face. */
  readonly joint: 'rail' | 'shelf';
  /** From the first pin to the last, mm. */
  readonly span: Mm;
  /** How much of its size each board gains from the dry end of the year to the damp one, along the row. */
  readonly growth: { readonly a: number; readonly b: number };
  readonly movement: RowMovement;
}

/** How much larger than to scale a change of size is drawn. */
export const MAGNIFIED = 10;

/** Px: the span as drawn, the boards beyond the outer pins, a pin's thickness and half its length. */
const SPAN = 140;
const BEYOND = 34;
const PIN = 11;
const PIN_HALF = 34;

/** Places on the sheet, in px up from the row's middle, dry and damp. */
export interface RowShapes {
  readonly pins: readonly number[];
  /** Where the holes of each board lie when damp. */
  readonly dampHoles: { readonly a: readonly number[]; readonly b: readonly number[] };
  /** Half the height of each board, dry and damp. */
  readonly half: { readonly dry: number; readonly dampA: number; readonly dampB: number };
}

/** The row with its growth magnified; the middle of the boards stays where it is. */
export function rowShapes({ growth }: RowOfPins): RowShapes {
  const pins = [-SPAN / 2, 0, SPAN / 2];
  const damp = (board: 'a' | 'b', at: number) => at * (1 + MAGNIFIED * growth[board]);
  const half = SPAN / 2 + BEYOND;
  return {
    pins,
    dampHoles: { a: pins.map((at) => damp('a', at)), b: pins.map((at) => damp('b', at)) },
    half: { dry: half, dampA: damp('a', half), dampB: damp('b', half) },
  };
}

interface Bar {
  readonly name: string;
  readonly value: number;
  readonly pen: Pen;
  readonly caution: boolean;
}

/** Two lengths under each other, to one scale. */
function drawBars(bars: readonly Bar[], top: number, width: number, unit: Unit | 'both') {
  const texts = bars.map(({ value }) => shownReading(fine(value), unit));
  const room = width - 12 - Math.max(...texts.map((text) => textWidth(text, 'number')));
  const scale = room / Math.max(1e-9, ...bars.map(({ value }) => value));
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  bars.forEach(({ name, value, pen, caution }, i) => {
    const y = top + i * 56;
    const end = 2 + Math.max(2, value * scale);
    const box = rectangle(2, end, y + 12, y + 30);
    strokes.push({ pen, d: closed(box) }, { pen: 'outline', d: closed(box) });
    labels.push(
      { x: 2, y, anchor: 'start', kind: 'word', text: words(name) },
      {
        x: end + 7,
        y: y + 21,
        anchor: 'start',
        kind: 'number',
        text: texts[i]!,
        ...(caution && { caution }),
      },
    );
  });
  return { strokes, labels };
}

/**
 * Draws a row of pins over a year on a sheet `width` px wide: the boards dry, and damp in dashes
 * with the change magnified; under it the change of the span against the play of the outer pins,
 * to one scale.
 */
export function arrangeRow(row: RowOfPins, width: number, unit: Unit | 'both'): Sheet {
  const shapes = rowShapes(row);
  const { joint, span, movement } = row;
  const middle = 56 + Math.max(shapes.half.dampA, shapes.half.dampB, shapes.half.dry);
  const rail = joint === 'rail';
  // The stile shows its edge's width, the side its thickness.
  const face = rail ? 118 : 96;
  const back = rail ? 34 : 52;
  const text = shownReading(
    reading((length) => length(span)),
    unit,
  );
  const number = textWidth(text, 'number');
  const right = Math.min(width - 16 - number, 500);
  const dimension = right + 12 + number / 2;
  const { dry, dampA, dampB } = shapes.half;
  const top = middle - dry;
  const bottom = middle + dry;
  const stileTop = rail ? middle - dampA - 14 : top;
  const stileBottom = rail ? middle + dampA + 14 : bottom;
  const end = breakLine({ x: right, y: top }, { x: right, y: bottom });
  const strokes: Stroke[] = [
    {
      pen: 'wood-a',
      d: closed([{ x: face, y: top }, ...end, { x: right, y: bottom }, { x: face, y: bottom }]),
      hatch: 'along',
    },
    {
      pen: 'outline',
      d: open([
        { x: face, y: top },
        { x: right, y: top },
      ]),
    },
    {
      pen: 'outline',
      d: open([
        { x: face, y: bottom },
        { x: right, y: bottom },
      ]),
    },
    { pen: 'thin', d: open([...end, { x: right, y: bottom }]) },
    {
      pen: 'wood-b',
      d: closed(rectangle(back, face, stileTop, stileBottom)),
      hatch: rail ? 'upright' : 'across',
    },
    {
      pen: 'outline',
      d: open([
        { x: back, y: stileTop },
        { x: back, y: stileBottom },
      ]),
    },
    {
      pen: 'outline',
      d: open([
        { x: face, y: stileTop },
        { x: face, y: stileBottom },
      ]),
    },
    ...(rail
      ? [stileTop, stileBottom].map((y): Stroke => {
          const line = breakLine({ x: back, y }, { x: face, y });
          return { pen: 'thin', d: open([...line, { x: face, y }]) };
        })
      : [stileTop, stileBottom].map((y): Stroke => ({
          pen: 'outline',
          d: open([
            { x: back, y },
            { x: face, y },
          ]),
        }))),
    ...shapes.pins.map((at): Stroke => ({
      pen: 'pin',
      d: closed(
        rectangle(
          face - (rail ? PIN_HALF : 26),
          face + PIN_HALF + (rail ? 0 : 8),
          middle + at - PIN / 2,
          middle + at + PIN / 2,
        ),
      ),
    })),
    // Damp: where the holes and the edges have gone.
    ...shapes.dampHoles.a.map((at): Stroke => ({
      pen: 'phantom',
      d: closed(
        rectangle(face, face + PIN_HALF + 14, middle + at - PIN / 2 - 1, middle + at + PIN / 2 + 1),
      ),
    })),
    ...[-dampA, dampA].map((at): Stroke => ({
      pen: 'phantom',
      d: open([
        { x: face, y: middle + at },
        { x: right, y: middle + at },
      ]),
    })),
    ...(dampB === dry
      ? []
      : [
          ...shapes.dampHoles.b.map((at): Stroke => ({
            pen: 'phantom',
            d: closed(
              rectangle(face - 32, face, middle + at - PIN / 2 - 1, middle + at + PIN / 2 + 1),
            ),
          })),
          ...[-dampB, dampB].map((at): Stroke => ({
            pen: 'phantom',
            d: open([
              { x: back, y: middle + at },
              { x: face, y: middle + at },
            ]),
          })),
        ]),
  ];
  const size = dimensionRow('y', dimension, [
    {
      from: { along: middle - SPAN / 2, feature: face + PIN_HALF + 22 },
      to: { along: middle + SPAN / 2, feature: face + PIN_HALF + 22 },
      text,
      outside: 'before',
      set: true,
    },
  ]);
  const below = middle + Math.max(dampA, dampB, dry) + 40;
  const held = movement.change > movement.play;
  const bars = drawBars(
    [
      {
        name: rail
          ? 'the wood between the outer pins moves'
          : 'one board moves more than the other',
        value: movement.change,
        pen: 'wood-a',
        caution: held,
      },
      { name: 'play of the outer pins', value: movement.play, pen: 'pin', caution: false },
    ],
    below + 36,
    Math.min(width, 620),
    unit,
  );
  const word = (x: number, y: number, says: Reading): Label => ({
    x,
    y,
    anchor: 'start',
    kind: 'word',
    text: shownReading(says, unit),
  });
  const letter = (name: 'A' | 'B', x: number, y: number): Label => ({
    x,
    y,
    anchor: 'middle',
    kind: 'letter',
    text: words(name),
    over: name === 'A' ? 'wood-a' : 'wood-b',
  });
  const hatches: Hatch[] = [
    { name: 'along', grain: 'long', angle: 0 },
    { name: 'upright', grain: 'long', angle: 90 },
    { name: 'across', grain: 'end', angle: 45 },
  ];
  return {
    width,
    height: below + 36 + 2 * 56 + 20,
    hatches,
    strokes: [...strokes, ...size.strokes, ...bars.strokes],
    labels: [
      word(
        2,
        13,
        words(rail ? 'a rail on a stile, from the front' : 'a shelf on a side, from above'),
      ),
      word(2, below, words(`dashes: damp, drawn ${MAGNIFIED} times`)),
      letter('A', (face + PIN_HALF + right) / 2 + 14, middle - SPAN / 4),
      letter('B', rail ? back + 22 : back + 14, middle - SPAN / 4),
      ...size.labels,
      ...bars.labels,
      word(2, below + 36 + 2 * 56, { in: 'inches', mm: 'millimeters' }),
    ],
  };
}

/** The drawing in a sentence or two. */
export function describeRow({ joint, span, movement }: RowOfPins, unit: Unit): string {
  const say = (length: number) => spokenFine(length, unit);
  const size = spoken(unit)(span);
  const what =
    joint === 'rail'
      ? `A rail is pinned to a stile over ${size} of its width. The stile keeps its length; the wood of the rail between the outer pins moves ${say(movement.change)} over the year.`
      : `A shelf is pinned to a side over ${size} of its width. Both boards swell the same way; one moves ${say(movement.change)} more than the other.`;
  return `${what} The outer pins have ${say(movement.play)} of play. The change grows with the span, the play does not.`;
}
