import { breakLine } from '../drafting/breakLine.ts';
import { type Dimensions, dimensionRow } from '../drafting/dimension.ts';
import type { Sheet, Stroke } from '../drafting/ink.ts';
import { type Label, NUMBER_SIZE, labelBox, textWidth } from '../drafting/label.ts';
import { edgeMark, faceMark } from '../drafting/marks.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { type Unit, reading, shownReading, words } from '../drafting/reading.ts';
import type { LayoutShapes, Strip } from './geometry.ts';
import { runningDimension } from './running.ts';

/** Below this width the joint line runs down the page, as a story stick is read. */
const NARROW = 560;
/** A strip is never thinner than this on the page, in px. */
const THINNEST = 24;

/** Which of its lengths the reader sets. */
export type SetLength = 'margin' | 'pitch' | 'length';

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

/** From a strip to the middle of a column of dimensions beside it, less half its numbers, in px. */
const BESIDE = 16;

/** The pitch; across the page, of several equal ones, their count as well (ISO 129-1). */
function chainText(shapes: LayoutShapes, unit: Unit | 'both', upright: boolean) {
  const { spaces, pitch } = shapes;
  const counted = spaces > 1 && !upright;
  return shownReading(
    reading((length) => (counted ? `${spaces}\u00a0×\u00a0${length(pitch)}` : length(pitch))),
    unit,
  );
}

/** From A to the line of margin and pitch beside it, down the page, in px. */
function chainLine(shapes: LayoutShapes, unit: Unit | 'both'): number {
  const first = textWidth(markText(shapes.strips[0]!.holes[0]?.along ?? 0, unit), 'number');
  const pitch = textWidth(chainText(shapes, unit, true), 'number');
  return BESIDE + Math.max(first, pitch) / 2;
}

/** The marks of a stile, where they are not those of the rail. */
function outerMarks(shapes: LayoutShapes): Strip['holes'] | null {
  const b = shapes.strips[1]!;
  return b.ownMarks ? b.holes : null;
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
  return widest + 38;
}

/** Room kept free on either side for numbers, in px. */
interface Margins {
  readonly left: number;
  readonly right: number;
}

function frameOf(
  shapes: LayoutShapes,
  width: number,
  unit: Unit | 'both',
  { left, right }: Margins,
): Frame & { height: number } {
  const { strips } = shapes;
  // Three strips side by side leave a phone no room for numbers; a leg's joint is short.
  const upright = width < NARROW && strips.length < 3;
  const gap = gapOf(shapes, unit, upright);
  const start = Math.min(...strips.map((strip) => strip.start.at));
  const end = Math.max(...strips.map((strip) => strip.end.at), start + 1e-3);
  const wide = Math.max(...strips.map(sizeOf), 1e-3);
  const lengthRoom = upright ? 470 : Math.max(60, width - left - right);
  const acrossRoom = upright
    ? (width - left - right - gap * (strips.length - 1)) / strips.length
    : 78;
  const across0 = Math.max(THINNEST, Math.min(acrossRoom, 78)) / wide;
  const along = Math.min(lengthRoom / (end - start), across0);
  const across = Math.min(across0, Math.max(along, THINNEST / wide));
  const used = (end - start) * along;
  const lead = upright ? 58 : left + Math.max(0, lengthRoom - used) / 2;
  const origin = lead - start * along;
  const wideAll =
    strips.reduce((sum, s) => sum + sizeOf(s) * across, 0) + gap * (strips.length - 1);
  let at = upright ? left + Math.max(0, width - left - right - wideAll) / 2 : 66;
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
    height: upright ? lead + used + 78 : at - gap + (outerMarks(shapes) ? 96 : 80),
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
        ...(hole.meant === undefined
          ? []
          : [{ pen: 'phantom', d: circle(toPage(hole.meant, strip.across), radius) } as const]),
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
    const foot = frame.place(frame.origin + strip.end.at * frame.along - 16, at);
    const turn = frame.upright ? (way === 1 ? -90 : 90) : way === 1 ? 0 : 180;
    strokes.push({
      pen: 'mark',
      d: strip.from === 'face' ? faceMark(foot, turn) : edgeMark(foot, turn),
    });
  }
  return { strokes, labels: [letter] };
}

