import type { Mm } from '../length/mm.ts';
import { requireAtLeast, requirePositive } from '../trial/require.ts';
import { type Source, sources } from '../working/sources.ts';

const newtonsPerPound = 4.4482216152605;
const poundsPerSquareInchInMegapascal = 145.03773773;

/** Where the formula comes from. */
export const withdrawalSource: Source = sources['pull-of-a-pin'];

export interface WithdrawalInput {
  /** Diameter of the dowel, mm, more than 0. */
  readonly diameter: Mm;
  /** Glued length in the member, mm, more than 0. */
  readonly engagement: Mm;
  /** Shear strength along the grain of the member, MPa, more than 0 (a species' `shear`). */
  readonly memberShear: number;
  /** Shear strength along the grain of the dowel, MPa, more than 0. */
  readonly dowelShear: number;
  /** The grain that the hole goes into. */
  readonly grain: 'side' | 'end';
  /** White glue (PVA) with less than 60 % solids? */
  readonly thinGlue: boolean;
  /** Clearance of the dowel in its hole, mm, 0 or more. */
  readonly clearance: Mm;
  /** Grooved or fluted? */
  readonly grooved: boolean;
}

export interface Withdrawal {
  /** Newtons. */
  readonly force: number;
  /** True where the two shear strengths add up to more than 25 MPa, as the formula asks. */
  readonly inStatedRange: boolean;
}

/**
 * Pull that draws a glued dowel out, in newtons: for comparing one choice with another, never a
 * rating. F = 0.834 D L^0.89 (k S1 + S2) a b c in pounds, inches and psi; k is 0.95 in side
 * grain, a is 0.9 for thin glue, b = 1 − 17.1 δ with δ the clearance (taken as diametral and
 * in inches: the source does not say), c is 0.9 for a grooved dowel. Where the clearance would
 * make b negative, the force is 0. Throws a TypeError or a RangeError that names what is out of
 * range.
 *
 * Source: `withdrawalSource` (second-hand).
 */
export function withdrawal(input: WithdrawalInput): Withdrawal {
  requirePositive('diameter', input.diameter);
  requirePositive('engagement', input.engagement);
  requirePositive('memberShear', input.memberShear);
  requirePositive('dowelShear', input.dowelShear);
  requireAtLeast('clearance', input.clearance, 0);

  const diameter = input.diameter / 25.4;
  const length = input.engagement / 25.4;
  const k = input.grain === 'side' ? 0.95 : 1;
  const shear = (k * input.memberShear + input.dowelShear) * poundsPerSquareInchInMegapascal;
  const a = input.thinGlue ? 0.9 : 1;
  const b = Math.max(0, 1 - (17.1 * input.clearance) / 25.4);
  const c = input.grooved ? 0.9 : 1;
  return {
    force: newtonsPerPound * 0.834 * diameter * length ** 0.89 * shear * a * b * c,
    inStatedRange: input.memberShear + input.dowelShear > 25,
  };
}
