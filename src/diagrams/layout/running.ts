import { arrowAt } from '../drafting/dimension.ts';
import type { Stroke } from '../drafting/ink.ts';
import { type Label, labelBox } from '../drafting/label.ts';
import { circle, open } from '../drafting/path.ts';
import { type Box, type Point, overlap } from '../drafting/point.ts';
import type { Reading } from '../drafting/reading.ts';

/** Marks nearer than this, in px, get an arrowhead only with a number. */
const CROWDED = 16;

/** A mark on a running dimension, in px. */
export interface RunningMark {
  readonly along: number;
  readonly text: Reading;
  /** This mark is not where it should be. */
  readonly caution?: boolean;
}

/** Order in which numbers are placed, so that the ends and then the even parts keep theirs. */
function byImportance(count: number): number[] {
  const order = [0, count - 1];
  for (let step = 2 ** Math.ceil(Math.log2(Math.max(2, count))); step >= 1; step /= 2) {
    for (let i = 0; i < count; i += step) order.push(i);
  }
  return [...new Set(order)].filter((i) => i >= 0 && i < count);
}

/**
 * Running dimensions from one origin (ISO 129-1): an open circle at the origin and an arrowhead
 * at every mark, each number measured from the origin, so that errors of laying out don't add
 * up. Where marks crowd, numbers are left out. `place` turns [along, across] into a point, `across`
 * is where the line runs; `numberAt` says where a number may stand, best first.
 */
export function runningDimension(
  marks: readonly RunningMark[],
  origin: number,
  across: number,
  place: (along: number, across: number) => Point,
  numberAt: (mark: RunningMark) => readonly Label[],
): { strokes: Stroke[]; labels: Label[]; labeled: Set<number> } {
  const last = marks.at(-1);
  if (last === undefined) return { strokes: [], labels: [], labeled: new Set() };
  const from = place(origin, across);
  const forward = place(origin + 1, across);
  const strokes: Stroke[] = [
    { pen: 'thin', d: open([from, place(last.along, across)]) },
    { pen: 'hole', d: circle(from, 3.5) },
    { pen: 'thin', d: circle(from, 3.5) },
  ];
  const labels: Label[] = [];
  const labeled = new Set<number>();
  const taken: Box[] = [];
  for (const i of byImportance(marks.length)) {
    const mark = marks[i]!;
    const found = numberAt(mark).find((label) => {
      const box = labelBox(label);
      const roomy = { ...box, left: box.left - 3, right: box.right + 3 };
      return !taken.some((other) => overlap(roomy, other));
    });
    if (found === undefined) continue;
    labels.push(found);
    labeled.add(i);
    taken.push(labelBox(found));
  }
  marks.forEach((mark, i) => {
    const before = i === 0 ? origin : marks[i - 1]!.along;
    if (!labeled.has(i) && mark.along - before < CROWDED) return;
    strokes.push({
      pen: 'arrow',
      d: arrowAt(place(mark.along, across), forward.x - from.x, forward.y - from.y),
    });
  });
  return { strokes, labels, labeled };
}
