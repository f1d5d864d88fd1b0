import type { GlueRoom } from '../../core/fit/glueRoom.ts';
import { breakLine } from '../drafting/breakLine.ts';
import { type Span, dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { cautionSign } from '../drafting/marks.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Unit, reading, shownReading, words } from '../drafting/reading.ts';
import { GAP_WIDENED, type GlueShapes } from './geometry.ts';
import { arrangeVolumes } from './volumes.ts';

const NARROW = 760;
/** Room for the numbers left of the section, and wood on either side of the hole, px. */
const MARGIN = 108;
const WOOD = 36;
/** How much is shown of A, px. */
const STRIP = 46;
const TALLEST = 250;
const LARGEST_SCALE = 10;

interface Part {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

function word(x: number, y: number, text: string, more: Partial<Label> = {}): Label {
  return { x, y, anchor: 'middle', kind: 'word', text: words(text), ...more };
}

/** The hole along its axis: A above, B below, the pin in both and the glue from the bottom up. */
function drawSection(
  shapes: GlueShapes,
  scale: number,
  top: number,
  unit: Unit | 'both',
  set: boolean,
): Part & { right: number; bottom: number } {
  const axis = MARGIN + WOOD + shapes.holeRadius * scale;
  const y = (depth: number) => top + STRIP + (depth + shapes.standsOff) * scale;
  const x = (off: number) => axis + off * scale;
  const at = (off: number, depth: number): Point => ({ x: x(off), y: y(depth) });
  const [left, right] = [MARGIN, axis * 2 - MARGIN];
  const { holeRadius: R, pinRadius: r, bottom, tip, pinEnd, standsOff, glueTop } = shapes;

  const farLine = [
    { x: right, y: y(shapes.far.y) },
    { x: left, y: y(shapes.far.y) },
  ] as const;
  const far = shapes.far.real ? farLine : [...breakLine(...farLine), farLine[1]];
  const sides = (from: Point, to: Point) => [...breakLine(from, to), to];
  const rightSide = sides({ x: right, y: y(0) }, farLine[0]);
  const leftSide = sides(farLine[1], { x: left, y: y(0) });
  const board = closed([{ x: left, y: y(0) }, ...rightSide, ...far.slice(1), ...leftSide]);

  const faceA = y(-standsOff);
  const boxA = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: faceA },
    { x: left, y: faceA },
  ];
  const hole = [at(-R, 0), at(-R, bottom), at(0, tip), at(R, bottom), at(R, 0)];
  const slope = tip > bottom ? Math.max(0, (tip - glueTop) / (tip - bottom)) * R : R;
  const wide = glueTop >= bottom ? slope : R;
  const glue =
    glueTop >= bottom
      ? [at(-wide, glueTop), at(0, tip), at(wide, glueTop)]
      : [at(-R, glueTop), at(-R, bottom), at(0, tip), at(R, bottom), at(R, glueTop)];
  const pin = [{ x: x(-r), y: top }, { x: x(r), y: top }, at(r, pinEnd), at(-r, pinEnd)];
  const grooves =
    shapes.flutes === 0
      ? []
      : [-0.6, -0.2, 0.2, 0.6].map((part): Stroke => ({
          pen: 'thin',
          d: open([{ x: x(part * r), y: top }, at(part * r, pinEnd)]),
        }));

  const span = (from: number, to: number, more: Partial<Span> = {}): Span => ({
    from: { along: y(from), feature: left },
    to: { along: y(to), feature: left },
    text: shownReading(
      reading((length) => length(to - from)),
      unit,
    ),
    outside: 'before',
    ...more,
  });
  const lengths = [
    ...(standsOff > 0.01 ? [span(-standsOff, 0, { caution: true })] : []),
    ...(pinEnd > 0.01 ? [span(0, pinEnd)] : []),
    ...(bottom - pinEnd > 0.01 ? [span(pinEnd, bottom, { set: set && standsOff === 0 })] : []),
  ];
  const dimensions = dimensionRow('y', left - 40, lengths);
  // Neighbors too short for their numbers would set them on each other.
  const numbers = spread(dimensions.labels, 19);

  const sign = cautionSign({ x: right - 16, y: (faceA + y(0)) / 2 });
  return {
    right,
    bottom: y(shapes.far.y),
    strokes: [
      { pen: 'wood-a', d: closed(boxA), hatch: 'along' },
      { pen: 'thin', d: open(sides(boxA[0]!, boxA[1]!)) },
      {
        pen: 'hole',
        d: closed([
          { x: x(-R), y: top },
          { x: x(R), y: top },
          { x: x(R), y: faceA },
          { x: x(-R), y: faceA },
        ]),
      },
      {
        pen: 'outline',
        d: open([
          { x: left, y: faceA },
          { x: right, y: faceA },
        ]),
      },
      { pen: 'wood-b', d: board, hatch: 'across' },
      { pen: shapes.far.real ? 'outline' : 'thin', d: open(far) },
      { pen: 'outline', d: open([{ x: left, y: y(0) }, at(-R, 0)]) },
      { pen: 'outline', d: open([at(R, 0), { x: right, y: y(0) }]) },
      { pen: 'hole', d: closed(hole) },
      { pen: 'glue', d: closed(glue) },
      { pen: 'pin', d: closed(pin), hatch: 'along' },
      ...grooves,
      { pen: 'outline', d: open(hole) },
      ...dimensions.strokes,
      ...(standsOff > 0.3 ? Object.values(sign).map((d): Stroke => ({ pen: 'sign', d })) : []),
    ],
    labels: [
      { ...word(left + 17, top + 20, 'A'), kind: 'letter', over: 'wood-a' },
      { ...word(left + 17, y(shapes.far.y) - 22, 'B'), kind: 'letter', over: 'wood-b' },
      ...numbers,
      ...((bottom - pinEnd) * scale > 19
        ? [word(axis, (y(pinEnd) + y(bottom)) / 2, 'end gap', { kind: 'number' })]
        : []),
    ],
  };
}

