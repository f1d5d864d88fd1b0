import { ingredients } from '../../core/working/ancestry.ts';
import { stepMathML } from '../../core/working/mathml.ts';
import { sources } from '../../core/working/sources.ts';
import type { WorkingStep } from '../../core/working/types.ts';
import type { Numbers } from './numbers.ts';
import type { ShownStep } from './types.ts';

/** A step of a working as it is shown, in both units. */
export function showStep(step: WorkingStep): ShownStep {
  const { title, standing } = sources[step.source];
  return {
    label: step.label,
    lines: { in: stepMathML(step, 'in'), mm: stepMathML(step, 'mm') },
    ...(step.rule && { rule: `${step.rule[0]?.toUpperCase()}${step.rule.slice(1)}.` }),
    // 'From memory, not looked up' says its standing by itself.
    source: title.toLowerCase().startsWith(standing) ? title : `${title} (${standing})`,
  };
}

/** True where a step only states a setting, which the next step's numbers show anyway. */
function statesSetting(step: WorkingStep): boolean {
  return step.formula.op === 'constant' || step.formula.op === 'quantity';
}

/**
 * The steps that lead to `last`, in the order of reckoning and `last` itself at the end; what
 * only states a setting is left out.
 * @param last one of these steps, or one that is made of their numbers
 */
export function stepsTo(
  last: WorkingStep,
  { working: own }: Pick<Numbers, 'working'>,
): readonly WorkingStep[] {
  const working = own.includes(last) ? own : [...own, last];
  const needed = new Set<WorkingStep>();
  const add = (step: WorkingStep) => {
    needed.add(step);
    for (const part of ingredients(step, working)) if ('step' in part) add(part.step);
  };
  add(last);
  return working.filter((step) => needed.has(step) && (step === last || !statesSetting(step)));
}
