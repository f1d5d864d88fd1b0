import { type Mm, mm } from '../length/mm.ts';
import { requireAtLeast, requireCount, requirePositive } from '../trial/require.ts';

/** A drop from a glue bottle's nozzle, mm³: from memory. Count yours into a spoon. */
export const dropOfGlue = 50;

/**
 * Depth of a flute, mm, from its cross-section in mm²: a groove twice as wide as it is deep. The
 * shape is from memory; pressed and milled flutes differ.
 */
export function fluteDepth(area: number): Mm {
  requireAtLeast('area', area, 0);
  return mm(Math.sqrt(area));
}

export interface GlueRoomInput {
  /** Diameter of the hole, mm, more than 0. */
  readonly hole: Mm;
  /** Diameter of the pin as it is, mm, more than 0. */
  readonly pin: Mm;
  /** Length of pin in this hole, mm, 0 or more. */
  readonly engagement: Mm;
  /** Free depth past the pin's end, mm, 0 or more. */
  readonly allowance: Mm;
  /** Length of the cone that a twist bit leaves at the bottom, mm; 0 for any other point. */
  readonly cone: Mm;
  /** Number of flutes; 0 for a plain pin. */
  readonly flutes: number;
  /** Cross-section of one flute, mm². */
  readonly fluteArea: number;
  /** Glue put into this hole, mm³, 0 or more. */
  readonly glue: number;
}

/** Room for glue in one hole, mm³, by where it is. */
export interface GlueRoom {
  readonly around: number;
  readonly inFlutes: number;
  readonly atEnd: number;
  readonly inCone: number;
  readonly total: number;
  /** Glue beyond the room, mm³; 0 where it all has a place. */
  readonly over: number;
  /**
   * `room`: it fits. `squeezes out`: more than fits, and the flutes let it rise. `trapped`: more
   * than fits around a plain pin, with nowhere to send it: the pin stops or the wood splits.
   */
  readonly verdict: 'room' | 'squeezes out' | 'trapped';
  /**
   * How far the trapped glue keeps the pin from its place, mm: glue can't be pressed smaller, so
   * the pin stands off by what is over, on its own cross-section. At most the engagement; 0 where
   * nothing is trapped.
   */
  readonly standsOff: Mm;
}

/**
 * Room for glue in one hole against the glue put in, in mm³: around the pin, in its flutes, past
 * its end and in the cone of a twist bit. A pin larger than its hole has no room around it.
 * Throws a TypeError or a RangeError that names what is out of range.
 *
 * Source: geometry.
 */
export function glueRoom(input: GlueRoomInput): GlueRoom {
  const { hole, pin, engagement, allowance, cone, flutes, fluteArea, glue } = input;
  requirePositive('hole', hole);
  requirePositive('pin', pin);
  requireAtLeast('engagement', engagement, 0);
  requireAtLeast('allowance', allowance, 0);
  requireAtLeast('cone', cone, 0);
  requireCount('flutes', flutes, 0);
  requireAtLeast('fluteArea', fluteArea, 0);
  requireAtLeast('glue', glue, 0);

  const holeArea = (Math.PI / 4) * hole ** 2;
  const around = (Math.PI / 4) * Math.max(0, hole ** 2 - pin ** 2) * engagement;
  const inFlutes = flutes * fluteArea * engagement;
  const atEnd = holeArea * allowance;
  const inCone = (holeArea / 3) * cone;
  const total = around + inFlutes + atEnd + inCone;
  const over = Math.max(0, glue - total);
  const verdict = over === 0 ? 'room' : flutes > 0 ? 'squeezes out' : 'trapped';
  const pinArea = (Math.PI / 4) * Math.min(pin, hole) ** 2;
  const standsOff = mm(verdict === 'trapped' ? Math.min(engagement, over / pinArea) : 0);
  return { around, inFlutes, atEnd, inCone, total, over, verdict, standsOff };
}
