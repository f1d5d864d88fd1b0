import { diameterOfPin } from '../../../core/fit/fit.ts';
import { dropOfGlue, fluteDepth, glueRoom } from '../../../core/fit/glueRoom.ts';
import { mm } from '../../../core/length/mm.ts';
import { planJoint } from '../../../core/joint/planJoint.ts';
import {
  difference,
  greatest,
  least,
  product,
  quantity,
  quotient,
  sum,
} from '../../../core/working/expression.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import type { WorkingStep } from '../../../core/working/types.ts';
import { named } from '../numbers.ts';
import type { YamlEntry } from '../yamlEntry.ts';
import { calculation, joint, length, optional, setting } from './calculation.ts';

const milliliters = (entry: YamlEntry) => entry.measure('ml') * 1000;
const squareMillimeters = (entry: YamlEntry) => entry.measure('mm²');
const flutes = (entry: YamlEntry) => (entry.number() === 0 ? 0 : entry.count());
const side = (entry: YamlEntry) => entry.oneOf(['a', 'b']);

/** Room for glue in one hole of a joint, against the glue put in. */
export const glueRoomOf = calculation(
  {
    joint: setting(joint),
    board: setting(side),
    /** The pin by caliper; else it is taken a little under its name. */
    measured: optional(length),
    flutes: setting(flutes),
    fluteArea: optional(squareMillimeters),
    glue: setting(milliliters),
  },
  ({ joint: spec, board, measured, flutes: n, fluteArea = 0, glue }) => {
    const plan = planJoint(spec);
    const { bit, allowance } = plan.spec;
    const hole = bit.diameter;
    const pin = diameterOfPin({
      diameter: plan.pin?.diameter ?? hole,
      ...(measured !== undefined && { measured }),
    });
    const { engagement } = plan[board];
    const cone = mm(bit.point.kind === 'twist' ? bit.tip : 0);
    // Refuses what makes no sense; the steps below give the same numbers with their formulas.
    glueRoom({
      hole,
      pin,
      engagement,
      allowance,
      cone,
      flutes: n,
      fluteArea,
      glue,
    });

    const letter = board.toUpperCase();
    const D = quantity('D', hole);
    const d = quantity('d', pin);
    const e = quantity(`e_${letter}`, engagement);
    const quarterPi = quotient(quantity('π', Math.PI, 'ratio'), 4);
    const step = (id: string, label: string, symbol: string, formula: WorkingStep['formula']) =>
      reckon({ id, label, symbol, formula, unit: 'volume', source: 'geometry' });
    const section = (id: string, label: string, symbol: string, across: typeof D) =>
      reckon({
        ...{ id, label, symbol, unit: 'area', source: 'geometry' },
        formula: product(quarterPi, across, across),
      });
    const holeArea = section('holeArea', 'Cross-section of the hole', 'A_hole', D);
    // A pin larger than its hole is squeezed to it.
    const pinArea = section('pinArea', 'Cross-section of the pin', 'A_pin', pin < hole ? d : D);
    const around = step(
      'around',
      'Room around the pin',
      'around',
      product(difference(taken(holeArea), taken(pinArea)), e),
    );
    const inFlutes = step(
      'inFlutes',
      'Room in the flutes',
      'flutes',
      product(n, quantity('flute', fluteArea, 'area'), e),
    );
    const atEnd = step(
      'atEnd',
      'Room past the end of the pin',
      'end',
      product(taken(holeArea), quantity('c', allowance)),
    );
    const inCone = step(
      'inCone',
      'Room in the point of the bit',
      'point',
      quotient(product(taken(holeArea), quantity('tip', cone)), 3),
    );
    const total = step(
      'total',
      'Room for glue in all',
      'room',
      sum(...[around, inFlutes, atEnd, inCone].map(taken)),
    );
    const over = step(
      'over',
      'Glue beyond the room',
      'over',
      greatest(difference(quantity('glue', glue, 'volume'), taken(total)), 0),
    );
    const standsOff = reckon({
      id: 'standsOff',
      label: 'How far trapped glue holds the joint open',
      symbol: 'open by',
      formula: least(quotient(taken(over), taken(pinArea)), e),
      source: 'geometry',
    });
    return {
      ...named(
        [
          ['hole', 'D', hole],
          ['pin', 'd', pin],
          ['engagement', `e_${letter}`, engagement],
          ['allowance', 'c', allowance],
          ['cone', 'tip', cone],
          ['limit', `limit_${letter}`, plan[board].limit],
          ['fluteArea', 'flute', fluteArea, 'area'],
          ['fluteDepth', 'flute depth', fluteDepth(fluteArea), 'caliper'],
          ['clearance', 'clearance', hole - pin, 'fine'],
          ['glue', 'glue', glue, 'volume'],
          ['flutes', 'flutes', n, 'count'],
          ['glue.drops', 'drops', Math.round(glue / dropOfGlue), 'count'],
          ['room.drops', 'drops', Math.floor(total.result / dropOfGlue), 'count'],
        ],
        // Glue is trapped by a plain pin only.
        [
          holeArea,
          pinArea,
          around,
          inFlutes,
          atEnd,
          inCone,
          total,
          over,
          ...(n === 0 ? [standsOff] : []),
        ],
      ),
      errors: [],
    };
  },
);
