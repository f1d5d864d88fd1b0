import type { Point } from './point.ts';

/** Three-quarter waves, uneven as a hand draws them: [part of the way, swing]. */
const WAVE: readonly (readonly [number, number])[] = [
  [0.07, 0.35],
  [0.16, 0.9],
  [0.26, 0.6],
  [0.36, -0.35],
  [0.47, -1],
  [0.58, -0.5],
  [0.68, 0.4],
  [0.79, 0.85],
  [0.9, 0.45],
];

/**
 * A freehand line from one point to another, in px: the board goes on beyond it (ISO 128-2,
 * line 01.1.18). Includes `from` and leaves `to` to what follows.
 */
export function breakLine(from: Point, to: Point): Point[] {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.hypot(dx, dy);
  if (length === 0) return [from];
  const swing = Math.min(4, length / 12);
  return [
    from,
    ...WAVE.map(([part, side]) => ({
      x: from.x + dx * part - (dy / length) * side * swing,
      y: from.y + dy * part + (dx / length) * side * swing,
    })),
  ];
}
