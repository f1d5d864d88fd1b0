import type { Mm } from '../length/mm.ts';
import { requireAtLeast, requirePositive } from '../trial/require.ts';
import { type Source, sources } from '../working/sources.ts';

/** Where the formula comes from: nobody looked it up. */
export const frameMomentSource: Source = sources['two-pin-frame'];

/**
 * Bending moment, in newton-meters, at which a two-dowel frame joint gives way: the withdrawal
 * force (N) of the dowel in tension, F, at its lever arm, M = F (d1 + d2/2), with d1 the dowels'
 * spacing and d2 from the other dowel to the rail's edge (mm). For comparing, never a rating.
 * Throws a TypeError or a RangeError that names what is out of range.
 *
 * Source: `frameMomentSource` (from memory).
 * @example frameMoment({ withdrawal: 3000, spacing: mm(40), edgeDistance: mm(15) }) // 142.5
 */
export function frameMoment({
  withdrawal,
  spacing,
  edgeDistance,
}: {
  readonly withdrawal: number;
  readonly spacing: Mm;
  readonly edgeDistance: Mm;
}): number {
  requireAtLeast('withdrawal', withdrawal, 0);
  requirePositive('spacing', spacing);
  requireAtLeast('edgeDistance', edgeDistance, 0);
  return (withdrawal * (spacing + edgeDistance / 2)) / 1000;
}
