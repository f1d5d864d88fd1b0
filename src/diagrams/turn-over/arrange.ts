import type { Mm } from '../../core/index.ts';
import { type Span, dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { faceMark } from '../drafting/marks.ts';
import { circle, closed, open } from '../drafting/path.ts';
import { reading, words } from '../drafting/reading.ts';

/** Sizes in px. The offset is drawn as large as this whatever it is: to scale no one would see it. */
const OFF = 22;
const HOLE = 30;
const THICK = 132;
const LEFT = 96;
const RIGHT = 100;
const TOP = 44;
const HEIGHT = 226;

/**
 * The edge of the board of a turn-over test, seen as it is drilled: the reference face above, the
 * two holes side by side, each off the middle by the offset. Not to scale.
 *
 * @param apart distance of the holes across the board, mm; null where nobody measured it
 * @param offset signed, away from the reference face positive; null likewise
 * @param width in px, at least 300
 */
export function arrangeTurnOver(apart: Mm | null, offset: Mm | null, width: number): Sheet {
  const sign = offset === null ? 1 : Math.sign(offset);
  const [left, right] = [LEFT, width - RIGHT];
  const bottom = TOP + THICK;
  const middle = TOP + THICK / 2;
  const first = { x: left + (right - left) * 0.28, y: middle + sign * OFF };
  const second = { x: left + (right - left) * 0.72, y: middle - sign * OFF };
  const strokes: Stroke[] = [
    {
      pen: 'wood-a',
      d: closed([
        { x: left, y: TOP },
        { x: right, y: TOP },
        { x: right, y: bottom },
        { x: left, y: bottom },
      ]),
    },
    // The board runs on to both sides.
    {
      pen: 'outline',
      d: open([
        { x: left, y: TOP },
        { x: right, y: TOP },
      ]),
    },
    {
      pen: 'outline',
      d: open([
        { x: left, y: bottom },
        { x: right, y: bottom },
      ]),
    },
    { pen: 'mark', d: faceMark({ x: left + 26, y: TOP }) },
    ...[first, second].flatMap((center): Stroke[] => [
      { pen: 'hole', d: circle(center, HOLE) },
      { pen: 'outline', d: circle(center, HOLE) },
      {
        pen: 'thin',
        d: open([
          { x: center.x, y: center.y - 7 },
          { x: center.x, y: center.y + 7 },
        ]),
      },
    ]),
    {
      pen: 'center',
      d: open([
        { x: left - 14, y: middle },
        { x: right + 4, y: middle },
      ]),
    },
  ];
  const labels: Label[] = [
    {
      x: left + 44,
      y: TOP - 14,
      anchor: 'start',
      kind: 'word',
      text: words('reference face'),
    },
    { x: first.x, y: bottom + 22, anchor: 'middle', kind: 'word', text: words('hole 1') },
    {
      x: second.x,
      y: bottom + 22,
      anchor: 'middle',
      kind: 'word',
      text: words('hole 2'),
    },
  ];
  const length = (value: Mm | null) =>
    value === null ? words('?') : reading((write) => write(Math.abs(value)));
  const spans = (
    text: ReturnType<typeof length>,
    ends: readonly { readonly along: number; readonly feature: number }[],
    outside: Span['outside'],
    set: boolean,
  ): Span[] => {
    const [from, to] = [...ends].sort((one, other) => one.along - other.along);
    return from && to && from.along !== to.along ? [{ from, to, text, outside, set }] : [];
  };
  const rows = [
    dimensionRow(
      'y',
      right + 42,
      spans(
        length(apart),
        [
          { along: first.y, feature: first.x },
          { along: second.y, feature: second.x },
        ],
        'after',
        true,
      ),
    ),
    dimensionRow(
      'y',
      left - 26,
      spans(
        length(offset),
        [
          { along: first.y, feature: first.x },
          { along: middle, feature: left - 14 },
        ],
        'before',
        false,
      ),
    ),
  ];
  return {
    width,
    height: HEIGHT,
    strokes: [...strokes, ...rows.flatMap((row) => row.strokes)],
    labels: [...labels, ...rows.flatMap((row) => row.labels)],
    hatches: [],
  };
}
