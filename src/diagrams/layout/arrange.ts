import { breakLine } from '../drafting/breakLine.ts';
import { type Dimensions, dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, NUMBER_SIZE, textWidth } from '../drafting/label.ts';
import { edgeMark, faceMark } from '../drafting/marks.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Unit, reading, shownReading, words } from '../drafting/reading.ts';
import type { LayoutShapes, Strip } from './geometry.ts';
import { runningDimension } from './running.ts';

/** Below this width the joint line runs down the page, as a story stick is read. */
const NARROW = 560;
/** A strip is never thinner than this on the page, in px. */
const THINNEST = 30;

/** How strips lie on the page. */
interface Frame {
  readonly upright: boolean;
  /** px for a mm along the joint line, and across it. */
  readonly along: number;
  readonly across: number;
  /** Where the joint line begins on the page, in px. */
  readonly origin: number;
  /** Where each strip's reference side lies across, in px, and which way the strip goes from it. */
  readonly strips: readonly { readonly at: number; readonly way: 1 | -1; readonly size: number }[];
  readonly place: (along: number, across: number) => Point;
}

function sizeOf(strip: Strip): number {
  return strip.far.at - strip.near.at;
}

function markText(mark: number, unit: Unit | 'both') {
  return shownReading(
    reading((length) => length(mark)),
    unit,
  );
}

/** The room between two strips: numbers and the running dimension. */
function gapOf(shapes: LayoutShapes, unit: Unit | 'both', upright: boolean): number {
  if (!upright) return 58;
  const widest = Math.max(
    30,
    ...shapes.strips.flatMap((strip) =>
      strip.holes.map((hole) => textWidth(markText(hole.mark, unit), 'number')),
    ),
  );
  return widest + 44;
}

function frameOf(
  shapes: LayoutShapes,
  width: number,
  unit: Unit | 'both',
): Frame & { height: number } {
  const upright = width < NARROW;
  const gap = gapOf(shapes, unit, upright);
  const { strips } = shapes;
  const start = Math.min(...strips.map((strip) => strip.start.at));
  const end = Math.max(...strips.map((strip) => strip.end.at));
  const wide = Math.max(...strips.map(sizeOf));
  const columns = upright ? 74 : 0;
  const lengthRoom = upright ? 470 : width - 150;
  const acrossRoom = upright
    ? (width - columns * 2 - gap * (strips.length - 1)) / strips.length
    : 78;
  const across0 = Math.max(THINNEST, Math.min(acrossRoom, 78)) / wide;
  const along = Math.min(lengthRoom / (end - start), across0);
  const across = Math.min(across0, Math.max(along, THINNEST / wide));
  const used = (end - start) * along;
  const lead = upright ? 58 : 64 + Math.max(0, lengthRoom - used) / 2;
  const origin = lead - start * along;
  let at = upright
    ? (width - strips.reduce((sum, s) => sum + sizeOf(s) * across, 0) - gap * (strips.length - 1)) /
      2
    : 62;
  const placed = strips.map((strip, i) => {
    const size = sizeOf(strip) * across;
    const way = i === 0 ? (1 as const) : (-1 as const);
    const place = { at: way === 1 ? at : at + size, way, size };
    at += size + gap;
    return place;
  });
  const place = (a: number, c: number): Point => (upright ? { x: c, y: a } : { x: a, y: c });
  return {
    upright,
    along,
    across,
    origin,
    strips: placed,
    place,
    height: upright ? lead + used + 92 : at - gap + 92,
  };
}

