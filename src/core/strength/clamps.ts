import { mm, type Mm } from '../length/mm.ts';
import { requireAtLeast, requireCount, requirePositive } from '../trial/require.ts';
import type { Source } from '../working/sources.ts';

/** Where the rule comes from. */
export const clampsSource: Source = {
  title: 'Pressure spreads at 45° through caul and board: common practice, no source',
  standing: 'common practice',
};

export interface ClampsInput {
  /** Length of the glue line, mm, more than 0. */
  readonly length: Mm;
  /** Thickness of the boards at the joint, mm, more than 0. */
  readonly thickness: Mm;
  /** Width of the narrowest board between a clamp and a glue line, mm, more than 0. */
  readonly boardWidth: Mm;
  /** Depth of the caul between clamp and board, mm; 0 without one. */
  readonly caul: Mm;
  /** Pressure that the glue's label asks for, MPa, more than 0. */
  readonly pressure: number;
  /** The most that one of your clamps is to give, N, by its maker; leave out where unknown. */
  readonly mostPerClamp?: number;
}

export interface Clamps {
  readonly count: number;
  /** From one clamp to the next, mm. */
  readonly spacing: Mm;
  /** From the boards' ends to the first and last clamp, mm. */
  readonly fromEnd: Mm;
  /** Length of glue line that one clamp presses, mm. */
  readonly reach: Mm;
  /** Glue line's area, mm². */
  readonly area: number;
  /** Force on the whole glue line, N. */
  readonly force: number;
  readonly forcePerClamp: number;
  /** What set the number of clamps. */
  readonly rule: 'reach' | 'force' | 'at least two';
}

/**
 * How many clamps an edge joint takes, how far apart, and with what force. A clamp's pressure
 * spreads at 45° to both sides, so at the glue line it reaches twice the depth of caul and board;
 * no gap is left between two reaches, and there are never fewer than two clamps. Force is area
 * times pressure. A guide to setting out, not a rating of any clamp: the glue's label and the
 * clamp's maker come first. Throws a TypeError or a RangeError that names what is out of range.
 *
 * Source: `clampsSource` (common practice); force, geometry.
 * @example clamps({ length: mm(900), thickness: mm(19), boardWidth: mm(90), caul: mm(20), pressure: 1 }).count // 5
 */
export function clamps(input: ClampsInput): Clamps {
  const { length, thickness, boardWidth, caul, pressure, mostPerClamp } = input;
  requirePositive('length', length);
  requirePositive('thickness', thickness);
  requirePositive('boardWidth', boardWidth);
  requireAtLeast('caul', caul, 0);
  requirePositive('pressure', pressure);
  if (mostPerClamp !== undefined) requirePositive('mostPerClamp', mostPerClamp);

  const reach = mm(2 * (caul + boardWidth));
  const area = length * thickness;
  const force = area * pressure;
  const byReach = Math.ceil(length / reach - 1e-9);
  const byForce = mostPerClamp === undefined ? 0 : Math.ceil(force / mostPerClamp - 1e-9);
  const count = Math.max(2, byReach, byForce);
  const spacing = mm(length / count);
  return {
    count,
    spacing,
    fromEnd: mm(spacing / 2),
    reach,
    area,
    force,
    forcePerClamp: force / count,
    rule: count === byReach ? 'reach' : count === byForce ? 'force' : 'at least two',
  };
}

/** A number of clamps that someone chose, however many the rule asks for. */
export interface SpreadClamps {
  /** From one clamp to the next, and from the boards' ends to the first and last, mm. */
  readonly spacing: Mm;
  readonly fromEnd: Mm;
  readonly forcePerClamp: number;
  /** Glue line between two clamps that none of them presses, mm; at each end it is half of that. */
  readonly gap: Mm;
}

/**
 * A glue line of a length (mm) with a number of clamps spread evenly over it, against what
 * `clamps` found for it. Throws a TypeError or a RangeError that names what is out of range.
 *
 * Source: `clampsSource` (common practice); force, geometry.
 */
export function spreadClamps(found: Clamps, length: Mm, count: number): SpreadClamps {
  requirePositive('length', length);
  requireCount('count', count, 1);
  const spacing = mm(length / count);
  return {
    spacing,
    fromEnd: mm(spacing / 2),
    forcePerClamp: found.force / count,
    gap: mm(Math.max(0, spacing - found.reach)),
  };
}
