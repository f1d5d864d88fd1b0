import { breakLine } from '../drafting/breakLine.ts';
import { type Dimensions, arrowAt, dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, labelBox, textWidth } from '../drafting/label.ts';
import { cautionSign } from '../drafting/marks.ts';
import { closed, open } from '../drafting/path.ts';
import { type Point, overlap } from '../drafting/point.ts';
import { type Reading, type Unit, shownLength, words } from '../drafting/reading.ts';
import type { BehindShapes } from './geometry.ts';

/** What the reader has and controls. */
export interface Look {
  readonly unit: Unit | 'both';
  /** Ids of the measures that the reader sets: 'stop', 'slip', 'thickness'. */
  readonly set: readonly string[];
}

/** Px: shank over the collar, the collar, the bushing's wall, the clamp's bar. */
const SHANK = 30;
const COLLAR = 20;
const WALL = 13;
const BAR = 12;
/** Height of the hand, px. */
const HAND = 88;
const TALLEST = { narrow: 250, wide: 330 } as const;
const LARGEST_SCALE = 4.6;
const NARROW = 520;

/** How the page and the tool lie to each other. */
interface Frame {
  readonly scale: number;
  /** y of the board's upper face, px. */
  readonly face: number;
  /** x of the bit's axis, and the ends of what is shown of the boards. */
  readonly axis: number;
  readonly left: number;
  readonly right: number;
  readonly y: (down: number) => number;
}

