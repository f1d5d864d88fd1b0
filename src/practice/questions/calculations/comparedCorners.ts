import { compareCorners } from '../../../core/strength/compare.ts';
import { power, product, quantity, quotient } from '../../../core/working/expression.ts';
import { plainText } from '../../../core/working/plainText.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import { named } from '../numbers.ts';
import { calculation, length, setting } from './calculation.ts';

/** How many times the bending of one case corner another bears: for comparing, never a rating. */
export const comparedCornersOf = calculation(
  {
    firstDiameter: setting(length),
    firstDepth: setting(length),
    secondDiameter: setting(length),
    secondDepth: setting(length),
  },
  ({ firstDiameter, firstDepth, secondDiameter, secondDepth }) => {
    const found = compareCorners(
      { diameter: firstDiameter, faceDepth: firstDepth },
      { diameter: secondDiameter, faceDepth: secondDepth },
    );
    if (!found.ok) return { ...named([]), errors: [plainText(found.reason, 'in')] };
    const parts = (way: 'open' | 'closed', exponents: readonly [number, number]) => {
      const of = (symbol: string, one: number, other: number, exponent: number, name: string) =>
        reckon({
          id: `${way}.${name}`,
          label: `Forced ${way}, by the ${name}`,
          symbol: `f_${symbol}`,
          formula: power(
            quotient(quantity(`${symbol}_2`, other), quantity(`${symbol}_1`, one)),
            exponent,
          ),
          unit: 'ratio',
          source: 'case-corner',
        });
      const diameter = of('D', firstDiameter, secondDiameter, exponents[0], 'diameter');
      const depth = of('E', firstDepth, secondDepth, exponents[1], 'depth');
      const whole = reckon({
        id: way,
        label: `Forced ${way}, the second against the first`,
        symbol: 'f',
        formula: product(taken(diameter), taken(depth)),
        unit: 'ratio',
        source: 'case-corner',
      });
      return [diameter, depth, whole];
    };
    return {
      ...named(
        [
          ['first.diameter', 'D_1', firstDiameter],
          ['first.depth', 'E_1', firstDepth],
          ['second.diameter', 'D_2', secondDiameter],
          ['second.depth', 'E_2', secondDepth],
        ],
        [...parts('open', [0.591, 1.18]), ...parts('closed', [0.452, 1.14])],
      ),
      errors: [],
    };
  },
);
