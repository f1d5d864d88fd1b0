import { type Mm, mm } from '../length/mm.ts';
import { requireAtLeast, requireNumber } from '../trial/require.ts';
import { dimensionalChange } from './dimensionalChange.ts';

/** Moisture of wood indoors through a year, from a heated winter to a damp summer, in percent. From memory. */
export const SEASON = { dry: 6, damp: 12 } as const;

export interface RowMovementInput {
  /** From the first pin of the row to the last, across the grain, mm, 0 or more. */
  readonly span: Mm;
  /** Change per 1 % of moisture; where both boards move, the difference of the two. 0 or more. */
  readonly coefficient: number;
  /** Hole less pin, across both sides, in each of the two holes of a pin, mm; under 0 is tight. */
  readonly clearance: Mm;
  /** Moisture at the dry end of the year and at the damp one, in percent. */
  readonly dry: number;
  readonly damp: number;
}

/** A row of pins across the grain, over a year. */
export interface RowMovement {
  /** How much the wood between the outer pins changes, mm, 0 or more. */
  readonly change: Mm;
  /** How far the outer pins can be moved from or toward each other in their holes, mm. */
  readonly play: Mm;
  /** The widest span that moves no more than the play, mm; Infinity where nothing moves. */
  readonly widest: Mm;
}

/**
 * How far the wood between a row's outer pins moves in a year, against the play that they have.
 * Each pin has play in both its holes, so a row with the clearance c in each gives 2 c over its
 * two outer pins; a tight hole gives none. Throws a TypeError or a RangeError that names what is
 * out of range.
 *
 * Source: Wood Handbook, FPL-GTR-190, Eq. 13-2 (read), applied to the span; the play, geometry.
 * @example rowMovement({ span: mm(100), coefficient: 0.00369, clearance: mm(0.1), dry: 6, damp: 12 }).change // 2.214
 */
export function rowMovement(input: RowMovementInput): RowMovement {
  const { span, coefficient, clearance, dry, damp } = input;
  requireAtLeast('span', span, 0);
  requireNumber('clearance', clearance);
  requireAtLeast('dry', dry, 0);
  requireAtLeast('damp', damp, dry);
  const per = dimensionalChange({
    size: mm(1),
    coefficient,
    fromMoisture: dry,
    toMoisture: damp,
  });
  const play = mm(2 * Math.max(0, clearance));
  return { change: mm(span * per), play, widest: mm(per === 0 ? Infinity : play / per) };
}
