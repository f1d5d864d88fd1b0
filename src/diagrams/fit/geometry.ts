import type { Fit } from '../../core/fit/fit.ts';
import { clipArea, roundWindow } from '../drafting/clip.ts';
import type { Point } from '../drafting/point.ts';

/** What the magnified detail shows of wall, glue and pin: a round window, in mm. */
export const DETAIL_RADIUS = 0.35;
/** How far the window's middle lies inside the wall: the glue is of interest, not the board. */
const INSIDE = 0.1;

/** A hole with its pin in the middle, cut across, in mm from the hole's axis. */
export interface FitShapes {
  readonly holeRadius: number;
  readonly pinRadius: number;
  /** The window of the detail, on the hole's wall. */
  readonly window: { readonly center: Point; readonly radius: number };
  /** What is seen in the window; a part that lies outside it is empty. */
  readonly detail: {
    readonly board: readonly Point[];
    readonly pin: readonly Point[];
    readonly gap: readonly Point[];
    /** Where the pin would have to be inside the board. */
    readonly clash: readonly Point[];
  };
}

/** An arc about the axis as far as a window needs it, from top to bottom. */
function arc(radius: number, reach: number): Point[] {
  const half = Math.min(Math.PI / 2, (1.5 * reach) / radius);
  return Array.from({ length: 25 }, (_, i) => {
    const angle = half * (i / 12 - 1);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
}

/** @param fit of this hole and pin, diameters in mm as they are */
export function fitShapes(hole: number, pin: number, { glueLine }: Fit): FitShapes {
  const [holeRadius, pinRadius] = [hole / 2, pin / 2];
  const center = { x: holeRadius - INSIDE, y: 0 };
  const view = roundWindow(center, DETAIL_RADIUS);
  const wall = arc(holeRadius, DETAIL_RADIUS);
  const skin = arc(pinRadius, DETAIL_RADIUS);
  const far = (x: number) => [
    { x, y: 2 * DETAIL_RADIUS },
    { x, y: -2 * DETAIL_RADIUS },
  ];
  const right = far(center.x + 2 * DETAIL_RADIUS);
  const left = far(center.x - 2 * DETAIL_RADIUS);
  const between = clipArea([...wall, ...skin.toReversed()], view);
  return {
    holeRadius,
    pinRadius,
    window: { center, radius: DETAIL_RADIUS },
    detail: {
      board: clipArea([...wall, ...right], view),
      pin: clipArea([...skin, ...left], view),
      gap: glueLine > 0 ? between : [],
      clash: glueLine < 0 ? between : [],
    },
  };
}
