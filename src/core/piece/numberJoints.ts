/** The numbers of joints made alike: `first` to `last`, both of them. */
export interface JointNumbers {
  readonly first: number;
  readonly last: number;
}

/**
 * Numbers the joints of a piece from 1, in their order, those alike one after the other.
 * @param counts joints alike, a whole number from 1 each
 * @example numberJoints([1, 4]) // [{ first: 1, last: 1 }, { first: 2, last: 5 }]
 */
export function numberJoints(counts: readonly number[]): readonly JointNumbers[] {
  let next = 1;
  return counts.map((count) => {
    const first = next;
    next += count;
    return { first, last: next - 1 };
  });
}
