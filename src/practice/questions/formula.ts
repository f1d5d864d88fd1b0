import {
  type Expression,
  difference,
  product,
  quotient,
  sum,
} from '../../core/working/expression.ts';
import type { WorkingUnit } from '../../core/working/types.ts';
import type { Numbers } from './numbers.ts';

/** A formula of content that can't be read; the message says why and what there is. */
export class FormulaError extends Error {
  override readonly name = 'FormulaError';
}

/** What a formula may name the numbers of. */
export interface FormulaNumbers {
  readonly numbers: Numbers;
  /** The same with something changed; its numbers are `changed.b.engagement` and so on. */
  readonly changed?: Numbers | undefined;
}

const TERM = /^(?:(?<times>\d+)\s*\*\s*)?(?<name>[a-zA-Z][\w.]*)(?:\s*\/\s*(?<over>\d+))?$/;

function readTerm(text: string, { numbers, changed }: FormulaNumbers): Expression {
  const groups = TERM.exec(text.trim())?.groups;
  const name = groups?.['name'];
  if (!groups || name === undefined) {
    throw new FormulaError(
      `'${text.trim()}' is not a number of this setup; write such as 'b.engagement', '2 * allowance' or 'pin.length / 2'`,
    );
  }
  const prefix = 'changed.';
  const ofChanged = name.startsWith(prefix);
  if (ofChanged && !changed) {
    throw new FormulaError(`'${name}': nothing is changed here; add a 'with'`);
  }
  const known = (ofChanged && changed ? changed : numbers).quantities;
  const found = known.get(ofChanged ? name.slice(prefix.length) : name);
  if (!found) {
    throw new FormulaError(
      `there is no number '${name}'; there are ${[...known.keys()].sort().join(', ')}`,
    );
  }
  const times = groups['times'];
  const over = groups['over'];
  const many = times === undefined ? found : product(Number(times), found);
  return over === undefined ? many : quotient(many, Number(over));
}

/**
 * Reads a formula over a setup's numbers: terms joined by ` + ` and ` - `, each perhaps doubled
 * (`2 * allowance`) or halved (`pin.length / 2`).
 * @throws FormulaError
 * @example evaluate(readFormula('b.holeDepth + tip', { numbers: numbersOfPlan(plan) })) // mm
 */
export function readFormula(text: string, about: FormulaNumbers): Expression {
  const [first = '', ...rest] = text.split(/\s+([+-])\s+/);
  let formula = readTerm(first, about);
  for (let i = 0; i < rest.length; i += 2) {
    const term = readTerm(rest[i + 1] ?? '', about);
    formula = rest[i] === '+' ? sum(formula, term) : difference(formula, term);
  }
  return formula;
}

/** What a formula's value is counted in: that of the first number that it names. */
export function unitOf(formula: Expression): WorkingUnit {
  switch (formula.op) {
    case 'constant':
    case 'quantity':
      return formula.unit;
    default:
      return unitOf(formula.of.find((each) => each.op !== 'constant') ?? formula.of[0]!);
  }
}
