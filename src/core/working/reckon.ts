import { type Expression, evaluate, quantity } from './expression.ts';
import type { WorkingStep } from './types.ts';

/** Works a formula out and keeps it with its result: the only way a plan gets a number. */
export function reckon(
  step: Omit<WorkingStep, 'result' | 'unit'> & Partial<Pick<WorkingStep, 'unit'>>,
): WorkingStep {
  return { ...step, unit: step.unit ?? 'length', result: evaluate(step.formula) };
}

/** A number already reckoned, as a quantity in the next formula. */
export function taken(step: WorkingStep): Expression {
  return quantity(step.symbol, step.result, step.unit);
}
