import type { Stroke } from './ink.ts';
import { type Label, NUMBER_SIZE, textWidth } from './label.ts';
import { circle, closed, open } from './path.ts';
import type { Point } from './point.ts';
import type { Reading } from './reading.ts';

/** Sizes of a dimension in px (proportions of ASME Y14.2: arrowheads three times as long as wide). */
const ARROW = 11;
const ARROW_HALF = 2.4;
/** Between the feature and its extension line, and from the line on beyond the arrow. */
const FEATURE_GAP = 3;
const OVERRUN = 4;
/** Between a number and its dimension line. */
const TEXT_GAP = 5;
/** The line outside an arrow that points inward. */
const TAIL = 9;
/** From a dimension line up to the middle of a number that stands over it. */
const OVER = 15;

/** One end of a dimension: where it lies along the dimension line, and where its feature lies across. */
export interface DimensionEnd {
  readonly along: number;
  /** Where the extension line starts; null where there is none to draw. */
  readonly feature: number | null;
}

/** One length of a row of dimensions, in px. */
export interface Span {
  readonly from: DimensionEnd;
  readonly to: DimensionEnd;
  readonly text: Reading;
  /** This end lies beyond a break line: no arrowhead, the line just runs on. */
  readonly openAt?: 'from' | 'to';
  readonly set?: boolean;
  readonly caution?: boolean;
  /** Where the number goes when it has no room inside: left of the span, right of it, or over it. */
  readonly outside: 'before' | 'after' | 'over';
}

export interface Dimensions {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

type Axis = 'x' | 'y';

function toPoint(axis: Axis, along: number, across: number): Point {
  return axis === 'x' ? { x: along, y: across } : { x: across, y: along };
}

/** A filled arrowhead with its tip at `tip`, pointing along the unit vector (dx, dy). */
export function arrowAt(tip: Point, dx: number, dy: number): string {
  const base = { x: tip.x - dx * ARROW, y: tip.y - dy * ARROW };
  return closed([
    tip,
    { x: base.x - dy * ARROW_HALF, y: base.y + dx * ARROW_HALF },
    { x: base.x + dy * ARROW_HALF, y: base.y - dx * ARROW_HALF },
  ]);
}

/** Length that a number takes along its dimension line. */
function textLength(axis: Axis, text: Reading): number {
  return axis === 'x' ? textWidth(text, 'number') : NUMBER_SIZE;
}

type Fit = 'all inside' | 'arrows outside' | 'all outside' | 'number outside';

function fitOf(axis: Axis, span: Span): Fit {
  const room = Math.abs(span.to.along - span.from.along);
  const text = textLength(axis, span.text);
  if (span.openAt !== undefined) return 'number outside';
  if (room >= text + 2 * (ARROW + TEXT_GAP)) return 'all inside';
  if (room >= text + 2 * TEXT_GAP) return 'arrows outside';
  if (room >= 2 * ARROW + 6) return 'number outside';
  return 'all outside';
}

/**
 * A row of dimensions on one line, as ISO 129-1 and ASME Y14.5 have them: thin extension lines
 * that leave a gap at the feature, arrowheads, each number upright in its line where it has room
 * and beside it where it has not. Spans may share an end and are given from left to right or
 * from top to bottom; of spans too short for their arrowheads, a shared end gets a dot.
 */
export function dimensionRow(axis: Axis, across: number, spans: readonly Span[]): Dimensions {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];

  const isShared = (span: Span, at: number) =>
    spans.some((other) => other !== span && [other.from.along, other.to.along].includes(at));

  const extended = new Map<number, DimensionEnd>();
  for (const span of spans) {
    for (const end of [span.from, span.to]) extended.set(Math.round(end.along * 10), end);
  }
  for (const end of extended.values()) {
    if (end.feature === null) continue;
    const away = Math.sign(across - end.feature) || 1;
    strokes.push({
      pen: 'thin',
      d: open([
        toPoint(axis, end.along, end.feature + away * FEATURE_GAP),
        toPoint(axis, end.along, across + away * OVERRUN),
      ]),
    });
  }

  spans.forEach((span) => {
    const fit = fitOf(axis, span);
    const look = {
      ...(span.set === true && { set: true }),
      ...(span.caution === true && { caution: true }),
    };
    const line = (from: number, to: number) =>
      strokes.push({
        pen: 'thin',
        d: open([toPoint(axis, from, across), toPoint(axis, to, across)]),
        ...look,
      });
    const arrow = (tip: number, direction: 1 | -1) =>
      strokes.push({
        pen: 'arrow',
        d:
          axis === 'x'
            ? arrowAt(toPoint(axis, tip, across), direction, 0)
            : arrowAt(toPoint(axis, tip, across), 0, direction),
        ...look,
      });
    const [start, end] = [span.from.along, span.to.along];
    const text = textLength(axis, span.text);
    const middle = (start + end) / 2;

    if (fit === 'all inside' || fit === 'number outside') {
      if (span.openAt !== 'from') arrow(start, -1);
      if (span.openAt !== 'to') arrow(end, 1);
    } else {
      for (const [at, direction] of [
        [start, 1],
        [end, -1],
      ] as const) {
        if (isShared(span, at)) {
          strokes.push({ pen: 'arrow', d: circle(toPoint(axis, at, across), 3), ...look });
        } else {
          arrow(at, direction);
          line(at, at - direction * (ARROW + TAIL));
        }
      }
    }

    if (fit === 'all inside' || fit === 'arrows outside') {
      line(start, middle - text / 2 - TEXT_GAP);
      line(middle + text / 2 + TEXT_GAP, end);
      labels.push({ ...place(axis, middle, across, 'middle'), text: span.text, ...look });
      return;
    }
    line(start, end);
    if (axis === 'y') {
      labels.push({ ...beside(middle, across, span.outside), text: span.text, ...look });
      return;
    }
    if (span.outside === 'over') {
      labels.push({ ...place(axis, middle, across - OVER, 'middle'), text: span.text, ...look });
      return;
    }
    const out = fit === 'all outside' ? ARROW + TAIL : TAIL;
    const [edge, anchor] =
      span.outside === 'before' ? ([start - out, 'end'] as const) : ([end + out, 'start'] as const);
    line(span.outside === 'before' ? start : end, edge);
    const gap = span.outside === 'before' ? -TEXT_GAP : TEXT_GAP;
    labels.push({ ...place(axis, edge + gap, across, anchor), text: span.text, ...look });
  });
  return { strokes, labels };
}

/** A number in a row's line: at its middle, or before or after its end. */
function place(
  axis: Axis,
  along: number,
  across: number,
  anchor: Label['anchor'],
): Pick<Label, 'x' | 'y' | 'anchor' | 'kind'> {
  return { ...toPoint(axis, along, across), anchor, kind: 'number' };
}

/** A number to the left or right of an upright dimension that is too short to hold it. */
function beside(
  middle: number,
  across: number,
  side: Span['outside'],
): Pick<Label, 'x' | 'y' | 'anchor' | 'kind'> {
  return side !== 'after'
    ? { x: across - TEXT_GAP - 2, y: middle, anchor: 'end', kind: 'number' }
    : { x: across + TEXT_GAP + 2, y: middle, anchor: 'start', kind: 'number' };
}
