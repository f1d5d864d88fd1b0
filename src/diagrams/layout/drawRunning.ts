import type { Stroke } from '../drafting/ink.ts';
import { type Label, NUMBER_SIZE, textWidth } from '../drafting/label.ts';
import { open } from '../drafting/path.ts';
import type { Unit } from '../drafting/reading.ts';
import type { Frame } from './frame.ts';
import type { LayoutShapes, Strip } from './geometry.ts';
import { runningDimension } from './running.ts';
import { markText, outerMarks } from './texts.ts';

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
export function drawRunning(
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
export function drawOuterRunning(
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
