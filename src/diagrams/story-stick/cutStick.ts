/** A stretch of a story stick, from and to in mm from its reference end. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A cut keeps this far from a mark, in mm, where the marks leave room for it. */
export const CLEAR = 6;

/** The last place for a cut in (from, most] that keeps clear of the marks, or the clearest. */
function cutAt(from: number, most: number, marks: readonly number[]): number {
  const clearOf = (at: number) => Math.min(...marks.map((mark) => Math.abs(mark - at)));
  const middles = marks.slice(1).map((mark, i) => (mark + marks[i]!) / 2);
  const places = [most, ...marks.map((mark) => mark - CLEAR), ...middles]
    .filter((at) => at > from && at <= most)
    .sort((one, other) => other - one);
  const clear = places.find((at) => clearOf(at) >= CLEAR - 1e-9);
  if (clear !== undefined) return clear;
  return places.reduce((best, at) => (clearOf(at) > clearOf(best) ? at : best));
}

/**
 * Cuts a story stick into stretches that fit on paper, none through a mark.
 *
 * @param length of the stick, mm, more than 0
 * @param marks places of the pins, mm, rising
 * @param first most that the first stretch may be long, mm, more than 0
 * @param next the same of every other one, which has a tab to be joined by
 */
export function cutStick(
  length: number,
  marks: readonly number[],
  first: number,
  next: number,
): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let from = 0;
  while (length - from > (from === 0 ? first : next) + 1e-6) {
    const to = cutAt(from, from + (from === 0 ? first : next), marks);
    stretches.push({ from, to });
    from = to;
  }
  return [...stretches, { from, to: length }];
}
