import { textWidth } from '../drafting/label.ts';
import { type Unit, reading, shownReading } from '../drafting/reading.ts';
import type { LayoutShapes, Strip } from './geometry.ts';

/** A distance from the reference end as it stands on the drawing. */
export function markText(mark: number, unit: Unit | 'both') {
  return shownReading(
    reading((length) => length(mark)),
    unit,
  );
}

/** From a strip to the middle of a column of dimensions beside it, less half its numbers, in px. */
const BESIDE = 16;

/** The pitch; across the page, of several equal ones, their count as well (ISO 129-1). */
export function chainText(shapes: LayoutShapes, unit: Unit | 'both', upright: boolean) {
  const { spaces, pitch } = shapes;
  const counted = spaces > 1 && !upright;
  return shownReading(
    reading((length) => (counted ? `${spaces}\u00a0×\u00a0${length(pitch)}` : length(pitch))),
    unit,
  );
}

/** From A to the line of margin and pitch beside it, down the page, in px. */
export function chainLine(shapes: LayoutShapes, unit: Unit | 'both'): number {
  const first = textWidth(markText(shapes.strips[0]!.holes[0]?.along ?? 0, unit), 'number');
  const pitch = textWidth(chainText(shapes, unit, true), 'number');
  return BESIDE + Math.max(first, pitch) / 2;
}

/** The marks of a stile, where they are not those of the rail. */
export function outerMarks(shapes: LayoutShapes): Strip['holes'] | null {
  const b = shapes.strips[1]!;
  return b.ownMarks ? b.holes : null;
}
