import { planJoint } from '../../core/joint/planJoint.ts';
import type { JointSpec } from '../../core/joint/types.ts';
import type { Mm } from '../../core/length/mm.ts';
import { type BenchSetup, type MemberSetup, soundSetup } from '../../core/trial/drill.ts';

/** What was set otherwise on one board than its plan asks; what is left out is as planned. */
export interface DrawnMember {
  /** From the collar to the full-diameter corner of the bit. */
  readonly collar?: Mm;
  /** Where the holes were marked, from the end that the rule was hooked on. */
  readonly marks?: readonly Mm[];
  /** The rule was hooked on the board's other end. */
  readonly end?: 'other';
}

/** A joint that was planned and then set up, with or without mistakes: short enough to travel with a question. */
export interface DrawnSetup {
  readonly spec: JointSpec;
  readonly a?: DrawnMember;
  readonly b?: DrawnMember;
}

function changed(member: MemberSetup, { collar, marks, end }: DrawnMember = {}): MemberSetup {
  return {
    ...member,
    ...(collar !== undefined && { stop: { collar } }),
    ...(marks && { marks }),
    ...(end && { end }),
  };
}

/**
 * The whole setup at the bench, to be drilled and drawn.
 * @throws SpecError or TypeError where the joint has nothing to drill
 * @example dryFit(drill(benchSetup(question.drawing.setup)))
 */
export function benchSetup({ spec, a, b }: DrawnSetup): BenchSetup {
  const sound = soundSetup(planJoint(spec));
  return { ...sound, a: changed(sound.a, a), b: changed(sound.b, b) };
}