function drawStrip(strip: Strip, i: number, shapes: LayoutShapes, frame: Frame): Stroke[] {
  const { at, way } = frame.strips[i]!;
  const toPage = (along: number, across: number) =>
    frame.place(
      frame.origin + along * frame.along,
      at + way * (across - strip.near.at) * frame.across,
    );
  const { start, end, near, far } = strip;
  const corners = [
    toPage(start.at, near.at),
    toPage(end.at, near.at),
    toPage(end.at, far.at),
    toPage(start.at, far.at),
  ] as const;
  const sides = [near.whole, end.whole, far.whole, start.whole];
  const outline: Point[] = [];
  const lines: Stroke[] = [];
  corners.forEach((corner, side) => {
    const next = corners[(side + 1) % 4]!;
    const line = sides[side] === true ? [corner] : breakLine(corner, next);
    outline.push(...line);
    lines.push({ pen: sides[side] === true ? 'outline' : 'thin', d: open([...line, next]) });
  });
  const pitch = shapes.pitch > 0 ? shapes.pitch * frame.along : Infinity;
  const radius = Math.max(2.5, Math.min((shapes.diameter / 2) * frame.across, pitch * 0.36));
  const reach = radius + 4;
  return [
    { pen: strip.member === 'a' ? 'wood-a' : 'wood-b', d: closed(outline) },
    ...(strip.footprint ?? []).map((across): Stroke => ({
      pen: 'hidden',
      d: open([toPage(start.at, across), toPage(end.at, across)]),
    })),
    ...lines,
    ...strip.holes.flatMap((hole): Stroke[] => {
      const { x, y } = toPage(hole.along, strip.across);
      return [
        { pen: 'hole', d: circle({ x, y }, radius) },
        { pen: 'outline', d: circle({ x, y }, radius) },
        { pen: 'thin', d: `M${x - reach},${y}H${x + reach}M${x},${y - reach}V${y + reach}` },
      ];
    }),
  ];
}

/** Letters, and the marks of the sides that measuring starts from. */
function drawSigns(strip: Strip, i: number, frame: Frame): { strokes: Stroke[]; labels: Label[] } {
  const { at, way, size } = frame.strips[i]!;
  const startsAt = frame.origin + strip.start.at * frame.along;
  const middle = at + (way * size) / 2;
  const letter: Label = {
    ...frame.place(startsAt - (frame.upright ? 34 : 36), middle),
    anchor: 'middle',
    kind: 'letter',
    text: words(strip.letter),
  };
  const strokes: Stroke[] = [];
  if (strip.start.whole) {
    strokes.push({
      pen: 'mark',
      d: edgeMark(frame.place(startsAt, middle), frame.upright ? 0 : -90),
    });
  }
  if (strip.near.whole) {
    const foot = frame.place(startsAt + (frame.upright ? 26 : 22), at);
    const turn = frame.upright ? (way === 1 ? -90 : 90) : way === 1 ? 0 : 180;
    strokes.push({
      pen: 'mark',
      d: strip.from === 'face' ? faceMark(foot, turn) : edgeMark(foot, turn),
    });
  }
  return { strokes, labels: [letter] };
}

/** The running dimension of a strip, in the gap before it, and the lines squared across. */
function drawRunning(
  shapes: LayoutShapes,
  i: number,
  frame: Frame,
  unit: Unit | 'both',
): { strokes: Stroke[]; labels: Label[] } {
  const strip = shapes.strips[i]!;
  const before = frame.strips[i - 1]!;
  const here = frame.strips[i]!;
  const top = Math.max(before.at, before.at + before.way * before.size);
  const bottom = Math.min(here.at, here.at + here.way * here.size);
  const line = frame.upright ? top + 14 : bottom - 14;
  const marks = strip.holes.map((hole) => ({
    along: frame.origin + hole.along * frame.along,
    text: markText(hole.mark, unit),
  }));
  const origin = frame.origin + (strip.start.whole ? strip.start.at : 0) * frame.along;
  const numberAt = (mark: (typeof marks)[number]): Label[] =>
    frame.upright
      ? [
          {
            x: (line + bottom) / 2,
            y: mark.along,
            anchor: 'middle',
            kind: 'number',
            text: mark.text,
          },
        ]
      : (['end', 'start'] as const).map((anchor) => ({
          x: mark.along + (anchor === 'end' ? -5 : 5),
          y: line - NUMBER_SIZE / 2 - 5,
          anchor,
          kind: 'number',
          text: mark.text,
        }));
  const running = runningDimension(marks, origin, line, frame.place, numberAt);
  const squared = marks.flatMap((mark, n): Stroke[] => {
    const labeled = running.labeled.has(n);
    const to = (a: number, b: number): Stroke => ({
      pen: 'thin',
      d: open([frame.place(mark.along, a), frame.place(mark.along, b)]),
    });
    if (!frame.upright) return [to(labeled ? top + 3 : line - 4, bottom - 3)];
    if (!labeled) return [to(top + 3, line + 4)];
    const half = textWidth(mark.text, 'number') / 2 + 4;
    const middle = (line + bottom) / 2;
    return [to(top + 3, middle - half), to(middle + half, bottom - 3)];
  });
  return { strokes: [...squared, ...running.strokes], labels: running.labels };
}

