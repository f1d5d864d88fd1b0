import { ticks } from 'd3-array';
import type { ClosingOdds } from '../../core/trial/closingOdds.ts';
import type { Odds } from '../../core/trial/wilson.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';

const TOP = 118;
const TALL = 250;
const LINE = 23;
const CAP = 3.5;

/** Odds as a learner counts them: so many of 100 tries. */
export function ofHundred(probability: number): string {
  if (probability > 0 && probability < 0.005) return 'under 1';
  if (probability >= 0.995 && probability < 1) return 'over 99';
  return String(Math.round(100 * probability));
}

function square({ x, y }: Point): string {
  const r = 4;
  return closed([
    { x: x - r, y: y - r },
    { x: x + r, y: y - r },
    { x: x + r, y: y + r },
    { x: x - r, y: y + r },
  ]);
}

function triangle({ x, y }: Point): string {
  return closed([
    { x, y: y - 5 },
    { x: x + 5, y: y + 4 },
    { x: x - 5, y: y + 4 },
  ]);
}

/** What is counted of the joints tried, from left to right at each number of pins. */
const SERIES = [
  {
    of: (odds: ClosingOdds): Odds => odds,
    beside: -0.24,
    sign: (at: Point): Stroke => ({ pen: 'arrow', d: circle(at, 4.5) }),
    says: 'goes together',
  },
  {
    of: (odds: ClosingOdds): Odds => odds.flushable,
    beside: 0,
    sign: (at: Point): Stroke => ({ pen: 'mark', d: square(at) }),
    says: 'can be pushed flush too',
  },
  {
    of: (odds: ClosingOdds): Odds => odds.flush,
    beside: 0.24,
    sign: (at: Point): Stroke => ({ pen: 'mark', d: triangle(at) }),
    says: 'settles flush by itself',
  },
] as const;

/**
 * The odds for one pin, two pins and so on, on a sheet `width` px wide: a sign for each of three
 * outcomes, with its 95 % interval as a bar. `pins` is the number that the reader has chosen.
 */
export function arrangeOdds(all: readonly ClosingOdds[], pins: number, width: number): Sheet {
  const [left, right, bottom] = [42, width - 8, TOP + TALL];
  const column = (right - left) / all.length;
  const x = (count: number) => left + column * (count - 0.5);
  const y = (probability: number) => bottom - TALL * probability;
  const chosen = x(pins);
  const strokes: Stroke[] = [
    ...ticks(0, 100, 5).map((tick): Stroke => ({
      pen: 'thin',
      d: open([
        { x: left - 5, y: y(tick / 100) },
        { x: left, y: y(tick / 100) },
      ]),
    })),
    {
      pen: 'thin',
      d: open([
        { x: left, y: TOP },
        { x: left, y: bottom },
        { x: right, y: bottom },
      ]),
    },
    {
      pen: 'thin',
      set: true,
      d: open([
        { x: chosen - column / 2 + 2, y: bottom + 28 },
        { x: chosen + column / 2 - 2, y: bottom + 28 },
      ]),
    },
  ];
  for (const { of, beside, sign } of SERIES) {
    all.forEach((odds, i) => {
      const { probability, low, high } = of(odds);
      const at = { x: x(i + 1) + beside * column, y: y(probability) };
      const bar = [low, high].map((end): Point => ({ x: at.x, y: y(end) }));
      strokes.push(
        { pen: 'thin', d: open(bar) },
        ...bar.map((end): Stroke => ({
          pen: 'thin',
          d: open([
            { x: end.x - CAP, y: end.y },
            { x: end.x + CAP, y: end.y },
          ]),
        })),
        sign(at),
      );
    });
  }
  const labels: Label[] = [
    ...ticks(0, 100, 5).map((tick): Label => ({
      x: left - 9,
      y: y(tick / 100),
      anchor: 'end',
      kind: 'word',
      text: words(String(tick)),
    })),
    ...all.map((_, i): Label => ({
      x: x(i + 1),
      y: bottom + 16,
      anchor: 'middle',
      kind: 'word',
      text: words(String(i + 1)),
      ...(i + 1 === pins && { set: true }),
    })),
    { x: right, y: bottom + 42, anchor: 'end', kind: 'word', text: words('pins in the row') },
    { x: 2, y: TOP - 20, anchor: 'start', kind: 'word', text: words('of 100 tries') },
  ];
  SERIES.forEach(({ sign, says }, i) => {
    const at = { x: 10, y: 12 + i * LINE };
    strokes.push(sign(at));
    labels.push({ x: 26, y: at.y, anchor: 'start', kind: 'word', text: words(says) });
  });
  return { width, height: bottom + 56, strokes, labels, hatches: [] };
}

/** The plot in sentences: its values for the chosen number of pins, and the trend. */
export function describeOdds(all: readonly ClosingOdds[], pins: number): string {
  const { probability, low, high, flushable, flush } = all[pins - 1]!;
  return `Of 100 joints with ${pins} pin${pins === 1 ? '' : 's'}, ${ofHundred(probability)} go together, with 95 % confidence ${ofHundred(low)} to ${ofHundred(high)}; ${ofHundred(flushable.probability)} can be pushed flush too, and ${ofHundred(flush.probability)} settle flush by themselves. From one pin to ${all.length} the odds of going together fall from ${ofHundred(all[0]!.probability)} to ${ofHundred(all.at(-1)!.probability)}.`;
}
