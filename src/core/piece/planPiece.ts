import type { Mm } from '../length/mm.ts';
import type { JointPlan, JointSpec } from '../joint/types.ts';
import { planJoint } from '../joint/planJoint.ts';
import type { JointLabel, NamedBoard } from '../setup/labels.ts';
import type { ReadSetup } from '../setup/setupLink.ts';
import { type JointNumbers, numberJoints } from './numberJoints.ts';
import { canBeMade } from './orderOfWork.ts';

/** A side of a joint that has a row of holes; the second apron of a leg joint has its own two. */
export type Member = 'a' | 'b' | 'a2' | 'b2';

/** One entry of a piece, planned: one joint, or several alike. */
export interface PlannedJoint {
  readonly spec: JointSpec;
  readonly label: JointLabel;
  readonly plan: JointPlan;
  readonly numbers: JointNumbers;
  /** False where it can't be made: it is in no list then. */
  readonly made: boolean;
  /** What its boards are called: as named, else 'A of joint 3'. */
  readonly boardA: string;
  readonly boardB: string;
}

/** A piece with its joints numbered and planned. */
export interface PlannedPiece {
  readonly title: string;
  readonly joints: readonly PlannedJoint[];
  /** How many there are of each board that has a name, as the user says. */
  readonly boards: readonly NamedBoard[];
}

/** 'joint 3', or 'joints 3 to 6' of several alike. */
export function jointsInWords({ first, last }: JointNumbers): string {
  return first === last ? `joint ${first}` : `joints ${first} to ${last}`;
}

/**
 * What is written on the boards at a joint: '3A', or '3A to 6A' on several alike.
 * @example markOf({ first: 3, last: 6 }, 'b') // '3B to 6B'
 */
export function markOf({ first, last }: JointNumbers, member: Member): string {
  const letter = member.toUpperCase();
  return first === last ? `${first}${letter}` : `${first}${letter} to ${last}${letter}`;
}

/** Sides of a joint that are drilled, in the order of their letters. */
export function membersOf(plan: JointPlan): readonly Member[] {
  return plan.secondRow.length > 0 ? ['a', 'b', 'a2', 'b2'] : ['a', 'b'];
}

/** The places of the holes along one side of a joint, exactly, mm from what it is laid out from. */
export function placesOf(plan: JointPlan, member: Member): readonly Mm[] {
  if (member === 'a2' || member === 'b2') return plan.secondRow;
  return plan.holes.map((hole) => (member === 'b' ? hole.alongB : hole.along));
}

/** Plans every joint of a piece and numbers them from 1, those alike one after the other. */
export function planPiece({ joints, labels, piece }: ReadSetup): PlannedPiece {
  const numbers = numberJoints(labels.map(({ count }) => count));
  return {
    title: piece.title,
    boards: piece.boards,
    joints: joints.map((spec, i): PlannedJoint => {
      const plan = planJoint(spec);
      const label = labels[i]!;
      const words = jointsInWords(numbers[i]!);
      return {
        spec,
        label,
        plan,
        numbers: numbers[i]!,
        made: canBeMade(plan),
        boardA: label.boardA || `A of ${words}`,
        boardB: label.boardB || `B of ${words}`,
      };
    }),
  };
}