/** A running dimension over `line`, its numbers between `line` and `beyond`. */
function runAlong(
  holes: Strip['holes'],
  start: number,
  line: number,
  beyond: number,
  frame: Frame,
  unit: Unit | 'both',
) {
  const marks = holes.map((hole) => ({
    along: frame.origin + hole.along * frame.along,
    text: markText(hole.mark, unit),
    ...(hole.meant !== undefined && { caution: true }),
  }));
  const numberAt = (mark: (typeof marks)[number]): Label[] =>
    frame.upright
      ? [
          {
            x: (line + beyond) / 2,
            y: mark.along,
            anchor: 'middle',
            kind: 'number',
            text: mark.text,
            ...(mark.caution && { caution: true }),
          },
        ]
      : (['end', 'start'] as const).map((anchor) => ({
          x: mark.along + (anchor === 'end' ? -5 : 5),
          y: line + Math.sign(beyond - line) * (NUMBER_SIZE / 2 + 5),
          anchor,
          kind: 'number',
          text: mark.text,
          ...(mark.caution && { caution: true }),
        }));
  const origin = frame.origin + start * frame.along;
  return { marks, ...runningDimension(marks, origin, line, frame.place, numberAt) };
}

/** The running dimension between two strips, and the lines squared across from one to the other. */
function drawRunning(
  shapes: LayoutShapes,
  i: number,
  frame: Frame,
  unit: Unit | 'both',
): { strokes: Stroke[]; labels: Label[] } {
  const before = frame.strips[i - 1]!;
  const here = frame.strips[i]!;
  const top = Math.max(before.at, before.at + before.way * before.size);
  const bottom = Math.min(here.at, here.at + here.way * here.size);
  const line = frame.upright ? top + 14 : bottom - 14;
  const beyond = frame.upright ? bottom : top;
  const strip = shapes.strips[i === 1 ? 0 : i]!;
  const running = runAlong(strip.holes, strip.start.at, line, beyond, frame, unit);
  // The second row of a leg has nothing to do with the face before it.
  const from = i === 1 ? top + 3 : line - 4;
  const squared = running.marks.flatMap((mark, n): Stroke[] => {
    const labeled = running.labeled.has(n);
    const to = (a: number, b: number): Stroke => ({
      pen: 'thin',
      d: open([frame.place(mark.along, a), frame.place(mark.along, b)]),
    });
    if (!frame.upright) return [to(labeled ? from : line - 4, bottom - 3)];
    if (!labeled) return [to(from, line + 4)];
    const half = textWidth(mark.text, 'number') / 2 + 4;
    const middle = (line + beyond) / 2;
    return [to(from, middle - half), to(middle + half, bottom - 3)];
  });
  return { strokes: [...squared, ...running.strokes], labels: running.labels };
}

/** A stile's own marks, on its outer side. */
function drawOuterRunning(
  shapes: LayoutShapes,
  frame: Frame,
  unit: Unit | 'both',
): { strokes: Stroke[]; labels: Label[] } {
  const holes = outerMarks(shapes);
  if (holes === null) return { strokes: [], labels: [] };
  const strip = shapes.strips[1]!;
  const { at } = frame.strips[1]!;
  const line = at + 18;
  const widest = Math.max(...holes.map((hole) => textWidth(markText(hole.mark, unit), 'number')));
  const running = runAlong(
    holes,
    strip.start.at,
    line,
    frame.upright ? line + widest + 20 : line + 30,
    frame,
    unit,
  );
  return {
    strokes: [
      ...running.marks.map((mark): Stroke => ({
        pen: 'thin',
        d: open([
          frame.place(mark.along, at + 3),
          frame.place(mark.along, line + (frame.upright ? 6 : 26)),
        ]),
      })),
      ...running.strokes,
    ],
    labels: running.labels,
  };
}

