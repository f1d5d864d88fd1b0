import { type Mm, TOLERANCE, mm } from '../length/mm.ts';
import { difference, quantity, sum } from '../working/expression.ts';
import { reckon, taken } from '../working/reckon.ts';
import type { WorkingStep } from '../working/types.ts';

/** What is under the far face of a board that is drilled. */
export type Behind = 'waste' | 'bench' | 'hand';

/** A board being drilled in its face through a guide, mm. */
export interface Drilling {
  /** Length of the bushing, and the gap under it. */
  readonly bushing: Mm;
  readonly standoff: Mm;
  /** From the collar to the full-diameter corner of the bit, as it was set. */
  readonly stop: Mm;
  /** How far the collar has slipped up the bit since; 0 or more. */
  readonly slip: Mm;
  /** How far the bit's point goes beyond its full diameter. */
  readonly tip: Mm;
  readonly thickness: Mm;
  readonly behind: Behind;
  /** Thickness of the waste board, where there is one. */
  readonly waste: Mm;
}

/** Where the point of a bit ends, mm. */
export interface PointEnd {
  /** Depth of the hole at full diameter; 0 where the bit doesn't reach the wood. */
  readonly depth: Mm;
  /** From the board's face to the very point. */
  readonly reach: Mm;
  /** Wood between the point and the far face; negative where the point is through. */
  readonly woodLeft: Mm;
  /** How far the point is beyond the far face; 0 where it is not through. */
  readonly beyond: Mm;
  /** What the point is in. */
  readonly ends: 'board' | Behind;
  readonly working: readonly WorkingStep[];
}

/**
 * Where the point of the bit ends when the collar meets the guide.
 * @throws RangeError for a length below zero
 * @example pointBehind({ bushing: inches(1), standoff: mm(0), stop: inches(1.5), slip: mm(0),
 *   tip: mm(3), thickness: inches(3 / 4), behind: 'waste', waste: inches(3 / 4) }).woodLeft // 3.35
 */
export function pointBehind(drilling: Drilling): PointEnd {
  const { bushing, standoff, stop, slip, tip, thickness, behind, waste } = drilling;
  for (const [name, length] of Object.entries({
    bushing,
    standoff,
    stop,
    slip,
    tip,
    thickness,
    waste,
  })) {
    if (!(length >= 0))
      throw new RangeError(`pointBehind: ${name} must be 0 or more, got ${length}`);
  }
  const step = (id: string, label: string, symbol: string, formula: WorkingStep['formula']) =>
    reckon({ id, label, symbol, formula, source: 'geometry' });
  const depth = step(
    'depth',
    'Depth of the hole, at full diameter',
    'h',
    difference(
      sum(quantity('stop', stop), quantity('slip', slip)),
      quantity('bushing', bushing),
      quantity('gap', standoff),
    ),
  );
  const reach = step(
    'reach',
    "From the face to the bit's point",
    'reach',
    sum(taken(depth), quantity('tip', tip)),
  );
  const woodLeft = step(
    'woodLeft',
    "Wood left beyond the bit's point",
    'w',
    difference(quantity('t', thickness), taken(reach)),
  );
  const beyond = Math.max(0, -woodLeft.result);
  const through = beyond > TOLERANCE;
  const ends = !through
    ? 'board'
    : behind === 'waste' && beyond > waste + TOLERANCE
      ? 'bench'
      : behind;
  return {
    depth: mm(Math.max(0, depth.result)),
    reach: mm(Math.max(0, reach.result)),
    woodLeft: mm(woodLeft.result),
    beyond: mm(through ? beyond : 0),
    ends,
    working: [depth, reach, woodLeft],
  };
}
