import type { JointPlan } from '../../core/joint/types.ts';
import { legSection } from './leg.ts';
import { miterSection } from './miter.ts';
import type { SectionShapes } from './shapes.ts';
import { straightSection } from './straight.ts';

/**
 * The section through a joint at a pin, in mm of the real joint. `apart` runs from 0, pushed
 * home, to 1, pulled off the pin.
 */
export function sectionShapes(plan: JointPlan, apart = 0): SectionShapes {
  if (plan.kind === 'miter') return miterSection(plan, apart);
  if (plan.kind === 'leg') return legSection(plan, apart);
  return straightSection(plan, apart);
}
