import { breakLine } from '../drafting/breakLine.ts';
import { type Dimensions, type Span, dimensionRow } from '../drafting/dimension.ts';
import type { Hatch, Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { cautionSign } from '../drafting/marks.ts';
import { closed, open } from '../drafting/path.ts';
import { type Point, overlap } from '../drafting/point.ts';
import { type Unit, shownLength, shownReading, words } from '../drafting/reading.ts';
import type { StopShapes } from './geometry.ts';

/** Two bits stand beside each other from this width on. */
const SIDE_BY_SIDE = 900;
const LARGEST_SCALE = 8;
/** From one row of dimensions to the next, px. */
const ROW = 31;
/** Thickness of the collar and of the bushing's wall; the shank that is shown behind the collar, px. */
const COLLAR = 20;
const WALL = 13;
const SHANK = 26;
/** From a dimension line up to a word or number that stands over it, px. */
const OVER = 19;
/** How much farther up a number goes that would stand on another. */
const RAISED = 4;

/** What the reader has and controls. */
export interface Look {
  readonly unit: Unit | 'both';
  /** Ids of the measures that the reader sets. */
  readonly set: readonly string[];
}

interface Frame {
  readonly scale: number;
  /** Left edge of this bit's part of the sheet, px. */
  readonly left: number;
  /** Half the height of the wood, px. */
  readonly half: number;
  /** The axis of the bit, px. */
  readonly axis: number;
  /** From the tool's own place to the page: `along` the bit from the wood's face, `across` from its axis. */
  readonly place: (along: number, across: number) => Point;
}

function rectangle(a: Point, b: Point): Point[] {
  return [a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }];
}

/** Whether the collar was set to another depth than the one that was meant. */
function isOff({ reach, meant }: StopShapes): boolean {
  return Math.abs(reach - meant) > 1e-6;
}

/** How many rows of dimensions stand under a bit. */
function rowsUnder(shapes: StopShapes): number {
  return 1 + (shapes.tip > 0 ? 1 : 0) + (isOff(shapes) ? 1 : 0);
}

/** The wood with its hole, cut along the bit. */
function drawWood(shapes: StopShapes, frame: Frame): Stroke[] {
  const { wood } = shapes;
  const face = frame.place(0, 0).x;
  const end = frame.place(wood.depth, 0).x;
  const [top, bottom] = [frame.axis - frame.half, frame.axis + frame.half];
  const corners = [
    { x: face, y: top },
    { x: end, y: top },
    { x: end, y: bottom },
    { x: face, y: bottom },
  ] as const;
  const upper = breakLine(corners[0], corners[1]);
  const far = wood.whole ? [corners[1]] : breakLine(corners[1], corners[2]);
  const lower = breakLine(corners[2], corners[3]);
  return [
    {
      pen: shapes.member === 'a' ? 'wood-a' : 'wood-b',
      d: closed([...upper, ...far, ...lower, corners[3]]),
      hatch: `wood-${shapes.grain}`,
    },
    { pen: 'thin', d: open([...upper, corners[1]]) },
    { pen: wood.whole ? 'outline' : 'thin', d: open([...far, corners[2]]) },
    { pen: 'thin', d: open([...lower, corners[3]]) },
    { pen: 'outline', d: open([corners[0], corners[3]]) },
    ...(isOff(shapes) ? meantHole(shapes, frame) : []),
  ];
}

/** The hole as it was meant to be, where the collar makes another. */
function meantHole({ meant, radius }: StopShapes, frame: Frame): Stroke[] {
  const corner = (along: number, side: -1 | 1) => frame.place(along, side * radius);
  return [
    {
      pen: 'hidden',
      d: open([corner(0, -1), corner(meant, -1), corner(meant, 1), corner(0, 1)]),
    },
  ];
}

