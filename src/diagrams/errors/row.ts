import type { DrilledPin, DrilledRow } from '../../core/trial/drilledRow.ts';
import { clipLine, roundWindow } from '../drafting/clip.ts';
import { dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, textWidth } from '../drafting/label.ts';
import { circle, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Unit, reading, shownReading, spoken, words } from '../drafting/reading.ts';
import { magnify } from './magnify.ts';

const LEAST_CELL = 56;
const MOST_CELL = 132;
/** Under a target: its number and what becomes of it. */
const UNDER = 30;
const BETWEEN = 10;
const LINE = 23;

/** A row of pins as it is drawn. */
export interface ShownRow {
  readonly row: DrilledRow;
  /** From one pin to the next, mm. */
  readonly spacing: number;
}

/** Room that the pins' offsets ask for, mm: all that is left of them, and the play. */
function extentOf({ pins }: DrilledRow): number {
  const most = (of: (pin: DrilledPin) => number) => Math.max(...pins.map(of));
  const play = most((pin) => pin.play);
  const left = most((pin) => Math.hypot(pin.left.along, pin.left.across));
  const off = most((pin) => Math.hypot(pin.off.along, pin.off.across));
  return Math.max(1.2 * play, 1.1 * left, Math.min(off, 2.5 * play));
}

/**
 * The row from above, a target for each pin, on a sheet `width` px wide. In the middle of a target
 * lies A's hole; the ring is B's hole as drilled and the dot where the boards' shift brings it,
 * inside the circle of the pin's play or not. Offsets are magnified, the spacing is not to scale.
 */
export function arrangeRow({ row, spacing }: ShownRow, width: number, unit: Unit | 'both'): Sheet {
  const { pins } = row;
  const columns = Math.min(pins.length, Math.max(1, Math.floor(width / LEAST_CELL)));
  const lines = Math.ceil(pins.length / columns);
  const perLine = Math.ceil(pins.length / lines);
  const cell = Math.min(MOST_CELL, width / perLine);
  const half = cell / 2 - 4;
  const { times, scale } = magnify(extentOf(row), half);
  const left = (width - cell * perLine) / 2;
  const top = perLine > 1 ? 36 : 6;
  const strokes: Stroke[] = [];
  const labels: Label[] = [];

  const centerOf = (j: number): Point => ({
    x: left + cell * ((j % perLine) + 0.5),
    y: top + Math.floor(j / perLine) * (cell + UNDER + BETWEEN) + cell / 2,
  });

  for (let line = 0; line < lines; line++) {
    const first = centerOf(line * perLine);
    const last = centerOf(Math.min(pins.length, (line + 1) * perLine) - 1);
    strokes.push({
      pen: 'center',
      d: open([
        { x: first.x - cell / 2, y: first.y },
        { x: last.x + cell / 2, y: last.y },
      ]),
    });
  }

  pins.forEach((pin, j) => {
    const center = centerOf(j);
    const at = (place: DrilledPin['off']): Point => ({
      x: center.x + place.along * scale,
      y: center.y - place.across * scale,
    });
    const out = !pin.goesIn;
    strokes.push(
      { pen: 'hole', d: circle(center, pin.play * scale) },
      {
        pen: 'center',
        d: open([
          { x: center.x, y: center.y - half },
          { x: center.x, y: center.y + half },
        ]),
      },
      { pen: out ? 'phantom' : 'outline', d: circle(center, pin.play * scale) },
    );
    const [drilled, settled] = [at(pin.off), at(pin.left)];
    for (const part of clipLine([drilled, settled], roundWindow(center, half))) {
      strokes.push({ pen: 'thin', d: open(part) });
    }
    if (Math.hypot(drilled.x - center.x, drilled.y - center.y) <= half) {
      strokes.push({ pen: 'mark', d: circle(drilled, 4) });
    }
    strokes.push({ pen: 'arrow', d: circle(settled, 4.5), ...(out && { caution: true }) });
    const stops = row.stoppedBy === j;
    const says = words(stops ? `${j + 1} stops` : String(j + 1));
    labels.push({
      // The widest is a little wider than the narrowest target.
      x: Math.min(center.x, width - textWidth(says, 'word') / 2),
      y: center.y + cell / 2 + 13,
      anchor: 'middle',
      kind: 'word',
      text: says,
      ...(stops && { caution: true }),
    });
  });

  if (perLine > 1) {
    const y = 14;
    const span = dimensionRow('x', y, [
      {
        from: { along: centerOf(0).x, feature: centerOf(0).y - half },
        to: { along: centerOf(1).x, feature: centerOf(1).y - half },
        text: shownReading(
          reading((length) => length(spacing)),
          unit,
        ),
        outside: 'after',
      },
    ]);
    strokes.push(...span.strokes);
    labels.push(...span.labels);
  }

  const foot = drawLegend(top + lines * (cell + UNDER + BETWEEN) + 8, width, strokes, labels);
  labels.push({
    x: 2,
    y: foot,
    anchor: 'start',
    kind: 'word',
    text: words(`offsets ${times} : 1, spacing not to scale`),
  });
  return { width, height: Math.ceil(foot + 14), strokes, labels, hatches: [] };
}

/** What the signs mean, beside each other while there is room; returns where the next line stands. */
function drawLegend(y: number, width: number, strokes: Stroke[], labels: Label[]): number {
  const entries: readonly (readonly [sign: (at: Point) => Stroke, says: string])[] = [
    [(at) => ({ pen: 'outline', d: circle(at, 7) }), 'play of the pin'],
    [(at) => ({ pen: 'mark', d: circle(at, 4) }), "B's hole as drilled, from A's"],
    [(at) => ({ pen: 'arrow', d: circle(at, 4.5) }), 'once the boards have shifted'],
  ];
  let [x, line] = [2, y];
  for (const [sign, says] of entries) {
    const text = words(says);
    const end = x + 24 + textWidth(text, 'word');
    if (x > 2 && end > width) [x, line] = [2, line + LINE];
    strokes.push(sign({ x: x + 8, y: line }));
    labels.push({ x: x + 24, y: line, anchor: 'start', kind: 'word', text });
    x += 24 + textWidth(text, 'word') + 22;
  }
  return line + LINE;
}

/** The row in sentences. */
export function describeRow({ row, spacing }: ShownRow, unit: Unit): string {
  const count = row.pins.length;
  const apart = count === 1 ? '' : `, ${spoken(unit)(spacing)} from one to the next`;
  const each = row.pins
    .map(({ goesIn }, j) => `${j + 1} ${goesIn ? 'inside' : 'outside'}`)
    .join(', ');
  return `A target for each of ${count} pin${count === 1 ? '' : 's'}${apart}: how far B's hole lies off A's, before and after the boards shift, and the circle of the pin's play. After the shift: pin ${each}. More play makes the circles larger; better drilling brings the dots nearer the middle.`;
}
