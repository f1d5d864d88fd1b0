import type { System } from '../../core/joint/types.ts';
import { type Expression, quantity } from '../../core/working/expression.ts';
import { reckon } from '../../core/working/reckon.ts';
import type { WorkingStep } from '../../core/working/types.ts';
import { type NamedNumber, type Numbers, named } from '../questions/numbers.ts';

/** Numbers that were drawn, and steps that were reckoned from them. */
export function numbersFrom(
  system: System,
  given: readonly NamedNumber[],
  working: readonly WorkingStep[] = [],
): Numbers {
  return { system, ...named(given, working), errors: [] };
}

/** The same numbers, and some more to be named in formulas and texts. */
export function withMore(numbers: Numbers, more: readonly NamedNumber[]): Numbers {
  return {
    ...numbers,
    quantities: new Map([
      ...numbers.quantities,
      ...more.map(([name, ...number]) => [name, quantity(...number)] as const),
    ]),
  };
}

/** The same numbers, and a step that is reckoned from them. */
export function withStep(numbers: Numbers, step: WorkingStep): Numbers {
  const { id, symbol, result, unit } = step;
  const more = withMore(numbers, [[id, symbol, result, unit]]);
  return { ...more, working: [...more.working, step] };
}

/** The same numbers, refused: a draft with them is passed over. */
export function passedOver(numbers: Numbers, reason: string): Numbers {
  return { ...numbers, errors: [...numbers.errors, reason] };
}

/** A step of plain geometry. */
export function geometry(
  id: string,
  label: string,
  symbol: string,
  formula: Expression,
  unit: WorkingStep['unit'] = 'length',
): WorkingStep {
  return reckon({ id, label, symbol, formula, unit, source: 'geometry' });
}
