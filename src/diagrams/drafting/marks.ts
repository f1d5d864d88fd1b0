import { closed } from './path.ts';
import type { Point } from './point.ts';

/** Where a point of a mark comes to lie: y is 0 at the mark's foot and negative over it. */
export type Laid = (x: number, y: number) => Point;

function turned(center: Point, degrees: number): Laid {
  const angle = (degrees * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return (x, y) => ({ x: center.x + x * cos - y * sin, y: center.y + x * sin + y * cos });
}

function written(laid: Laid): (x: number, y: number) => string {
  const r = (value: number) => Math.round(value * 10) / 10;
  return (x, y) => {
    const point = laid(x, y);
    return `${r(point.x)},${r(point.y)}`;
  };
}

/**
 * The face mark: the looped stroke that the trade pencils on a face side, its tail running to
 * the edge that was made true with it. `foot` is where the tail meets the face; unturned it stands
 * above, 20 px high.
 */
export function faceMark(foot: Point, degrees = 0): string {
  return faceStroke(turned(foot, degrees));
}

/** The face mark on any surface that `laid` puts it on. */
export function faceStroke(laid: Laid): string {
  const p = written(laid);
  return `M${p(0, 0)}C${p(-1, -7)} ${p(2, -17)} ${p(6, -19)}C${p(11, -21)} ${p(11, -13)} ${p(5, -11)}C${p(1, -10)} ${p(-4, -10)} ${p(-6, -7)}`;
}

/** The edge mark: a V with its point on the edge or end that measuring starts from, 11 px high. */
export function edgeMark(foot: Point, degrees = 0): string {
  return edgeStroke(turned(foot, degrees));
}

/** The edge mark on any surface that `laid` puts it on. */
export function edgeStroke(laid: Laid): string {
  const p = written(laid);
  return `M${p(-6, -12)}L${p(0, -1)}L${p(6, -12)}`;
}

/** The sign of a caution, an upright triangle 22 px wide with a bar and a dot in it. */
export function cautionSign(center: Point): { readonly plate: string; readonly bar: string } {
  const { x, y } = center;
  return {
    plate: closed([
      { x, y: y - 11 },
      { x: x + 12, y: y + 9 },
      { x: x - 12, y: y + 9 },
    ]),
    bar: `M${x},${y - 4}V${y + 2.5}M${x},${y + 5.4}V${y + 6.4}`,
  };
}