/** The bushing in section, the bit in it and the collar that rests on it. */
function drawTool(shapes: StopShapes, frame: Frame): Stroke[] {
  const { bushing, collar, radius } = shapes;
  const r = radius * frame.scale;
  const at = (along: number, offset: number): Point => ({
    x: frame.place(along, 0).x,
    y: frame.axis + offset,
  });
  const collarAt = frame.place(collar, 0).x;
  const shankAt = collarAt - COLLAR - SHANK;
  const bit = shapes.bit.map((p) => frame.place(p.along, p.across));
  const end = frame.place(shapes.reach + shapes.tip, 0).x;
  return [
    ...(bushing.to > bushing.from
      ? [-1, 1].map((way): Stroke => ({
          pen: 'steel',
          d: closed(rectangle(at(bushing.from, way * r), at(bushing.to, way * (r + WALL)))),
          hatch: 'bushing',
        }))
      : []),
    {
      pen: 'steel',
      d: closed([
        ...bit,
        ...breakLine({ x: shankAt, y: frame.axis + r }, { x: shankAt, y: frame.axis - r }),
        { x: shankAt, y: frame.axis - r },
      ]),
    },
    {
      pen: 'steel',
      d: closed(
        rectangle(
          { x: collarAt - COLLAR, y: frame.axis - r - WALL - 3 },
          { x: collarAt, y: frame.axis + r + WALL + 3 },
        ),
      ),
    },
    ...(shapes.tip > 0
      ? [
          {
            pen: 'thin',
            d: open([frame.place(shapes.reach, -radius), frame.place(shapes.reach, radius)]),
          } as const,
        ]
      : []),
    {
      pen: 'center',
      d: open([
        { x: shankAt - 8, y: frame.axis },
        { x: end + 8, y: frame.axis },
      ]),
    },
    ...(shapes.through
      ? Object.values(cautionSign({ x: end + 24, y: frame.axis })).map((d): Stroke => ({
          pen: 'sign',
          d,
        }))
      : []),
  ];
}

/** A number over its row, raised where it would stand on one that is in the row. */
function clearOfOthers(label: Label, _: number, all: readonly Label[]): Label {
  const box = labelBox(label);
  const stands = all.some(
    (other) => other !== label && other.y > label.y && overlap(labelBox(other), box),
  );
  return stands ? { ...label, y: label.y - RAISED } : label;
}

interface Named extends Dimensions {
  /** How far words on the left run into the rows, px. */
  readonly crowding: number;
}

/** Bushing, gap and hole depth over the bit, adding up to the stop and to the point under it. */
function drawDimensions(shapes: StopShapes, frame: Frame, look: Look): Named {
  const { bushing, standoff, collar, reach, holeDepth, meant, tip, member, radius } = shapes;
  const x = (along: number) => frame.place(along, 0).x;
  const r = radius * frame.scale;
  const span = (
    id: string,
    from: number,
    to: number,
    value: number,
    features: readonly [number, number],
    outside: Span['outside'],
  ): Span => ({
    from: { along: x(from), feature: features[0] },
    to: { along: x(to), feature: features[1] },
    text: shownLength(value, look.unit),
    outside,
    ...(look.set.includes(id) && { set: true }),
  });
  const over = (side: -1 | 1) => ({
    bushing: frame.axis + side * (r + WALL),
    wood: frame.axis + side * frame.half,
    bit: frame.axis + side * r,
    collar: frame.axis + side * (r + WALL + 3),
  });
  const [up, down] = [over(-1), over(1)];
  const parts: { name: string; span: Span }[] = [];
  if (bushing.to > bushing.from) {
    parts.push({
      name: 'bushing',
      span: span(
        'guide.bushing',
        bushing.from,
        bushing.to,
        bushing.to - bushing.from,
        [up.collar, up.bushing],
        'before',
      ),
    });
  }
  if (standoff > 0) {
    parts.push({
      name: 'gap',
      span: span('guide.standoff', -standoff, 0, standoff, [up.bushing, up.wood], 'over'),
    });
  }
  if (holeDepth > 0) {
    parts.push({
      name: 'hole',
      span: span(`${member}.holeDepth`, 0, holeDepth, holeDepth, [up.wood, up.bit], 'after'),
    });
  }
  const upper = frame.axis - frame.half - 26;
  const lower = frame.axis + frame.half + 24;
  const deeper = reach > meant;
  const rows = [
    dimensionRow(
      'x',
      upper,
      parts.map((part) => part.span),
    ),
    dimensionRow('x', lower, [
      span(`${member}.stop`, collar, reach, shapes.stop, [down.collar, down.bit], 'after'),
    ]),
    ...(tip > 0
      ? [
          dimensionRow('x', lower + ROW, [
            span(
              `${member}.stopFromPoint`,
              collar,
              reach + tip,
              shapes.stopFromPoint,
              [down.collar, frame.axis],
              'after',
            ),
          ]),
        ]
      : []),
    ...(isOff(shapes)
      ? [
          dimensionRow('x', lower + (rowsUnder(shapes) - 1) * ROW, [
            {
              ...span(
                'off',
                Math.min(reach, meant),
                Math.max(reach, meant),
                Math.abs(reach - meant),
                deeper ? [down.wood, down.bit] : [down.bit, down.wood],
                'after',
              ),
              caution: true,
            },
          ]),
        ]
      : []),
  ];
  const numbers = rows.flatMap((row) => row.labels).map(clearOfOthers);
  const names: Label[] = [];
  for (const { name, span: part } of parts) {
    const label: Label = {
      x: (part.from.along + part.to.along) / 2,
      y: upper - OVER,
      anchor: 'middle',
      kind: 'word',
      text: words(name),
    };
    const box = labelBox(label);
    const room = part.to.along - part.from.along;
    if (box.right - box.left > room + 8) continue;
    if (![...numbers, ...names].some((other) => overlap(labelBox(other), box))) names.push(label);
  }
  const rowNames = [
    { text: words('stop'), y: lower },
    ...(tip > 0 ? [{ text: words('to the point'), y: lower + ROW }] : []),
    ...(isOff(shapes)
      ? [
          {
            text: words(deeper ? 'too deep by' : 'too shallow by'),
            y: lower + (rowsUnder(shapes) - 1) * ROW,
            caution: true,
          },
        ]
      : []),
  ].map((name): Label => ({ x: frame.left + 2, anchor: 'start', kind: 'word', ...name }));
  return {
    strokes: rows.flatMap((row) => row.strokes),
    labels: [...numbers, ...names, ...rowNames],
    crowding: Math.max(...rowNames.map((label) => labelBox(label).right)) + 24 - x(collar),
  };
}