/** End margin and pitch beside A, the joint's length beside the last strip. */
function drawChain(
  shapes: LayoutShapes,
  frame: Frame,
  unit: Unit | 'both',
  set: readonly SetLength[],
): Dimensions[] {
  const axis = frame.upright ? 'y' : 'x';
  const outside = frame.upright ? ('before' as const) : ('over' as const);
  const a = frame.strips[0]!;
  const last = frame.strips.at(-1)!;
  const at = (along: number) => frame.origin + along * frame.along;
  const end = (along: number, feature: number) => ({ along: at(along), feature });
  const show = (write: (length: (mm: number) => string) => string) =>
    shownReading(reading(write), unit);
  const positions = shapes.strips[0]!.holes.map((hole) => hole.along);
  const [first, final] = [positions[0], positions.at(-1)];
  // Down the page one pitch is enough; across it the whole row with its count.
  const chainEnd = frame.upright ? (positions[1] ?? 0) : (final ?? 0);
  // Two numbers beside short lengths down the page would stand on each other.
  const roomy = !frame.upright || ((first ?? 0) + shapes.pitch) * frame.along > 2.3 * NUMBER_SIZE;
  const texts = chainText(shapes, unit, frame.upright);
  const chain =
    first === undefined || final === undefined
      ? []
      : [
          {
            from: end(0, a.at),
            to: end(first, a.at),
            text: show((length) => length(first)),
            outside: 'before' as const,
            set: set.includes('margin'),
          },
          ...(final > first && roomy
            ? [
                {
                  from: end(first, a.at),
                  to: end(chainEnd, a.at),
                  text: texts,
                  outside,
                  set: set.includes('pitch'),
                },
              ]
            : []),
        ];
  const beside = dimensionRow(axis, a.at - (frame.upright ? chainLine(shapes, unit) : 34), chain);
  if (frame.upright || outerMarks(shapes) !== null) return [beside];
  return [
    beside,
    dimensionRow('x', last.at + 30, [
      {
        from: end(0, last.at),
        to: end(shapes.length, last.at),
        text: markText(shapes.length, unit),
        outside: 'over',
        set: set.includes('length'),
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

function drawAll(
  shapes: LayoutShapes,
  frame: Frame,
  unit: Unit | 'both',
  withChain: boolean,
  set: readonly SetLength[],
): { strokes: readonly Stroke[]; labels: readonly Label[] }[] {
  return [
    ...shapes.strips.map((strip, i) => ({
      strokes: drawStrip(strip, i, shapes, frame),
      labels: [],
    })),
    ...shapes.strips.map((strip, i) => drawSigns(strip, i, frame)),
    ...shapes.strips.slice(1).map((_, i) => drawRunning(shapes, i + 1, frame, unit)),
    drawOuterRunning(shapes, frame, unit),
    ...(withChain ? drawChain(shapes, frame, unit, set) : []),
    ...shapes.strips.map((strip, i) => drawAcross(strip, i, frame, unit)),
  ];
}

/** Widens the margins until every number is on the sheet, if it can be. */
function fit(
  shapes: LayoutShapes,
  width: number,
  unit: Unit | 'both',
  withChain: boolean,
  set: readonly SetLength[],
) {
  let margins: Margins = { left: withChain ? 62 : 44, right: 30 };
  for (let turn = 0; ; turn++) {
    const frame = frameOf(shapes, width, unit, margins);
    const parts = drawAll(shapes, frame, unit, withChain, set);
    const boxes = parts.flatMap((part) => part.labels).map(labelBox);
    const overLeft = Math.max(0, 2 - Math.min(...boxes.map((box) => box.left)));
    const overRight = Math.max(0, Math.max(...boxes.map((box) => box.right)) - (width - 2));
    const fits = overLeft <= 0.5 && overRight <= 0.5;
    if (fits || turn === 12) return { frame, parts, fits };
    margins = { left: margins.left + overLeft, right: margins.right + overRight };
  }
}

/**
 * Lays out the row of pins on a sheet `width` px wide. On a phone the joint line runs down the
 * page; where the joint is long for its thickness, the strips are drawn thicker than to scale.
 */
export function arrangeLayout(
  shapes: LayoutShapes,
  width: number,
  unit: Unit | 'both',
  set: readonly SetLength[] = [],
): Sheet {
  const full = fit(shapes, width, unit, true, set);
  // The running dimensions say it all; margin and pitch are there where they have room.
  const { frame, parts } = full.fits ? full : fit(shapes, width, unit, false, set);
  const height = Math.ceil(frame.height);
  const toScale = Math.abs(frame.along - frame.across) < 1e-9;
  const notes = [
    ...(frame.upright ? [reading((length) => `joint ${length(shapes.length)} long`)] : []),
    { in: `inches from ${shapes.datum}`, mm: `millimeters from ${shapes.datum}` },
    ...(toScale ? [] : [words('thickness drawn larger than to scale')]),
  ];
  return {
    width,
    height: height + (notes.length - 1) * 20,
    hatches: [],
    strokes: parts.flatMap((part) => part.strokes),
    labels: [
      ...parts.flatMap((part) => part.labels),
      ...notes.map((text, i): Label => ({
        x: 2,
        y: height - 12 + i * 20,
        anchor: 'start',
        kind: 'word',
        text: shownReading(text, unit),
      })),
    ],
  };
}
