/** A place on a drawing; x to the right, y down, as on the page. In mm or px, as its user says. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A line from one point to another. */
export type Segment = readonly [Point, Point];

/** An upright rectangle. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The smallest box around the points; null without any. */
export function boxAround(points: readonly Point[]): Box | null {
  if (points.length === 0) return null;
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return {
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  };
}

/** The corners of an upright rectangle, from its top left, clockwise. */
export function rectangle(left: number, right: number, top: number, bottom: number): Point[] {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

/** True where two boxes share some area. */
export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** The point moved by `dx`, `dy`. */
export function shift(point: Point, dx: number, dy: number): Point {
  return { x: point.x + dx, y: point.y + dy };
}
