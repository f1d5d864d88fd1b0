import type { JointPlan } from '../../core/joint/types.ts';
import { legPictorial } from './leg.ts';
import { miterPictorial } from './miter.ts';
import type { PictorialShapes } from './shapes.ts';
import { straightPictorial } from './straight.ts';

/**
 * A joint in space, in mm of the real joint, its boards pulled apart along the pins.
 * @param apart from 0, pushed home, to 1, pulled off the pins
 */
export function pictorialShapes(plan: JointPlan, apart = 1): PictorialShapes {
  if (plan.kind === 'miter') return miterPictorial(plan, apart);
  if (plan.kind === 'leg') return legPictorial(plan, apart);
  return straightPictorial(plan, apart);
}