/** Labels of one column moved apart, downward, so that none stands on another. */
export function spread(labels: readonly Label[], least: number): readonly Label[] {
  let last = -Infinity;
  return labels.map((label) => {
    const y = Math.max(label.y, last + least);
    last = y;
    return { ...label, y };
  });
}

/** The pin cut across, with its flutes and the gap around it. */
function drawAcross(shapes: GlueShapes, center: Point, radius: number): Part {
  const scale = radius / shapes.holeRadius;
  const r = shapes.pinRadius * scale;
  const depth = Math.min(r / 2, shapes.fluteDepth * scale);
  const filled = shapes.glueTop < shapes.pinEnd - 1e-6;
  const on = (angle: number, length: number): Point => ({
    x: center.x + length * Math.sin(angle),
    y: center.y - length * Math.cos(angle),
  });
  const steps = 96;
  const pin = Array.from({ length: steps }, (_, i) => on((i / steps) * 2 * Math.PI, r));
  const notched = Array.from({ length: shapes.flutes }, (_, i) => {
    const middle = (i / shapes.flutes) * 2 * Math.PI;
    const half = Math.min(Math.PI / shapes.flutes, depth / r);
    const land = Array.from({ length: 7 }, (_, k) => {
      const from = middle + half;
      const to = middle + (2 * Math.PI) / shapes.flutes - half;
      return on(from + ((to - from) * k) / 6, r);
    });
    return [on(middle - half, r), on(middle, r - depth), ...land];
  }).flat();
  return {
    strokes: [
      { pen: 'wood-b', d: circle(center, radius + 12), hatch: 'across' },
      { pen: filled ? 'glue' : 'hole', d: circle(center, radius) },
      { pen: 'outline', d: circle(center, radius) },
      { pen: 'pin', d: closed(shapes.flutes > 0 ? notched : pin), hatch: 'end' },
    ],
    labels: [],
  };
}

/**
 * Lays out the glue in one hole on a sheet `width` px wide: the hole along its axis, the pin cut
 * across, and room and glue beside each other as volumes of one scale.
 * @param set whether the reader sets the free depth
 */
export function arrangeGlue(
  shapes: GlueShapes,
  room: GlueRoom,
  glue: number,
  width: number,
  unit: Unit | 'both',
  set: boolean,
): Sheet {
  const narrow = width < NARROW;
  const scale = Math.min(
    LARGEST_SCALE,
    TALLEST / (shapes.far.y + shapes.standsOff),
    (narrow ? 84 : 110) / (2 * shapes.holeRadius),
  );
  const section = drawSection(shapes, scale, 8, unit, set);
  const radius = narrow ? 44 : 60;
  const center = narrow
    ? { x: radius + 16, y: section.bottom + radius + 30 }
    : { x: section.right + 50 + radius, y: STRIP + radius };
  const across = drawAcross(shapes, center, radius);
  const volumes = narrow
    ? arrangeVolumes(room, glue, { middle: 146, top: center.y + radius + 24 })
    : arrangeVolumes(room, glue, {
        middle: Math.min(width - 150, center.x + radius + 250),
        top: 14,
      });
  // Beside the circle on a phone, else under it.
  const notes = ['cut across;', 'gap around the pin', `drawn ${GAP_WIDENED} times`, 'as wide'].map(
    (text, i) =>
      narrow
        ? word(2 * radius + 44, center.y + 20 * (i - 1.5), text, { anchor: 'start' })
        : word(center.x, center.y + radius + 32 + 20 * i, text),
  );
  return {
    width,
    height: Math.ceil(
      narrow
        ? volumes.bottom
        : Math.max(section.bottom + 12, volumes.bottom, center.y + radius + 112),
    ),
    hatches: [
      { name: 'along', grain: 'long', angle: 90 },
      { name: 'across', grain: 'long', angle: 0 },
      { name: 'end', grain: 'end', angle: 45 },
    ],
    strokes: [...section.strokes, ...across.strokes, ...volumes.strokes],
    labels: [...section.labels, ...across.labels, ...volumes.labels, ...notes],
  };
}
