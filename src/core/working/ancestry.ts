import type { Expression } from './expression.ts';
import type { WorkingStep } from './types.ts';

/** A quantity in a formula: reckoned by a step of its own, or given by the user. */
export type Ingredient =
  { readonly step: WorkingStep } | { readonly given: Extract<Expression, { op: 'quantity' }> };

function quantitiesOf(formula: Expression): readonly Extract<Expression, { op: 'quantity' }>[] {
  if (formula.op === 'quantity') return [formula];
  if (formula.op === 'constant') return [];
  return formula.of.flatMap(quantitiesOf);
}

/**
 * What a step's formula is made of, each quantity once, in the order of the formula.
 * @param working all steps of the plan, in the order of reckoning
 */
export function ingredients(
  step: WorkingStep,
  working: readonly WorkingStep[],
): readonly Ingredient[] {
  const before = working.slice(0, working.indexOf(step));
  const seen = new Set<string>();
  return quantitiesOf(step.formula).flatMap((each): Ingredient[] => {
    if (seen.has(each.symbol)) return [];
    seen.add(each.symbol);
    const made = before.findLast(
      ({ symbol, result }) => symbol === each.symbol && result === each.value,
    );
    return made ? [{ step: made }] : [{ given: each }];
  });
}
