import { planJoint } from '../../core/joint/planJoint.ts';
import { calculations } from './calculations/index.ts';
import { type Numbers, numbersOfPlan } from './numbers.ts';
import { type Setup, isJoint } from './setupKinds.ts';

/**
 * The numbers of a setup, worked out.
 * @throws TypeError, RangeError or SpecError for values that make no sense
 */
export function numbersOf(setup: Setup): Numbers {
  if (isJoint(setup)) return numbersOfPlan(planJoint(setup));
  const found = calculations.get(setup.calculation)!.find(setup.values);
  return { system: setup.system, ...found };
}
