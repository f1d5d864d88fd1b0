import { reckon } from '../../core/working/reckon.ts';
import type { WorkingStep } from '../../core/working/types.ts';
import { type FormulaNumbers, readFormula, unitOf } from './formula.ts';
import { stepsTo } from './showStep.ts';

/**
 * The steps that lead to a formula's value, the last of them the formula itself: a number of the
 * working by its name, or one that is made of such numbers.
 * @throws FormulaError
 */
export function workingOf(text: string, about: FormulaNumbers): readonly WorkingStep[] {
  const formula = readFormula(text, about);
  const own = about.numbers.working.find(({ id }) => id === text);
  const last =
    own ??
    reckon({
      ...{ id: 'answer', label: 'The answer', symbol: 'answer' },
      ...{ formula, unit: unitOf(formula), source: 'geometry' },
    });
  return stepsTo(last, about.numbers);
}
