import { rowMovement } from '../../../core/moisture/rowMovement.ts';
import { coefficientsHold } from '../../../core/moisture/dimensionalChange.ts';
import {
  difference,
  greatest,
  product,
  quantity,
  quotient,
} from '../../../core/working/expression.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import { named } from '../numbers.ts';
import { calculation, length, setting, wood } from './calculation.ts';
import { moisture } from './equilibrium.ts';

/** A row of pins across a board's grain over a year, where the other board keeps its length. */
export const rowMovementOf = calculation(
  {
    span: setting(length),
    wood: setting(wood),
    /** Which way the span runs: along the rings of a flat-sawn board, across those of a quarter-sawn one. */
    rings: setting((entry) => entry.oneOf(['across', 'along'])),
    /** Hole less pin. */
    clearance: setting(length),
    dry: setting(moisture),
    damp: setting(moisture),
  },
  ({ span, wood: { name, radial, tangential }, rings, clearance, dry, damp }) => {
    const coefficient = rings === 'across' ? radial : tangential;
    if (coefficient === null) {
      return { ...named([]), errors: [`How much ${name} moves across its rings was not found.`] };
    }
    rowMovement({ span, coefficient, clearance, dry, damp }); // refuses nonsense
    const rise = reckon({
      id: 'rise',
      label: 'Rise of the moisture',
      symbol: 'rise',
      formula: difference(quantity('M_damp', damp, 'percent'), quantity('M_dry', dry, 'percent')),
      unit: 'percent',
      source: 'geometry',
    });
    const change = reckon({
      id: 'change',
      label: 'Change of the span',
      symbol: 'change',
      formula: product(quantity('span', span), quantity('C', coefficient, 'ratio'), taken(rise)),
      source: 'wood-handbook',
    });
    const play = reckon({
      id: 'play',
      label: 'Play of the outer pins',
      symbol: 'play',
      formula: product(2, greatest(quantity('clearance', clearance), 0)),
      source: 'geometry',
    });
    const held = reckon({
      id: 'held',
      label: 'Held back by the pins',
      symbol: 'held',
      formula: greatest(difference(taken(change), taken(play)), 0),
      source: 'geometry',
    });
    const widest = reckon({
      id: 'widest',
      label: 'Widest row that the play allows',
      symbol: 'widest',
      formula: quotient(taken(play), product(quantity('C', coefficient, 'ratio'), taken(rise))),
      source: 'geometry',
    });
    return {
      ...named(
        [
          ['span', 'span', span],
          ['coefficient', 'C', coefficient, 'ratio'],
          ['clearance', 'clearance', clearance],
          ['dry', 'M_dry', dry, 'percent'],
          ['damp', 'M_damp', damp, 'percent'],
        ],
        [rise, change, play, held, widest],
      ),
      errors: coefficientsHold(dry, damp)
        ? []
        : ['The coefficients are said to hold from 6 to 14 % only.'],
    };
  },
);