/** Lays out one bit in a column that begins at `left`, its axis at `axis`. */
function arrangeBit(
  shapes: StopShapes,
  scale: number,
  half: number,
  left: number,
  lead: number,
  axis: number,
  look: Look,
): { strokes: Stroke[]; labels: Label[]; crowding: number } {
  const collarAt = left + lead;
  const frame: Frame = {
    scale,
    left,
    half,
    axis,
    place: (along, across) => ({
      x: collarAt + (along - shapes.collar) * scale,
      y: axis + across * scale,
    }),
  };
  const dimensions = drawDimensions(shapes, frame, look);
  const letter: Label = {
    x: left + 2,
    y: axis - half - 26,
    anchor: 'start',
    kind: 'letter',
    text: words(shapes.member.toUpperCase()),
  };
  return {
    strokes: [...drawWood(shapes, frame), ...drawTool(shapes, frame), ...dimensions.strokes],
    labels: [letter, ...dimensions.labels],
    crowding: dimensions.crowding,
  };
}

/**
 * Lays out the stop for one board or for both on a sheet `width` px wide. All bits have one scale
 * and their collars one place, so that the stops can be compared.
 */
export function arrangeStop(all: readonly StopShapes[], width: number, look: Look): Sheet {
  const beside = width >= SIDE_BY_SIDE && all.length > 1;
  const column = beside ? width / all.length : width;
  const longest = Math.max(
    1,
    ...all.map((s) => Math.max(s.wood.depth, s.reach + s.tip) - s.collar),
  );
  const radius = Math.max(0, ...all.map((s) => s.radius));
  const rows = Math.max(...all.map(rowsUnder));
  let [lead, tail] = [COLLAR + SHANK + 14, 12];
  let parts: ReturnType<typeof arrangeBit>[] = [];
  let height = 0;
  for (let turn = 0; turn < 8; turn++) {
    const free = Math.max(60, column - lead - tail);
    const scale = Math.min(free / longest, LARGEST_SCALE, 70 / Math.max(radius, 1e-3));
    const half = radius * scale * 1.3 + 26;
    const tall = 2 * half + 62 + 24 + (rows - 1) * ROW + 26;
    const spare = Math.min(80, Math.max(0, free - longest * scale) / 2);
    parts = all.map((shapes, i) =>
      arrangeBit(
        shapes,
        scale,
        half,
        (beside ? column * i : 0) + spare,
        lead,
        (beside ? 0 : tall * i) + half + 62,
        look,
      ),
    );
    height = (beside ? 1 : all.length) * tall;
    const overLeft = Math.max(...parts.map((part) => part.crowding));
    const overRight = Math.max(
      ...parts.map((part, i) => {
        const end = (beside ? column * (i + 1) : column) - 2;
        const warned = all[i]!.through ? 40 : 0;
        return Math.max(...part.labels.map((l) => labelBox(l).right)) - end + warned;
      }),
    );
    if (overLeft <= 0.5 && overRight <= 0.5) break;
    lead += Math.max(0, overLeft);
    tail += Math.max(0, overRight);
  }
  height = Math.ceil(height + 24);
  const note: Label = {
    x: 2,
    y: height - 14,
    anchor: 'start',
    kind: 'word',
    text: shownReading({ in: 'inches', mm: 'millimeters' }, look.unit),
  };
  const hatches: Hatch[] = [
    { name: 'wood-along', grain: 'long', angle: 0 },
    { name: 'wood-across', grain: 'long', angle: 90 },
    { name: 'bushing', grain: 'end', angle: 45, metal: true },
  ];
  return {
    width,
    height,
    hatches,
    strokes: parts.flatMap((part) => part.strokes),
    labels: [...parts.flatMap((part) => part.labels), note],
  };
}
