import type { WorkingUnit } from '../../core/working/types.ts';
import { evaluate } from '../../core/working/expression.ts';
import { type FormulaNumbers, readFormula, unitOf } from '../questions/formula.ts';
import type { Numbers } from '../questions/numbers.ts';
import type { DraftMistake } from './template.ts';

/** What a formula of a draft comes to. */
export interface Value {
  readonly value: number;
  readonly unit: WorkingUnit;
}

/** @throws FormulaError for a number that there is not */
export function valueOf(formula: string, about: FormulaNumbers): Value {
  const read = readFormula(formula, about);
  return { value: evaluate(read), unit: unitOf(read) };
}

/** The lengths that the mistakes of a draft lead to, in mm. */
export function mistaken(numbers: Numbers, mistakes: readonly DraftMistake[]): readonly number[] {
  return mistakes.map(({ of, changed }) => valueOf(of, { numbers, changed }).value);
}
