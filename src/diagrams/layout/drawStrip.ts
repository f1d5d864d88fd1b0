import { breakLine } from '../drafting/breakLine.ts';
import type { Stroke } from '../drafting/ink.ts';
import type { Label } from '../drafting/label.ts';
import { edgeMark, faceMark } from '../drafting/marks.ts';
import { circle, closed, open } from '../drafting/path.ts';
import type { Point } from '../drafting/point.ts';
import { words } from '../drafting/reading.ts';
import type { Frame } from './frame.ts';
import type { LayoutShapes, Strip } from './geometry.ts';

/** A strip of a board with its holes. */
export function drawStrip(strip: Strip, i: number, shapes: LayoutShapes, frame: Frame): Stroke[] {
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
export function drawSigns(
  strip: Strip,
  i: number,
  frame: Frame,
): { strokes: Stroke[]; labels: Label[] } {
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
