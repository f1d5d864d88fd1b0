import type { JointPlan, System } from '../../core/joint/types.ts';
import { type Expression, quantity } from '../../core/working/expression.ts';
import type { WorkingStep, WorkingUnit } from '../../core/working/types.ts';

/** What content may name of a calculation, whichever it is: a joint's plan, a fit, room for glue. */
export interface Numbers {
  /** What lengths were given in: how near a typed one has to be. */
  readonly system: System;
  /** Every number by the name that formulas call it: 'b.engagement', 'clearance'. */
  readonly quantities: ReadonlyMap<string, Expression>;
  /** How numbers came about, in the order of reckoning, where the calculator tells. */
  readonly working: readonly WorkingStep[];
  /** Why the thing can't be done as set, in sentences; empty where it can. */
  readonly errors: readonly string[];
}

/** A number of a calculation: the name that formulas call it, its sign, its value and its unit. */
export type NamedNumber = readonly [
  name: string,
  symbol: string,
  value: number,
  unit?: WorkingUnit,
];

/** Numbers that were given or looked up, and those of a working, by their names. */
export function named(
  given: readonly NamedNumber[],
  working: readonly WorkingStep[] = [],
): Pick<Numbers, 'quantities' | 'working'> {
  return {
    quantities: new Map([
      ...given.map(([name, ...number]) => [name, quantity(...number)] as const),
      ...working.map(
        ({ id, symbol, result, unit }) => [id, quantity(symbol, result, unit)] as const,
      ),
    ]),
    working,
  };
}

/**
 * The numbers of a joint's plan: those of its working ('b.engagement', 'tip') and the settings
 * that it was worked out from ('b.thickness', 'guide.bushing').
 */
export function numbersOfPlan(plan: JointPlan): Numbers {
  const { a, b, bit, guide, system } = plan.spec;
  return {
    system,
    ...named(
      [
        ['a.thickness', 't_A', a.thickness],
        ['a.width', 'width_A', a.width],
        ['a.length', 'length_A', a.length],
        ['b.thickness', 't_B', b.thickness],
        ['b.width', 'width_B', b.width],
        ['b.length', 'length_B', b.length],
        ['bit.diameter', 'D', bit.diameter],
        ['guide.bushing', 'bushing', guide.bushing],
        ['guide.standoff', 'standoff', guide.standoff],
        ['guide.offset', 'offset', guide.offset],
        ['overhang', 'overhang', plan.spec.overhang],
        ['at', 'at', plan.spec.at],
        ['reveal', 'reveal', plan.spec.reveal],
        ['setback', 'setback', plan.spec.setback],
      ],
      plan.working,
    ),
    errors: plan.cautions
      .filter(({ severity }) => severity === 'error')
      .map(({ message }) => message),
  };
}
