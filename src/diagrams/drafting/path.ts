import type { Point } from './point.ts';

/** A tenth of a pixel is finer than any screen shows. */
function coordinate(value: number): string {
  return String(Math.round(value * 10) / 10 + 0);
}

function at(point: Point): string {
  return `${coordinate(point.x)},${coordinate(point.y)}`;
}

/** An open line through the points, as SVG path data. @example open([{x:0,y:0},{x:1,y:2}]) // 'M0,0L1,2' */
export function open(points: readonly Point[]): string {
  return points.map((point, i) => `${i === 0 ? 'M' : 'L'}${at(point)}`).join('');
}

/** A closed shape through the points, as SVG path data. */
export function closed(points: readonly Point[]): string {
  return points.length === 0 ? '' : `${open(points)}Z`;
}

/** A full circle, as SVG path data. */
export function circle(center: Point, radius: number): string {
  const r = coordinate(radius);
  const left = at({ x: center.x - radius, y: center.y });
  const right = at({ x: center.x + radius, y: center.y });
  return `M${left}A${r},${r} 0 1 1 ${right}A${r},${r} 0 1 1 ${left}Z`;
}
