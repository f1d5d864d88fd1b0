import type { Point } from '../drafting/point.ts';
import { type Place, dot, place } from './space.ts';

const COS = Math.sqrt(3) / 2;

/**
 * Drawn at full size along the axes, a circle's longest diameter comes out this much larger than
 * it is (ISO 5456-3, isometric).
 */
const ENLARGED = Math.sqrt(1.5);

/** How the joint is looked at. */
export interface View {
  /** Where a place of the joint lies on the page, in mm; y down. Lengths along x, y and z stay true. */
  readonly project: (at: Place) => Point;
  /** Unit vector from the joint to whoever looks. */
  readonly toEye: Place;
}

/** A circle as it is seen: half of its axes, and the turn of the longer one in degrees clockwise. */
export interface Ellipse {
  readonly center: Point;
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
}

/**
 * The isometric view: x runs away to the upper right, y to the upper left, z straight up.
 * @param turn degrees that the joint is turned about z first, counterclockwise from above
 */
export function isometric(turn: number): View {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const third = 1 / Math.sqrt(3);
  return {
    project: ({ x, y, z }) => {
      const [right, left] = [x * cos - y * sin, x * sin + y * cos];
      return { x: COS * (right - left), y: -z - (right + left) / 2 };
    },
    toEye: place(-third * (cos + sin), third * (sin - cos), third),
  };
}

/** A circle around `normal` (of length 1) as it is seen. */
export function seenCircle(view: View, center: Place, normal: Place, radius: number): Ellipse {
  const origin = view.project(place(0, 0, 0));
  const axis = view.project(normal);
  // The longest diameter lies square to the circle's axis on the page.
  const turn = (Math.atan2(axis.y - origin.y, axis.x - origin.x) * 180) / Math.PI + 90;
  const rx = ENLARGED * radius;
  return {
    center: view.project(center),
    rx,
    ry: rx * Math.abs(dot(normal, view.toEye)),
    turn,
  };
}
