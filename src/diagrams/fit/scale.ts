import { type Fit, type FitVerdict, fitBands, publishedRanges } from '../../core/fit/fit.ts';
import { inUnit } from '../../core/working/formatQuantity.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { closed, open } from '../drafting/path.ts';
import { rectangle } from '../drafting/point.ts';
import { type Unit, words } from '../drafting/reading.ts';
import { bothUnits } from './bothUnits.ts';

/** Clearances that the scale shows, mm. */
const SHOWN = { from: -0.4, to: 0.6 } as const;
const NARROW = 560;
const BAND = 46;
const LINE = 20;

const BANDS: readonly {
  readonly verdict: FitVerdict;
  readonly from: number;
  readonly to: number;
}[] = [
  { verdict: 'ease the pin', from: SHOWN.from, to: fitBands.starvedFrom },
  { verdict: 'starved', from: fitBands.starvedFrom, to: fitBands.goodFrom },
  { verdict: 'good', from: fitBands.goodFrom, to: fitBands.goodTo },
  { verdict: 'thick', from: fitBands.goodTo, to: SHOWN.to },
];

function label(x: number, y: number, text: string, more: Partial<Label> = {}): Label {
  return { x, y, anchor: 'middle', kind: 'word', text: words(text), ...more };
}

/** One of the two rulers: its name, and its numbers on the side away from the bands. */
function ruler(
  reader: Unit,
  x: (clearance: number) => number,
  y: number,
  way: 1 | -1,
  narrow: boolean,
): { strokes: Stroke[]; labels: Label[] } {
  const perUnit = inUnit(1, 'fine', reader).value;
  const step = reader === 'in' ? (narrow ? 10 : 5) : narrow ? 200 : 100;
  const from = Math.ceil((SHOWN.from * perUnit) / step - 1e-9);
  const count = Math.floor((SHOWN.to * perUnit) / step + 1e-9) - from + 1;
  const marks = Array.from({ length: count }, (_, i) => (from + i) * step);
  return {
    strokes: marks.map((mark): Stroke => {
      const at = x(mark / perUnit);
      return {
        pen: 'thin',
        d: open([
          { x: at, y },
          { x: at, y: y + way * 6 },
        ]),
      };
    }),
    labels: marks.map((mark) =>
      label(x(mark / perUnit), y + way * 17, String(mark).replace('-', '−')),
    ),
  };
}

/** What was published about it, as a clearance: a glue line stands on both sides of the pin. */
function asClearance({ of, from, to }: (typeof publishedRanges)[number]) {
  const times = of === 'glue line' ? 2 : 1;
  return { from: from * times, to: to * times };
}

/** The names that the ranges have in the drawing; the table beside it has them in full. */
const SHORT_NAMES = ['Hoadley 1980', 'EN 205, both sides'];

/**
 * The scale of clearances from `top` down: a ruler in either unit, the bands of verdicts between
 * them, where this fit stands, and what was published.
 * @returns a sheet whose height reaches down to its end
 */
export function arrangeScale(
  { clearance }: Fit,
  width: number,
  top: number,
  unit: Unit,
): Pick<Sheet, 'strokes' | 'labels' | 'height'> {
  const narrow = width < NARROW;
  const [left, right] = [20, width - 20];
  const x = (value: number) =>
    left + ((value - SHOWN.from) / (SHOWN.to - SHOWN.from)) * (right - left);
  const bandTop = top + 72;
  const bandBottom = bandTop + BAND;
  const other: Unit = unit === 'in' ? 'mm' : 'in';
  const upper = ruler(unit, x, bandTop, -1, narrow);
  const lower = ruler(other, x, bandBottom, 1, narrow);
  const unitName = (reader: Unit) => (reader === 'in' ? 'thousandths of an inch' : 'micrometers');

  const beyond = clearance < SHOWN.from ? -1 : clearance > SHOWN.to ? 1 : 0;
  const at = x(Math.min(SHOWN.to, Math.max(SHOWN.from, clearance)));
  const name = beyond === 0 ? 'clearance' : 'clearance, off the scale:';
  const number = bothUnits(clearance, unit);
  const edge = { from: at < width / 3, to: at > (2 * width) / 3 };
  // It points at the upper ruler from inside the band, clear of the band's name.
  const marker: Stroke = {
    pen: 'arrow',
    d: closed([
      { x: at, y: bandTop },
      { x: at + 8, y: bandTop + 15 },
      { x: at - 8, y: bandTop + 15 },
    ]),
    set: true,
  };
  const below = bandBottom + 92;
  const row = narrow ? 44 : 28;
  const ranges = publishedRanges.map((range, i) => {
    const { from, to } = asClearance(range);
    const y = below + i * row;
    const ends = to > from ? [from, to] : [from];
    return {
      strokes: [
        {
          pen: 'outline',
          d: open([
            { x: x(from), y },
            { x: x(to), y },
          ]),
        } as const,
        ...ends.map((end): Stroke => ({
          pen: 'outline',
          d: open([
            { x: x(end), y: y - 6 },
            { x: x(end), y: y + 6 },
          ]),
        })),
      ],
      // Beside its bar where there is room, else under it.
      label: label(left, narrow ? y + LINE : y, `${SHORT_NAMES[i]} (${range.standing})`, {
        anchor: 'start',
      }),
    };
  });
  const starved = BANDS[1]!;
  const middle = (band: (typeof BANDS)[number]) => (x(band.from) + x(band.to)) / 2;
  return {
    height: Math.ceil(below + ranges.length * row),
    strokes: [
      ...BANDS.map((band): Stroke => ({
        pen: band.verdict === 'good' ? 'glue' : 'thin',
        d: closed(rectangle(x(band.from), x(band.to), bandTop, bandBottom)),
      })),
      ...upper.strokes,
      ...lower.strokes,
      {
        pen: 'thin',
        d: open([
          { x: middle(starved), y: bandBottom - 16 },
          { x: middle(starved), y: bandBottom + 30 },
        ]),
      },
      ...ranges.flatMap((range) => range.strokes),
      marker,
    ],
    labels: [
      // On a phone the number needs the whole width.
      ...(narrow
        ? [label(width / 2, top - 10, name), label(width / 2, top + 10, number, { kind: 'number' })]
        : [
            label(edge.from ? 2 : edge.to ? width - 2 : at, top + 10, `${name} ${number}`, {
              kind: 'number',
              anchor: edge.from ? 'start' : edge.to ? 'end' : 'middle',
            }),
          ]),
      label(left, top + 34, unitName(unit), { anchor: 'start' }),
      ...upper.labels,
      ...BANDS.filter((band) => band !== starved).map((band) =>
        label(middle(band), bandTop + 31, band.verdict, { kind: 'number' }),
      ),
      ...lower.labels,
      label(middle(starved), bandBottom + 40, starved.verdict),
      label(left, bandBottom + 62, unitName(other), { anchor: 'start' }),
      ...ranges.map((range) => range.label),
    ],
  };
}
