import { type PulledPin, comparePull } from '../../../core/strength/compare.ts';
import {
  type Expression,
  difference,
  fixedLength,
  power,
  product,
  quantity,
  quotient,
} from '../../../core/working/expression.ts';
import { plainText } from '../../../core/working/plainText.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import { named } from '../numbers.ts';
import { isJoint } from '../setupKinds.ts';
import type { Setups } from '../setups.ts';
import type { YamlEntry } from '../yamlEntry.ts';
import { calculation, setting } from './calculation.ts';
import { pinOf } from './withdrawal.ts';

/** A `withdrawal` that stands above, by its name. */
function pulled(entry: YamlEntry, setups: Setups): PulledPin {
  const setup = setups.get(entry.text());
  if (!setup || isJoint(setup) || setup.calculation !== 'withdrawal') {
    entry.fail(`no 'withdrawal' called '${entry.text()}' stands above this one`);
  }
  return pinOf(setup.values) ?? entry.fail('the shear strength of one of its woods was not read');
}

/** The clearance, mm, at which the formula leaves a pin nothing. */
const LOOSEST = 25.4 / 17.1;

/** How many times the pull of one pin another takes: for comparing, never a rating. */
export const comparedPullOf = calculation(
  { first: setting(pulled), second: setting(pulled) },
  ({ first, second }) => {
    const found = comparePull(first, second);
    if (!found.ok) return { ...named([]), errors: [plainText(found.reason, 'in')] };
    const step = (id: string, label: string, symbol: string, formula: Expression) =>
      reckon({ id, label, symbol, formula, unit: 'ratio', source: 'pull-of-a-pin' });
    const pairOf = (symbol: string, of: (pin: PulledPin) => number, unit?: 'pressure' | 'ratio') =>
      [
        quantity(`${symbol}_2`, of(second), unit),
        quantity(`${symbol}_1`, of(first), unit),
      ] as const;
    const left = (pin: PulledPin, which: 1 | 2) =>
      step(
        `left.${which}`,
        `What the clearance leaves of pin ${which}`,
        `b_${which}`,
        difference(1, quotient(quantity(`δ_${which}`, pin.clearance), fixedLength(LOOSEST))),
      );
    const [leftOfFirst, leftOfSecond] = [left(first, 1), left(second, 2)];
    const factors = [
      step('byDiameter', 'By the diameter', 'f_D', quotient(...pairOf('D', (p) => p.diameter))),
      step(
        'byDepth',
        'By the depth',
        'f_L',
        power(quotient(...pairOf('L', (p) => p.engagement)), 0.89),
      ),
      leftOfFirst,
      leftOfSecond,
      step(
        'byClearance',
        'By the clearance',
        'f_δ',
        quotient(taken(leftOfSecond), taken(leftOfFirst)),
      ),
      step(
        'byGrooves',
        'By the grooves',
        'f_c',
        quotient(...pairOf('c', (p) => (p.grooved ? 0.9 : 1), 'ratio')),
      ),
      step(
        'byWood',
        'By the wood and its grain',
        'f_S',
        quotient(
          ...pairOf(
            'S',
            (p) => (p.grain === 'side' ? 0.95 : 1) * p.memberShear + p.dowelShear,
            'pressure',
          ),
        ),
      ),
    ];
    const ratio = step(
      'ratio',
      'The second against the first',
      'f',
      product(...factors.filter(({ id }) => id.startsWith('by')).map(taken)),
    );
    return {
      ...named(
        [
          ['first.diameter', 'D_1', first.diameter],
          ['first.depth', 'L_1', first.engagement],
          ['first.clearance', 'δ_1', first.clearance, 'fine'],
          ['second.diameter', 'D_2', second.diameter],
          ['second.depth', 'L_2', second.engagement],
          ['second.clearance', 'δ_2', second.clearance, 'fine'],
        ],
        [...factors, ratio],
      ),
      errors: found.inStatedRange ? [] : ['The two woods lie outside the range of the formula.'],
    };
  },
);
