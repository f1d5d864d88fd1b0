import { coefficientRange } from '../../core/moisture/dimensionalChange.ts';
import { equilibriumMoisture } from '../../core/moisture/equilibriumMoisture.ts';
import { publishedRow } from '../../core/moisture/publishedMoisture.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Reading, type Unit, shownReading, words } from '../drafting/reading.ts';
import { celsius as toCelsius, temperature } from './temperature.ts';

/** Air: °C, and relative humidity from 0 to 1. */
export interface Air {
  readonly celsius: number;
  readonly humidity: number;
}

/** The most moisture that the graph has room for, percent. */
const TOP = 25;

/** A graph's place on the sheet, px. */
interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** From humidity and moisture, both in percent, to the page. */
export function placeOn({ left, right, top, bottom }: Frame) {
  return (humidity: number, moisture: number): Point => ({
    x: left + ((right - left) * humidity) / 100,
    y: bottom - ((bottom - top) * moisture) / TOP,
  });
}

/** The curve at a temperature, as far as it stays on the graph: pairs in percent. */
export function curveAt(degrees: number): readonly (readonly [number, number])[] {
  return Array.from(
    { length: 100 },
    (_, humidity) => [humidity, equilibriumMoisture(degrees, humidity / 100)] as const,
  ).filter(([, moisture]) => moisture <= TOP);
}

/**
 * From the air to the moisture that wood comes to, on a sheet `width` px wide: the curve at the
 * air's temperature, the table's cells of the nearest row as dots, and the band in which changes
 * of size are said to hold.
 */
export function arrangeCurve(air: Air, width: number, unit: Unit | 'both'): Sheet {
  const frame: Frame = { left: 40, right: width - 22, top: 96, bottom: 340 };
  const { left, right, bottom } = frame;
  const place = placeOn(frame);
  const show = (text: Reading) => shownReading(text, unit);
  const moisture = equilibriumMoisture(air.celsius, air.humidity);
  const humidity = air.humidity * 100;
  const row = publishedRow(air.celsius);
  const here = place(humidity, Math.min(moisture, TOP));
  const { from, to } = coefficientRange;

  const strokes: Stroke[] = [
    {
      pen: 'wood-a',
      d: closed([place(0, from), place(100, from), place(100, to), place(0, to)]),
    },
    ...[5, 10, 15, 20, 25].map((tick): Stroke => ({
      pen: 'thin',
      d: open([place(0, tick), { x: left - 5, y: place(0, tick).y }]),
    })),
    ...[0, 20, 40, 60, 80, 100].map((tick): Stroke => ({
      pen: 'thin',
      d: open([place(tick, 0), { x: place(tick, 0).x, y: bottom + 5 }]),
    })),
    { pen: 'thin', d: open([place(0, TOP), place(0, 0), place(100, 0)]) },
    { pen: 'outline', d: open(curveAt(air.celsius).map((pair) => place(...pair))) },
    ...row.cells
      .filter(([, cell]) => cell <= TOP)
      .map((cell): Stroke => ({ pen: 'arrow', d: circle(place(...cell), 4.5) })),
    { pen: 'thin', set: true, d: open([{ x: here.x, y: bottom }, here, { x: left, y: here.y }]) },
    { pen: 'arrow', set: true, d: circle(here, 7) },
    { pen: 'arrow', d: circle({ x: 8, y: 36 }, 4.5) },
    {
      pen: 'wood-a',
      d: closed([
        { x: 2, y: 51 },
        { x: 16, y: 51 },
        { x: 16, y: 63 },
        { x: 2, y: 63 },
      ]),
    },
  ];

  const word = (x: number, y: number, anchor: Label['anchor'], text: Reading): Label => ({
    x,
    y,
    anchor,
    kind: 'word',
    text: show(text),
  });
  const labels: Label[] = [
    {
      x: 2,
      y: 13,
      anchor: 'start',
      kind: 'number',
      text: words(`Wood comes to ${moisture.toFixed(1)} %`),
      set: true,
    },
    word(22, 36, 'start', {
      in: `table at ${temperature(toCelsius(row.fahrenheit)).in}`,
      mm: `table at ${temperature(toCelsius(row.fahrenheit)).mm}`,
    }),
    word(22, 57, 'start', words(`${from} to ${to} %: change of size known`)),
    word(2, 79, 'start', words('moisture of wood, %')),
    ...[0, 5, 10, 15, 20, 25].map((tick) =>
      word(left - 9, place(0, tick).y, 'end', words(String(tick))),
    ),
    ...[0, 20, 40, 60, 80, 100].map((tick) =>
      word(place(tick, 0).x, bottom + 17, 'middle', words(String(tick))),
    ),
    word(right, bottom + 40, 'end', words('humidity of the air, %')),
  ];
  return { width, height: bottom + 54, strokes, labels, hatches: [] };
}

/** The graph in a sentence. */
export function describeCurve(air: Air, unit: Unit): string {
  const moisture = equilibriumMoisture(air.celsius, air.humidity).toFixed(1);
  const row = publishedRow(air.celsius);
  return `In air at ${temperature(air.celsius)[unit]} and ${Math.round(air.humidity * 100)} % humidity, wood comes to ${moisture} % moisture. The curve climbs with the humidity, steepest above 80 %; warmth hardly lowers it. Dots are ${row.cells.length} cells of the published table at ${temperature(toCelsius(row.fahrenheit))[unit]}.`;
}
