import type { JointPlan } from '../../core/joint/types.ts';
import type { Bore, Corner, Dowel, Grain, Member } from './shapes.ts';
import { type Place, moved } from './space.ts';

/** Free air at a pin's end in B when the boards are apart, in mm. */
const CLEAR = 14;

/** How far the boards, and the pins, are from where they belong; along the pins, in mm. */
export interface Moves {
  /** From one mating face to the other. */
  readonly gap: number;
  /** From A's mating face to the pin's end in A; negative while the pin is in it. */
  readonly start: number;
}

/** @param apart from 0, pushed home, to 1, pulled off the pins */
export function movesOf(plan: JointPlan, apart: number): Moves {
  const length = plan.pin?.length ?? 0;
  // A stands before its own mating face: the pin has to come out from behind its thickness.
  const clearOfA =
    CLEAR * 0.6 +
    ((plan.pin?.diameter ?? 0) + plan.spec.a.thickness) * (plan.kind === 'miter' ? 0.7 : 0.5);
  return {
    gap: apart * (clearOfA + length + CLEAR),
    start: apart * clearOfA - (1 - apart) * plan.a.engagement,
  };
}

/** Where a board ends in a drawing, and whether that is its real end. */
export interface Extent {
  readonly at: number;
  readonly whole: boolean;
}

/** As much of a board as a drawing needs: all of it where that is little more. */
export function shown(needed: number, own: number): Extent {
  return own <= needed * 1.25 ? { at: own, whole: true } : { at: needed, whole: false };
}

/** From the joint to the point of the bit, mm. */
export function reachOf(plan: JointPlan, member: 'a' | 'b'): number {
  return plan[member].holeDepth + plan.spec.bit.tip;
}

/** How much of a board to show: its hole, and wood behind it for its letter and its marks; mm. */
export function behind(plan: JointPlan, member: 'a' | 'b'): number {
  return reachOf(plan, member) + Math.max(22, plan.spec[member].thickness);
}

/** Corners of an upright box from above: side 0 looks to −y, 1 to +x, 2 to +y, 3 to −x. */
export function box(left: number, right: number, near: number, far: number): readonly Corner[] {
  return [
    { x: left, y: near },
    { x: right, y: near },
    { x: right, y: far },
    { x: left, y: far },
  ];
}

/** The sides of a `box`. */
export const NEAR = 0;
export const RIGHT = 1;
export const FAR = 2;
export const LEFT = 3;

/** Sides whose end is not the board's own. */
export function brokenSides(sides: readonly (readonly [number, boolean])[]): readonly number[] {
  return sides.flatMap(([side, whole]) => (whole ? [] : [side]));
}

/**
 * Grain of a board sawn through and through: the pith lies well below its middle, so that the
 * rings rise toward the edges.
 * @param middle of the board, on its lower face; @param down unit vector away from the board
 */
export function flatSawn(
  along: Place,
  middle: Place,
  down: Place,
  width: number,
  thickness: number,
): Grain {
  return {
    along,
    pith: moved(middle, down, Math.max(thickness, width * 0.45)),
    ring: Math.max(2, thickness / 4),
  };
}

export function boreAt(
  plan: JointPlan,
  member: Member,
  pin: number,
  mouth: Place,
  into: Place,
): Bore {
  return {
    member,
    pin,
    mouth,
    into,
    radius: plan.spec.bit.diameter / 2,
    depth: plan[member === 'b' ? 'b' : 'a'].holeDepth,
  };
}

/**
 * A pin on its way from the mouth of its hole in A to that in B.
 * @param from A's mouth; @param toward unit vector from it to B
 */
export function dowelAt(plan: JointPlan, moves: Moves, from: Place, toward: Place): Dowel[] {
  const { pin } = plan;
  if (pin === null || pin.diameter <= 0 || pin.length <= 0) return [];
  return [
    {
      from: moved(from, toward, moves.start),
      to: moved(from, toward, moves.start + pin.length),
      radius: pin.diameter / 2,
      ease: Math.min(pin.diameter / 8, pin.length / 6),
      seen: Math.min(pin.length, moves.gap - moves.start),
    },
  ];
}
