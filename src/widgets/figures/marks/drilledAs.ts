import { planJoint } from '../../../core/joint/planJoint.ts';
import type { JointPlan, JointSpec } from '../../../core/joint/types.ts';
import { type Mm, mm } from '../../../core/length/mm.ts';
import { type BenchSetup, type MemberSetup, drill, soundSetup } from '../../../core/trial/drill.ts';
import { type DryFit, dryFit } from '../../../core/trial/dryFit.ts';
import type { Trial } from '../../../core/trial/trial.ts';

/** Which face the guide lay against, and which end the rule was hooked on. */
export type Held = Pick<MemberSetup, 'face' | 'end'>;

/** How a pair of boards was drilled. Lengths in mm. */
export interface Drilling {
  readonly a: Held;
  readonly b: Held;
  /** How far the guide drills off the middle of a board, away from the face that it lies against. */
  readonly guideOff: Mm;
  /** How much longer B is than A. */
  readonly longer: Mm;
}

/** A pair as it was drilled, and what became of it. */
export interface DrilledAs {
  readonly plan: JointPlan;
  readonly setup: BenchSetup;
  readonly trial: Trial;
  readonly outcome: DryFit;
}

/** Drills an edge joint in boards of one thickness and pushes it together dry. */
export function drilledAs(spec: JointSpec, { a, b, guideOff, longer }: Drilling): DrilledAs {
  const plan = planJoint({ ...spec, b: { ...spec.b, length: mm(spec.a.length + longer) } });
  const sound = soundSetup(plan);
  const setup: BenchSetup = {
    ...sound,
    guide: { ...sound.guide, offset: guideOff },
    a: { ...sound.a, ...a },
    b: { ...sound.b, ...b },
  };
  const trial = drill(setup);
  return { plan, setup, trial, outcome: dryFit(trial) };
}
