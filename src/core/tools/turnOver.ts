import { type Mm, mm } from '../length/mm.ts';
import { requireAtLeast } from '../trial/require.ts';

/** Of the two holes of a turn-over test, the one that lies farther from the reference face. */
export type Farther = 'first' | 'second';

/**
 * How far a guide's hole lies off the middle of a board, by the turn-over test: two holes are
 * drilled side by side in the edge of one board, the first with the guide on the reference face,
 * the second with the board turned over and the guide on the other face. Each lies off the middle
 * by the offset, on opposite sides of it, so the offset is half the distance between them.
 *
 * Signed as `Guide.offset` is: positive is away from the face that the guide is on.
 *
 * @param apart from the middle of one hole to the middle of the other, across the board's
 *   thickness, mm, 0 or more; the same from rim to rim, which is easier to measure
 * @param farther the hole farther from the reference face
 * @throws TypeError or RangeError where `apart` is not 0 or more
 *
 * Source: geometry.
 * @example turnOverOffset(mm(1), 'first') // 0.5: away from the face that the guide is on
 */
export function turnOverOffset(apart: Mm, farther: Farther): Mm {
  requireAtLeast('apart', apart, 0);
  if (apart === 0) return mm(0);
  return mm((farther === 'first' ? 1 : -1) * (apart / 2));
}
