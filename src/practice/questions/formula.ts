import type { JointPlan } from '../../core/joint/types.ts';
import {
  type Expression,
  difference,
  product,
  quantity,
  quotient,
  sum,
} from '../../core/working/expression.ts';
import type { WorkingUnit } from '../../core/working/types.ts';

/** A formula of content that can't be read; the message says why and what there is. */
export class FormulaError extends Error {
  override readonly name = 'FormulaError';
}

/**
 * Every number of a plan that content may name: those of its working ('b.engagement', 'tip') and
 * the settings that it was worked out from ('b.thickness', 'guide.bushing').
 */
export function quantitiesOf(plan: JointPlan): ReadonlyMap<string, Expression> {
  const { spec } = plan;
  const settings: readonly (readonly [string, string, number, WorkingUnit])[] = [
    ['a.thickness', 't_A', spec.a.thickness, 'length'],
    ['a.width', 'width_A', spec.a.width, 'length'],
    ['a.length', 'length_A', spec.a.length, 'length'],
    ['b.thickness', 't_B', spec.b.thickness, 'length'],
    ['b.width', 'width_B', spec.b.width, 'length'],
    ['b.length', 'length_B', spec.b.length, 'length'],
    ['bit.diameter', 'D', spec.bit.diameter, 'length'],
    ['guide.bushing', 'bushing', spec.guide.bushing, 'length'],
    ['guide.standoff', 'standoff', spec.guide.standoff, 'length'],
  ];
  return new Map([
    ...settings.map(([name, ...given]) => [name, quantity(...given)] as const),
    ...plan.working.map(
      ({ id, symbol, result, unit }) => [id, quantity(symbol, result, unit)] as const,
    ),
  ]);
}

/** The plans whose numbers a formula may name. */
export interface FormulaPlans {
  readonly plan: JointPlan;
  /** The same joint with something changed; its numbers are `changed.b.engagement` and so on. */
  readonly changed?: JointPlan | undefined;
}

const TERM = /^(?:(?<times>\d+)\s*\*\s*)?(?<name>[a-zA-Z][\w.]*)(?:\s*\/\s*(?<over>\d+))?$/;

function readTerm(text: string, { plan, changed }: FormulaPlans): Expression {
  const groups = TERM.exec(text.trim())?.groups;
  const name = groups?.['name'];
  if (!groups || name === undefined) {
    throw new FormulaError(
      `'${text.trim()}' is not a number of a plan; write such as 'b.engagement', '2 * allowance' or 'pin.length / 2'`,
    );
  }
  const prefix = 'changed.';
  const ofChanged = name.startsWith(prefix);
  if (ofChanged && !changed) {
    throw new FormulaError(`'${name}': nothing is changed here; add a 'with'`);
  }
  const known = quantitiesOf(ofChanged && changed ? changed : plan);
  const found = known.get(ofChanged ? name.slice(prefix.length) : name);
  if (!found) {
    throw new FormulaError(
      `a plan has no number '${name}'; it has ${[...known.keys()].sort().join(', ')}`,
    );
  }
  const times = groups['times'];
  const over = groups['over'];
  const many = times === undefined ? found : product(Number(times), found);
  return over === undefined ? many : quotient(many, Number(over));
}

/**
 * Reads a formula over a plan's numbers: terms joined by ` + ` and ` - `, each perhaps doubled
 * (`2 * allowance`) or halved (`pin.length / 2`).
 * @throws FormulaError
 * @example evaluate(readFormula('b.holeDepth + tip', { plan })) // mm
 */
export function readFormula(text: string, plans: FormulaPlans): Expression {
  const [first = '', ...rest] = text.split(/\s+([+-])\s+/);
  let formula = readTerm(first, plans);
  for (let i = 0; i < rest.length; i += 2) {
    const term = readTerm(rest[i + 1] ?? '', plans);
    formula = rest[i] === '+' ? sum(formula, term) : difference(formula, term);
  }
  return formula;
}

/** Whether a formula's value is a length: content may also name angles and counts. */
export function unitOf(formula: Expression): WorkingUnit {
  switch (formula.op) {
    case 'constant':
    case 'quantity':
      return formula.unit;
    default:
      return unitOf(formula.of.find((each) => each.op !== 'constant') ?? formula.of[0]!);
  }
}