function box(left: number, right: number, top: number, bottom: number): Point[] {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

/** A board from `left` to `right`: its upper and lower face are seen, and it goes on at broken sides. */
function drawBoard(
  sides: { readonly left: number; readonly right: number; readonly rightEnds?: boolean },
  top: number,
  bottom: number,
  pen: 'wood-a' | 'wood-b',
  hatch: string,
): Stroke[] {
  const [a, b, c, d] = box(sides.left, sides.right, top, bottom) as [Point, Point, Point, Point];
  const right = sides.rightEnds === true ? [b] : breakLine(b, c);
  const left = breakLine(d, a);
  return [
    { pen, d: closed([a, ...right, c, ...left]), hatch },
    { pen: 'outline', d: `${open([a, b])}${open([d, c])}` },
    { pen: sides.rightEnds === true ? 'outline' : 'thin', d: open([...right, c]) },
    { pen: 'thin', d: open([...left, a]) },
  ];
}

/** The bit with its collar, and the bushing in section. */
function drawTool(shapes: BehindShapes, frame: Frame): Stroke[] {
  const { axis, scale, y } = frame;
  const r = shapes.radius * scale;
  const { bushing, collar, corner, point } = shapes;
  const top = y(collar) - COLLAR - SHANK;
  const shank = breakLine({ x: axis - r, y: top }, { x: axis + r, y: top });
  const bit = [
    ...shank,
    { x: axis + r, y: top },
    { x: axis + r, y: y(corner) },
    { x: axis, y: y(point) },
    { x: axis - r, y: y(corner) },
  ];
  return [
    ...(bushing.to > bushing.from
      ? [-1, 1].map((way): Stroke => ({
          pen: 'steel',
          d: closed(
            box(
              Math.min(axis + way * r, axis + way * (r + WALL)),
              Math.max(axis + way * r, axis + way * (r + WALL)),
              y(bushing.from),
              y(bushing.to),
            ),
          ),
          hatch: 'bushing',
        }))
      : []),
    { pen: 'steel', d: closed(bit) },
    ...(point > corner
      ? [
          {
            pen: 'thin',
            d: open([
              { x: axis - r, y: y(corner) },
              { x: axis + r, y: y(corner) },
            ]),
          } as const,
        ]
      : []),
    {
      pen: 'steel',
      d: closed(box(axis - r - WALL - 3, axis + r + WALL + 3, y(collar) - COLLAR, y(collar))),
    },
    {
      pen: 'center',
      d: open([
        { x: axis, y: top - 8 },
        { x: axis, y: y(point) + 10 },
      ]),
    },
    ...(shapes.mark > collar
      ? [
          {
            pen: 'mark',
            d: open([
              { x: axis - r, y: y(shapes.mark) },
              { x: axis + r, y: y(shapes.mark) },
            ]),
          } as const,
        ]
      : []),
  ];
}

/** A bar clamp from over the board to under the bench. */
function drawClamp(shapes: BehindShapes, frame: Frame): Stroke[] {
  const { left, y } = frame;
  const spine = left - 24;
  const jaw = left + 22;
  const top = y(0) - 6;
  const foot = y(shapes.bench.to) + 8;
  const outline = [
    { x: spine, y: top - BAR },
    { x: jaw, y: top - BAR },
    { x: jaw, y: top },
    { x: spine + BAR, y: top },
    { x: spine + BAR, y: foot },
    { x: jaw, y: foot },
    { x: jaw, y: foot + BAR },
    { x: spine, y: foot + BAR },
  ];
  return [
    { pen: 'steel', d: closed(outline) },
    { pen: 'steel', d: closed(box(jaw - 20, jaw - 2, top, y(0))) },
    { pen: 'steel', d: closed(box(jaw - 18, jaw - 4, foot - 8, foot)) },
  ];
}

/** A hand reaching up at the far face, in outline: where none may be. */
function drawHand(frame: Frame, farFace: number): Stroke[] {
  const [x, y] = [frame.axis - 22, frame.y(farFace) + 6];
  const at = (right: number, down: number) =>
    `${Math.round((x + right) * 10) / 10},${Math.round((y + down) * 10) / 10}`;
  /** A finger, up one side and down the other. */
  const finger = (left: number, right: number, tip: number, root: number) =>
    `L${at(left, tip + 8)}C${at(left, tip)} ${at(right, tip)} ${at(right, tip + 8)}L${at(right, root)}`;
  const thumb = `C${at(18, 76)} ${at(14, 70)} ${at(8, 62)}L${at(-3, 46)}C${at(-8, 38)} ${at(2, 32)} ${at(8, 40)}L${at(16, 50)}`;
  const fingers = [
    finger(16, 28, 6, 38),
    finger(30, 42, 0, 38),
    finger(44, 56, 4, 40),
    finger(58, 68, 14, 58),
  ];
  const wrist = `C${at(68, 70)} ${at(62, 78)} ${at(62, HAND)}`;
  return [{ pen: 'phantom', d: `M${at(18, HAND)}${thumb}${fingers.join('')}${wrist}` }];
}

/** An upright dimension whose number stands at its right, at a height of its own. */
function besideDimension(
  x: number,
  ends: { readonly from: Point; readonly to: Point },
  textY: number,
  text: Reading,
  look: { readonly set?: true; readonly caution?: true },
): Dimensions {
  const { from, to } = ends;
  const inside = to.y - from.y > 30;
  const line = (y1: number, y2: number): Stroke => ({
    pen: 'thin',
    d: open([
      { x, y: y1 },
      { x, y: y2 },
    ]),
    ...look,
  });
  return {
    strokes: [
      ...[from, to].map((feature): Stroke => ({
        pen: 'thin',
        d: open([
          { x: feature.x + 3, y: feature.y },
          { x: x + 4, y: feature.y },
        ]),
      })),
      inside ? line(from.y, to.y) : line(from.y - 18, to.y + 18),
      { pen: 'arrow', d: arrowAt({ x, y: from.y }, 0, inside ? -1 : 1), ...look },
      { pen: 'arrow', d: arrowAt({ x, y: to.y }, 0, inside ? 1 : -1), ...look },
    ],
    labels: [{ x: x + 7, y: textY, anchor: 'start', kind: 'number', text, ...look }],
  };
}

/** Right of the board: wood left or how far the point is through, and the thickness. */
function drawDepths(shapes: BehindShapes, frame: Frame, look: Look, width: number): Dimensions {
  const { y, right, axis } = frame;
  const { point, thickness, end } = shapes;
  const half = textWidth(shownLength(thickness, look.unit), 'number') / 2;
  const whole = dimensionRow('y', width - 6 - half, [
    {
      from: { along: y(0), feature: right },
      to: { along: y(thickness), feature: right },
      text: shownLength(thickness, look.unit),
      outside: 'before',
      ...(look.set.includes('thickness') && { set: true }),
    },
  ]);
  const through = end.beyond > 0;
  if (point <= 0 || Math.abs(end.woodLeft) < 0.01) return whole;
  const [upper, lower] = through
    ? [
        { x: right, y: y(thickness) },
        { x: axis, y: y(point) },
      ]
    : [
        { x: axis, y: y(point) },
        { x: right, y: y(thickness) },
      ];
  // Clear of the far face's own line, and of the thickness in the middle of the board.
  const textY = through ? Math.max((upper.y + lower.y) / 2, upper.y + 13) : lower.y - 13;
  const rest = besideDimension(
    right + 14,
    { from: upper, to: lower },
    textY,
    shownLength(Math.abs(end.woodLeft), look.unit),
    through ? { caution: true } : {},
  );
  return {
    strokes: [...whole.strokes, ...rest.strokes],
    labels: [...whole.labels, ...rest.labels],
  };
}

/** Right of the bushing: the stop as it was set, and farther out what the collar has slipped. */
function drawStop(shapes: BehindShapes, frame: Frame, look: Look): Dimensions {
  const { y, axis, scale } = frame;
  const { mark, corner, collar } = shapes;
  const r = shapes.radius * scale;
  const edge = axis + r + WALL;
  const set = besideDimension(
    edge + 14,
    { from: { x: edge, y: y(mark) }, to: { x: axis + r, y: y(corner) } },
    Math.max((y(mark) + y(0)) / 2, y(mark) + 10),
    shownLength(corner - mark, look.unit),
    look.set.includes('stop') ? { set: true } : {},
  );
  if (mark - collar < 0.01) return set;
  const slip = besideDimension(
    edge + 50,
    { from: { x: edge + 3, y: y(collar) }, to: { x: edge + 18, y: y(mark) } },
    (y(collar) + y(mark)) / 2 - 2,
    shownLength(mark - collar, look.unit),
    { caution: true },
  );
  return {
    strokes: [...set.strokes, ...slip.strokes],
    labels: [...set.labels, ...slip.labels],
  };
}

function wordAt(x: number, y: number, text: string, more: Partial<Label> = {}): Label {
  return { x, y, anchor: 'start', kind: 'word', text: words(text), ...more };
}

/** Names of what is drawn: the tool's at its left, the boards' at their right. */
function drawNames(shapes: BehindShapes, frame: Frame): Label[] {
  const { right, y, axis, scale } = frame;
  const side = axis - shapes.radius * scale - WALL - 8;
  const middle = (part: { readonly from: number; readonly to: number }) =>
    y((part.from + part.to) / 2);
  const end = { anchor: 'end' } as const;
  return [
    wordAt(side - 4, y(shapes.collar) - COLLAR / 2, 'collar', end),
    wordAt(side, Math.min(middle(shapes.bushing), y(0) - 36), 'bushing', end),
    ...(shapes.waste ? [wordAt(right + 10, middle(shapes.waste), 'waste board')] : []),
    shapes.overBench
      ? wordAt(right + 10, middle(shapes.bench), 'bench')
      : wordAt(axis + 56, y(shapes.thickness) + 62, 'no hand here', { caution: true }),
  ];
}

/**
 * The board in section on what is behind it, with the bit at full depth, on a sheet `width` px
 * wide.
 */
export function arrangeBehind(shapes: BehindShapes, width: number, look: Look): Sheet {
  const narrow = width < NARROW;
  const above = shapes.bushing.to - shapes.bushing.from - shapes.bushing.to;
  const below = Math.max(shapes.bench.to, shapes.point + 4);
  const scale = Math.min(
    LARGEST_SCALE,
    (narrow ? TALLEST.narrow : TALLEST.wide) / (above + below),
    30 / Math.max(shapes.radius, 0.1),
  );
  const face = SHANK + COLLAR + 16 + above * scale;
  const left = 30;
  const widestLeft = textWidth(shownLength(Math.abs(shapes.end.woodLeft), look.unit), 'number');
  const widestThick = textWidth(shownLength(shapes.thickness, look.unit), 'number');
  const names = 10 + textWidth(words('waste board'), 'word') + 4;
  const outside = Math.max(names, 14 + 7 + widestLeft + 10 + widestThick + 6);
  const right = Math.max(left + 98, Math.min(width - outside, left + 460));
  const r = shapes.radius * scale;
  const least = r + WALL + 8 + textWidth(words('bushing'), 'word') + 2;
  const axis = Math.max(left + 62, least, narrow ? 0 : left + (right - left) * 0.42);
  const sheet = Math.min(width, right + outside);
  const frame: Frame = { scale, face, axis, left, right, y: (down) => face + down * scale };
  const { y } = frame;
  const edge = axis - r - 24;
  const sides = { left, right };
  const dimensions = [drawDepths(shapes, frame, look, sheet), drawStop(shapes, frame, look)];
  const labels: Label[] = [
    {
      ...wordAt((left + axis - r) / 2, y(shapes.thickness / 2), 'B', { anchor: 'middle' }),
      kind: 'letter',
      over: 'wood-b',
    },
    ...dimensions.flatMap((part) => part.labels),
  ];
  for (const name of drawNames(shapes, frame)) {
    if (labels.every((label) => !overlap(labelBox(label), labelBox(name)))) labels.push(name);
  }
  const warned = shapes.end.beyond > 0 && shapes.end.ends !== 'waste';
  const sign = cautionSign({ x: axis + 28, y: y(shapes.point) + 8 });
  const bottom = Math.max(
    y(shapes.bench.to) + 8 + BAR,
    y(shapes.thickness) + (shapes.overBench ? 0 : HAND + 6),
  );
  return {
    width,
    height: Math.ceil(Math.max(bottom, y(shapes.point)) + 14),
    hatches: [
      { name: 'board', grain: 'long', angle: 0 },
      { name: 'waste', grain: 'end', angle: 45 },
      { name: 'bench', grain: 'end', angle: 135 },
      { name: 'bushing', grain: 'end', angle: 45, metal: true },
    ],
    strokes: [
      ...drawBoard(
        shapes.overBench ? sides : { left, right: edge, rightEnds: true },
        y(shapes.bench.from),
        y(shapes.bench.to),
        'wood-a',
        'bench',
      ),
      ...(shapes.waste
        ? drawBoard(sides, y(shapes.waste.from), y(shapes.waste.to), 'wood-a', 'waste')
        : []),
      ...drawBoard(sides, y(0), y(shapes.thickness), 'wood-b', 'board'),
      ...(shapes.overBench ? [] : drawHand(frame, shapes.thickness)),
      ...drawClamp(shapes, frame),
      ...drawTool(shapes, frame),
      ...dimensions.flatMap((part) => part.strokes),
      ...(warned ? Object.values(sign).map((d): Stroke => ({ pen: 'sign', d })) : []),
    ],
    labels,
  };
}
