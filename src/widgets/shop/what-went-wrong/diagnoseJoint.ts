import { planJoint } from '../../../core/joint/planJoint.ts';
import type { JointSpec } from '../../../core/joint/types.ts';
import type { Readings } from '../../../core/tools/readings.ts';
import { type Diagnosis, diagnose } from '../../../core/trial/diagnose.ts';
import { soundSetup } from '../../../core/trial/drill.ts';
import type { Signs } from '../../../core/trial/signs.ts';

/** A joint as it was planned, and what its dry fit shows. */
export interface SeenJoint {
  readonly spec: JointSpec;
  readonly signs: Signs;
  /** Readings of its pins, where they were measured. */
  readonly pins: Readings | null;
}

/** The causes that fit, the likeliest first. Throws a TypeError for a joint with nothing to drill. */
export function diagnoseJoint({ spec, signs, pins }: SeenJoint): readonly Diagnosis[] {
  return diagnose(soundSetup(planJoint(spec)), signs, pins ?? undefined);
}
