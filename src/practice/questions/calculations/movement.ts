import { coefficientsHold, dimensionalChange } from '../../../core/moisture/dimensionalChange.ts';
import { difference, product, quantity, sum } from '../../../core/working/expression.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import { named } from '../numbers.ts';
import { calculation, length, setting, wood } from './calculation.ts';
import { moisture } from './equilibrium.ts';

/** How much a board grows or shrinks across the grain from one moisture to another. */
export const movementOf = calculation(
  {
    size: setting(length),
    wood: setting(wood),
    /** Which way the size runs: across the rings, as the width of a quarter-sawn board, or along them. */
    rings: setting((entry) => entry.oneOf(['across', 'along'])),
    from: setting(moisture),
    to: setting(moisture),
  },
  ({ size, wood: { name, radial, tangential }, rings, from, to }) => {
    const coefficient = rings === 'across' ? radial : tangential;
    if (coefficient === null) {
      return { ...named([]), errors: [`How much ${name} moves across its rings was not found.`] };
    }
    dimensionalChange({ size, coefficient, fromMoisture: from, toMoisture: to }); // refuses nonsense
    const given = quantity('size', size);
    const rise = reckon({
      id: 'rise',
      label: 'Rise of the moisture',
      symbol: 'rise',
      formula: difference(quantity('M_to', to, 'percent'), quantity('M_from', from, 'percent')),
      unit: 'percent',
      source: 'geometry',
    });
    const change = reckon({
      id: 'change',
      label: 'Change across the grain',
      symbol: 'change',
      formula: product(given, quantity('C', coefficient, 'ratio'), taken(rise)),
      source: 'wood-handbook',
    });
    const newSize = reckon({
      id: 'newSize',
      label: 'Size afterwards',
      symbol: 'size afterwards',
      formula: sum(given, taken(change)),
      source: 'geometry',
    });
    return {
      ...named(
        [
          ['size', 'size', size],
          ['coefficient', 'C', coefficient, 'ratio'],
          ['from', 'M_from', from, 'percent'],
          ['to', 'M_to', to, 'percent'],
        ],
        [rise, change, newSize],
      ),
      errors: coefficientsHold(from, to)
        ? []
        : ['The coefficients are said to hold from 6 to 14 % only.'],
    };
  },
);