/** End margin and pitch beside A, the joint's length beside the last strip. */
function drawChain(shapes: LayoutShapes, frame: Frame, unit: Unit | 'both'): Dimensions[] {
  const axis = frame.upright ? 'y' : 'x';
  const outside = frame.upright ? 'before' : 'over';
  const a = frame.strips[0]!;
  const last = frame.strips.at(-1)!;
  const at = (along: number) => frame.origin + along * frame.along;
  const end = (along: number, feature: number) => ({ along: at(along), feature });
  const show = (write: (length: (mm: number) => string) => string) =>
    shownReading(reading(write), unit);
  const positions = shapes.strips[0]!.holes.map((hole) => hole.along);
  const [first, final] = [positions[0], positions.at(-1)];
  const texts = show((length) =>
    shapes.spaces > 1 ? `${shapes.spaces} × ${length(shapes.pitch)}` : length(shapes.pitch),
  );
  const columns = (text: Parameters<typeof textWidth>[0]) =>
    frame.upright ? textWidth(text, 'number') / 2 + 14 : 30;
  const chain =
    first === undefined || final === undefined
      ? []
      : [
          {
            from: end(0, a.at),
            to: end(first, a.at),
            text: show((length) => length(first)),
            outside: 'before' as const,
          },
          ...(final > first
            ? [{ from: end(first, a.at), to: end(final, a.at), text: texts, outside } as const]
            : []),
        ];
  const lengthText = show((length) => length(shapes.length));
  return [
    dimensionRow(axis, a.at - Math.max(columns(texts), 30), chain),
    dimensionRow(axis, last.at + columns(lengthText), [
      {
        from: end(0, last.at),
        to: end(shapes.length, last.at),
        text: lengthText,
        outside: frame.upright ? 'after' : 'over',
      },
    ]),
  ];
}

/** How far the row lies from the reference face or end, past the end of each strip. */
function drawAcross(strip: Strip, i: number, frame: Frame, unit: Unit | 'both'): Dimensions {
  const { at, way } = frame.strips[i]!;
  const row = at + way * (strip.across - strip.near.at) * frame.across;
  const feature = frame.origin + strip.end.at * frame.along;
  const [low, high] = way === 1 ? [at, row] : [row, at];
  const open = strip.near.whole ? undefined : way === 1 ? 'from' : 'to';
  const text = shownReading(
    reading((length) => length(strip.across)),
    unit,
  );
  return dimensionRow(frame.upright ? 'x' : 'y', feature + 22, [
    {
      from: { along: low, feature: open === 'from' ? null : feature },
      to: { along: high, feature: open === 'to' ? null : feature },
      text,
      outside: 'after',
      ...(open && { openAt: open }),
    },
  ]);
}

/**
 * Lays out the row of pins on a sheet `width` px wide. On a phone the joint line runs down the
 * page; where the joint is long for its thickness, the strips are drawn thicker than to scale.
 */
export function arrangeLayout(shapes: LayoutShapes, width: number, unit: Unit | 'both'): Sheet {
  const frame = frameOf(shapes, width, unit);
  const parts: { strokes: readonly Stroke[]; labels: readonly Label[] }[] = [
    ...shapes.strips.map((strip, i) => ({
      strokes: drawStrip(strip, i, shapes, frame),
      labels: [],
    })),
    ...shapes.strips.map((strip, i) => drawSigns(strip, i, frame)),
    ...shapes.strips.slice(1).map((_, i) => drawRunning(shapes, i + 1, frame, unit)),
    ...drawChain(shapes, frame, unit),
    ...shapes.strips.map((strip, i) => drawAcross(strip, i, frame, unit)),
  ];
  const height = Math.ceil(frame.height);
  const toScale = Math.abs(frame.along - frame.across) < 1e-9;
  const note: Label = {
    x: 2,
    y: height - 12,
    anchor: 'start',
    kind: 'word',
    text: shownReading(
      {
        in: toScale ? 'inches' : 'inches; thickness not to scale',
        mm: toScale ? 'millimeters' : 'millimeters; thickness not to scale',
      },
      unit,
    ),
  };
  return {
    width,
    height,
    hatches: [],
    strokes: parts.flatMap((part) => part.strokes),
    labels: [...parts.flatMap((part) => part.labels), note],
  };
}
