import { type Mm, TOLERANCE, mm } from '../length/mm.ts';

/** How a joint that does not close stands open when it is pressed in the middle. Lengths in mm. */
export interface Opening {
  readonly start: Mm;
  readonly end: Mm;
  /** True where it balances on one pin in the very middle and can be rocked over it. */
  readonly rocks: boolean;
}

/**
 * Rests a board on the pins that are too long for their holes: a straight line over them all and
 * over the other board's two ends, as low in the middle of the joint as it goes.
 *
 * @param pins where each stands along the joint and by how much it is too long (0 or less: not), mm
 * @param length of the joint, mm
 */
export function restOn(
  pins: readonly { readonly along: Mm; readonly over: Mm }[],
  length: Mm,
): Opening {
  const props = [
    { along: mm(0), over: mm(0) },
    ...pins.filter(({ over }) => over > TOLERANCE),
    { along: length, over: mm(0) },
  ];
  if (props.length === 2) return { start: mm(0), end: mm(0), rocks: false };
  const middle = length / 2;
  const left = props.filter(({ along }) => along < middle - TOLERANCE);
  const right = props.filter(({ along }) => along > middle + TOLERANCE);
  let [highest, start, end] = [-Infinity, 0, 0];
  for (const one of left) {
    for (const other of right) {
      const slope = (other.over - one.over) / (other.along - one.along);
      const atStart = one.over - slope * one.along;
      const here = atStart + slope * middle;
      if (here > highest) [highest, start, end] = [here, atStart, atStart + slope * length];
    }
  }
  const balance = Math.max(
    ...props.filter(({ along }) => Math.abs(along - middle) <= TOLERANCE).map(({ over }) => over),
  );
  if (balance > highest + TOLERANCE) return { start: mm(balance), end: mm(balance), rocks: true };
  return { start: mm(Math.max(0, start)), end: mm(Math.max(0, end)), rocks: false };
}
