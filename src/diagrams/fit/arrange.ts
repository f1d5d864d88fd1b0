import type { Fit } from '../../core/fit/fit.ts';
import { dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { cautionSign } from '../drafting/marks.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Unit, words } from '../drafting/reading.ts';
import { mm } from '../../core/length/mm.ts';
import { bothUnits } from './bothUnits.ts';
import { diameterText } from './describe.ts';
import { DETAIL_RADIUS, type FitShapes } from './geometry.ts';
import { arrangeScale } from './scale.ts';

/** A px of a page is 1/96 in. */
const PX_PER_MM = 96 / 25.4;
const NARROW = 560;
const WIDEST = 820;

/** How many times as large as life a scale of px to the mm is, near enough to say it. */
export function timesLife(scale: number): number {
  const times = scale / PX_PER_MM;
  return times < 20 ? Math.round(times) : Math.round(times / 5) * 5;
}

function word(x: number, y: number, text: string, more: Partial<Label> = {}): Label {
  return { x, y, anchor: 'middle', kind: 'word', text: words(text), ...more };
}

/** The whole hole with its pin, and the round window whose content is drawn beside it. */
function drawWhole(shapes: FitShapes, center: Point, scale: number): Stroke[] {
  const at = ({ x, y }: Point): Point => ({ x: center.x + x * scale, y: center.y + y * scale });
  const board = shapes.holeRadius * scale + 18;
  return [
    { pen: 'wood-b', d: circle(center, board), hatch: 'board' },
    { pen: 'thin', d: circle(center, board) },
    { pen: 'glue', d: circle(center, shapes.holeRadius * scale) },
    { pen: 'pin', d: circle(center, shapes.pinRadius * scale), hatch: 'pin' },
    { pen: 'thin', d: circle(at(shapes.window.center), 12), set: true },
  ];
}

/** Wall, glue and pin in the window, magnified, the glue line with its dimension over it. */
function drawDetail(
  shapes: FitShapes,
  { clearance, glueLine, verdict }: Fit,
  center: Point,
  radius: number,
  over: Pick<Label, 'x' | 'anchor'>,
  unit: Unit,
): { strokes: Stroke[]; labels: Label[] } {
  const scale = radius / DETAIL_RADIUS;
  const { board, pin, gap, clash } = shapes.detail;
  const at = ({ x, y }: Point): Point => ({
    x: center.x + (x - shapes.window.center.x) * scale,
    y: center.y + (y - shapes.window.center.y) * scale,
  });
  const area = (points: readonly Point[]) => closed(points.map(at));
  const x = (length: number) => at({ x: length, y: 0 }).x;
  const wall = x(shapes.holeRadius);
  const skin = x(shapes.pinRadius);
  const inView = Math.abs(skin - center.x) < radius;
  const tight = verdict === 'ease the pin';
  const top = center.y - radius;
  const end = (along: number) => ({ along, feature: top + 4 });
  const { strokes: dimension } = dimensionRow('x', top - 14, [
    {
      from: end(Math.min(wall, skin)),
      to: end(Math.max(wall, skin)),
      // The number stands over the dimension: the gap is never wide enough to hold it.
      text: words(''),
      outside: 'over',
      ...(tight && { caution: true }),
    },
  ]);
  const sign = cautionSign({ x: (wall + skin) / 2, y: center.y });
  return {
    strokes: [
      { pen: 'wood-b', d: area(board), hatch: 'board' },
      { pen: 'outline', d: area(board) },
      { pen: 'glue', d: area(gap) },
      { pen: 'pin', d: area(pin), hatch: 'pin' },
      ...(tight
        ? [
            { pen: 'phantom', d: area(clash) } as const,
            ...Object.values(sign).map((d): Stroke => ({ pen: 'sign', d })),
          ]
        : []),
      { pen: 'thin', d: circle(center, radius), set: true },
      ...(inView && clearance !== 0 ? dimension : []),
    ],
    labels: [
      word(over.x, top - 62, tight ? 'too large, each side' : 'glue line, each side', over),
      word(over.x, top - 39, bothUnits(Math.abs(glueLine), unit), {
        ...over,
        kind: 'number',
        ...(tight && { caution: true }),
      }),
      word(center.x - radius * 0.62, center.y + radius + 6, 'pin'),
      word(center.x + radius * 0.66, center.y + radius + 6, 'board'),
      word(center.x, center.y + radius + 36, `${timesLife(scale)} times life size`),
    ],
  };
}

/**
 * Lays out the fit on a sheet `width` px wide: the whole hole, the detail of its wall beside it, and
 * under both the scale of clearances with the bands and what was published.
 */
export function arrangeFit(shapes: FitShapes, fit: Fit, width: number, unit: Unit): Sheet {
  const used = Math.min(width, WIDEST);
  const narrow = used < NARROW;
  const radius = narrow ? Math.min(84, used * 0.25) : 118;
  const whole = narrow ? used * 0.17 : 90;
  const middle = 72 + radius;
  const left = { x: narrow ? whole + 20 : used * 0.27, y: middle };
  const right = { x: narrow ? used - radius - 6 : used * 0.68, y: middle };
  const largest = Math.max(shapes.holeRadius, shapes.pinRadius);
  const scale = whole / largest;
  const detail = drawDetail(
    shapes,
    fit,
    right,
    radius,
    narrow ? { x: used - 2, anchor: 'end' } : { x: right.x, anchor: 'middle' },
    unit,
  );
  const window = { x: left.x + shapes.window.center.x * scale, y: middle };
  const tangents = [-1, 1].map((way): Stroke => ({
    pen: 'thin',
    d: open([
      { x: window.x, y: window.y + way * 12 },
      { x: right.x, y: right.y + way * radius },
    ]),
  }));
  const below = middle + Math.max(radius + 62, whole + 108) + (narrow ? 18 : 0);
  const bar = arrangeScale(fit, used, below, unit);
  const sizes = (
    [
      ['hole', shapes.holeRadius],
      ['pin', shapes.pinRadius],
    ] as const
  ).map(([name, half], i) =>
    word(left.x, middle + whole + 40 + 22 * i, `${name} ${diameterText(mm(2 * half), unit)}`, {
      kind: 'number',
      set: true,
    }),
  );
  return {
    width,
    height: bar.height,
    hatches: [
      { name: 'board', grain: 'long', angle: 0 },
      { name: 'pin', grain: 'end', angle: 45 },
    ],
    strokes: [...tangents, ...drawWhole(shapes, left, scale), ...detail.strokes, ...bar.strokes],
    labels: [
      ...sizes,
      word(left.x, middle + whole + 84, `${timesLife(scale)} times life size`),
      ...detail.labels,
      ...bar.labels,
    ],
  };
}
