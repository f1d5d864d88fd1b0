import type { JointPlan } from '../../core/joint/types.ts';
import type { SectionShapes } from './shapes.ts';
import { straightSection } from './straight.ts';

/**
 * The section through a joint at a pin, in mm of the real joint. `apart` runs from 0, pushed
 * home, to 1, pulled off the pin.
 */
export function sectionShapes(plan: JointPlan, apart = 0): SectionShapes {
  return straightSection(plan, apart);
}
