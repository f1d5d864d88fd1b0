import type { Point } from './point.ts';

/** A convex shape to look through, corner to corner clockwise on the page. */
export type Window = readonly Point[];

/** A circle as a window of 72 corners. */
export function roundWindow(center: Point, radius: number): Window {
  return Array.from({ length: 72 }, (_, i) => {
    const angle = (i / 72) * 2 * Math.PI;
    return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
  });
}

/** Positive on the inner side of the window's edge from `from` to `to`. */
function inside(point: Point, from: Point, to: Point): number {
  return (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
}

function between(p: Point, q: Point, part: number): Point {
  return { x: p.x + (q.x - p.x) * part, y: p.y + (q.y - p.y) * part };
}

/** The part of a closed shape that is seen through a window; empty where none is. */
export function clipArea(shape: readonly Point[], window: Window): readonly Point[] {
  return window.reduce<readonly Point[]>((left, from, i) => {
    const to = window[(i + 1) % window.length]!;
    return left.flatMap((point, k) => {
      const before = left[(k + left.length - 1) % left.length]!;
      const [was, is] = [inside(before, from, to), inside(point, from, to)];
      const crossing = was >= 0 === is >= 0 ? [] : [between(before, point, was / (was - is))];
      return is >= 0 ? [...crossing, point] : crossing;
    });
  }, shape);
}

/** The parts of an open line that are seen through a window. */
export function clipLine(line: readonly Point[], window: Window): readonly (readonly Point[])[] {
  return line.slice(1).flatMap((q, i) => {
    const p = line[i]!;
    let [enter, leave] = [0, 1];
    window.forEach((from, k) => {
      const to = window[(k + 1) % window.length]!;
      const [was, is] = [inside(p, from, to), inside(q, from, to)];
      if (was < 0 && is < 0) leave = -1;
      else if (was < 0) enter = Math.max(enter, was / (was - is));
      else if (is < 0) leave = Math.min(leave, was / (was - is));
    });
    return enter < leave ? [[between(p, q, enter), between(p, q, leave)]] : [];
  });
}
