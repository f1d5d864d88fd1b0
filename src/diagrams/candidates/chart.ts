import { type Mm, inches, mm } from '../../core/length/mm.ts';
import type { System } from '../../core/joint/types.ts';
import { clipArea } from '../drafting/clip.ts';
import type { Dimensions } from '../drafting/dimension.ts';
import type { Stroke } from '../drafting/ink.ts';
import { type Label, textWidth } from '../drafting/label.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';
import type { Write } from './end.ts';
import { type Candidates, sizeName } from './geometry.ts';

/** How far the chart goes: thicknesses along, diameters up, mm; and the thicknesses with a number. */
const REACH: Record<System, { thickness: number; diameter: number; ticks: readonly Mm[] }> = {
  in: {
    thickness: inches(1.75),
    diameter: inches(9 / 16),
    ticks: [1 / 2, 1, 3 / 2].map(inches),
  },
  mm: { thickness: 44, diameter: 14, ticks: [10, 20, 30, 40].map(mm) },
};

/** Px: height of the chart, room left of it for the diameters, under it for the thicknesses. */
const HEIGHT = 200;
const LEFT = 50;
const UNDER = 26;
const LEGEND_ROW = 24;
/** From this width on the legend is one line, px. */
const ONE_LINE = 560;

/** The published rules over every thickness, and this board with the pins in stock on them. */
export function arrangeChart(
  shapes: Candidates,
  place: { readonly top: number; readonly width: number },
  write: Write,
): Dimensions & { readonly bottom: number } {
  const { system, thickness, candidates, table, rule } = shapes;
  const reach = REACH[system];
  const [top, bottom] = [place.top + 24, place.top + 24 + HEIGHT];
  const right = place.width - 16;
  const at = (along: number, up: number): Point => ({
    x: LEFT + ((right - LEFT) * along) / reach.thickness,
    y: bottom - (HEIGHT * up) / reach.diameter,
  });
  const board = at(Math.min(thickness, reach.thickness), 0).x;
  const frame = [
    { x: LEFT, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: LEFT, y: bottom },
  ];
  const wedge = clipArea(
    [at(0, 0), at(reach.thickness, reach.thickness / 2), at(reach.thickness, reach.thickness / 3)],
    frame,
  );
  const narrow = place.width < ONE_LINE;
  const legendAt = (row: number) => ({
    x: narrow ? 2 : LEFT + row * 240,
    y: bottom + UNDER + 44 + (narrow ? row * LEGEND_ROW : 0),
  });
  const [tableKey, ratioKey] = [legendAt(0), legendAt(1)];
  const used = (its: Candidates['rule']) => (its === rule ? ', used here' : '');
  const word = (x: number, y: number, text: string, more: Partial<Label> = {}): Label => ({
    x,
    y,
    anchor: 'start',
    kind: 'word',
    text: words(text),
    ...more,
  });
  const half = textWidth(write(thickness), 'number') / 2;
  const strokes: Stroke[] = [
    { pen: 'wood-a', d: closed(wedge) },
    { pen: rule === 'ratio' ? 'outline' : 'thin', d: closed(wedge) },
    ...candidates.map(({ diameter }): Stroke => ({
      pen: 'thin',
      d: open([
        { x: LEFT - 5, y: at(0, diameter).y },
        { x: right, y: at(0, diameter).y },
      ]),
    })),
    ...reach.ticks.map((tick): Stroke => ({
      pen: 'thin',
      d: open([at(tick, 0), { x: at(tick, 0).x, y: bottom + 6 }]),
    })),
    { pen: 'outline', d: open([{ x: LEFT, y: top }, at(0, 0), at(reach.thickness, 0)]) },
    ...table.flatMap(({ from, to, diameter }): Stroke[] => {
      const [start, end] = [at(from, diameter), at(to, diameter)];
      return [tableRow(start, end, rule === 'shop-table'), ...ends(start, end)];
    }),
    {
      pen: 'thin',
      set: true,
      d: open([
        { x: board, y: top - 4 },
        { x: board, y: bottom },
      ]),
    },
    ...candidates.flatMap(({ diameter, verdict }): Stroke[] => {
      const center = { x: board, y: at(0, diameter).y };
      if (verdict === 'chosen') return [{ pen: 'arrow', set: true, d: circle(center, 7) }];
      if (verdict === 'rejected') return [{ pen: 'mark', d: cross(center) }];
      const d = circle(center, 6);
      return [
        { pen: 'hole', d },
        { pen: 'outline', d },
      ];
    }),
    tableRow(tableKey, { x: tableKey.x + 30, y: tableKey.y }, rule === 'shop-table'),
    {
      pen: 'wood-a',
      d: closed(keyBox(ratioKey)),
    },
    { pen: 'thin', d: closed(keyBox(ratioKey)) },
  ];
  return {
    strokes,
    labels: [
      ...candidates.map(({ diameter }): Label => ({
        x: LEFT - 9,
        y: at(0, diameter).y,
        anchor: 'end',
        kind: 'number',
        text: words(sizeName(diameter, system)),
      })),
      ...reach.ticks.map((tick): Label => ({
        x: at(tick, 0).x,
        y: bottom + 18,
        anchor: 'middle',
        kind: 'number',
        text: words(sizeName(tick, system)),
      })),
      word(2, place.top, `pin, ${system}`),
      word(right, bottom + UNDER + 14, `thickness of the board, ${system}`, { anchor: 'end' }),
      {
        x: Math.max(64 + half, Math.min(board, place.width - 2 - half)),
        y: place.top,
        anchor: 'middle',
        kind: 'number',
        text: write(thickness),
        set: true,
      },
      word(tableKey.x + 40, tableKey.y, `shop table${used('shop-table')}`),
      word(ratioKey.x + 40, ratioKey.y, `a third to a half${used('ratio')}`),
    ],
    bottom: legendAt(1).y + 16,
  };
}

function keyBox({ x, y }: Point): Point[] {
  return [
    { x, y: y - 8 },
    { x: x + 30, y: y - 8 },
    { x: x + 30, y: y + 8 },
    { x, y: y + 8 },
  ];
}

/** A row of the table: where the choice goes by it a bar of steel, which stands out from the wood. */
function tableRow(start: Point, end: Point, used: boolean): Stroke {
  if (!used) return { pen: 'mark', d: open([start, end]) };
  return {
    pen: 'steel',
    d: closed([
      { x: start.x, y: start.y - 4 },
      { x: end.x, y: start.y - 4 },
      { x: end.x, y: start.y + 4 },
      { x: start.x, y: start.y + 4 },
    ]),
  };
}

function ends(start: Point, end: Point): Stroke[] {
  return [start, end].map((at): Stroke => ({ pen: 'arrow', d: circle(at, 2.6) }));
}

function cross({ x, y }: Point): string {
  return `M${x - 5},${y - 5}L${x + 5},${y + 5}M${x + 5},${y - 5}L${x - 5},${y + 5}`;
}
