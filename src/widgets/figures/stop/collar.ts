import type { JointPlan } from '../../../core/joint/types.ts';
import { type Mm, mm } from '../../../core/length/mm.ts';
import { type DryFit, dryFit } from '../../../core/trial/dryFit.ts';
import { drill, soundSetup } from '../../../core/trial/drill.ts';
import type { Trial } from '../../../core/trial/trial.ts';

/**
 * How the collar was set: to the corner of the full diameter, as it should be; to the very point;
 * without the bushing or the gap; or left where the other board wanted it.
 */
export type HowSet = 'corner' | 'point' | 'no-bushing' | 'no-gap' | 'other-board';

export type Side = 'a' | 'b';

/** Where the collar stands, from its face to the corner of the full diameter, mm; at least 0. */
export function collarOf(plan: JointPlan, side: Side, how: HowSet): Mm {
  const { guide, bit } = plan.spec;
  const { stop } = plan[side];
  const set: Record<HowSet, number> = {
    corner: stop,
    point: stop - bit.tip,
    'no-bushing': stop - guide.bushing,
    'no-gap': stop - guide.standoff,
    'other-board': plan[side === 'a' ? 'b' : 'a'].stop,
  };
  return mm(Math.max(0, set[how]));
}

/** A joint of which one board was drilled with the collar as it was set, and what became of it. */
export interface Drilled {
  readonly trial: Trial;
  readonly outcome: DryFit;
}

/** Drills the joint with that collar in one board, and pushes it together dry; null where no pin fits. */
export function drillWith(plan: JointPlan, side: Side, collar: Mm): Drilled | null {
  if (!plan.ok) return null;
  const sound = soundSetup(plan);
  const trial = drill({ ...sound, [side]: { ...sound[side], stop: { collar } } });
  return { trial, outcome: dryFit(trial) };
}
