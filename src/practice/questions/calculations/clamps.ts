import { clamps } from '../../../core/strength/clamps.ts';
import { product, quantity, quotient, sum } from '../../../core/working/expression.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import { named } from '../numbers.ts';
import type { YamlEntry } from '../yamlEntry.ts';
import { calculation, length, optional, setting } from './calculation.ts';

/** A pressure in MPa, written `1 MPa` or `150 psi`. */
function pressure(entry: YamlEntry): number {
  return entry.text().endsWith('psi') ? entry.measure('psi') / 145.03773773 : entry.measure('MPa');
}

/** A force in N, written `2000 N` or `450 lb`. */
function force(entry: YamlEntry): number {
  return entry.text().endsWith('lb') ? entry.measure('lb') * 4.4482216152605 : entry.measure('N');
}

/** How many clamps an edge joint takes, how far apart, and with what force. */
export const clampsOf = calculation(
  {
    length: setting(length),
    thickness: setting(length),
    boardWidth: setting(length),
    caul: setting(length),
    pressure: setting(pressure),
    mostPerClamp: optional(force),
  },
  ({ mostPerClamp, ...input }) => {
    const found = clamps({ ...input, ...(mostPerClamp !== undefined && { mostPerClamp }) });
    const number = quantity('n', found.count, 'count');
    const line = quantity('length', input.length);
    const reach = reckon({
      id: 'reach',
      label: 'Glue line that one clamp presses',
      symbol: 'reach',
      formula: product(2, sum(quantity('caul', input.caul), quantity('width', input.boardWidth))),
      source: 'shop-practice',
    });
    const spacing = reckon({
      id: 'spacing',
      label: 'From one clamp to the next',
      symbol: 'spacing',
      formula: quotient(line, number),
      source: 'geometry',
    });
    const fromEnd = reckon({
      id: 'fromEnd',
      label: 'From the end of the boards to the first clamp',
      symbol: 'from the end',
      formula: quotient(taken(spacing), 2),
      source: 'geometry',
    });
    const whole = reckon({
      id: 'force',
      label: 'Force on the whole glue line',
      symbol: 'F',
      formula: product(
        line,
        quantity('t', input.thickness),
        quantity('pressure', input.pressure, 'pressure'),
      ),
      unit: 'force',
      source: 'geometry',
    });
    const each = reckon({
      id: 'forcePerClamp',
      label: 'Force of each clamp',
      symbol: 'F_clamp',
      formula: quotient(taken(whole), number),
      unit: 'force',
      source: 'geometry',
    });
    return {
      ...named(
        [
          ['length', 'length', input.length],
          ['thickness', 't', input.thickness],
          ['boardWidth', 'width', input.boardWidth],
          ['caul', 'caul', input.caul],
          ['pressure', 'pressure', input.pressure, 'pressure'],
          ['count', 'n', found.count, 'count'],
          ['area', 'area', found.area, 'area'],
        ],
        [reach, spacing, fromEnd, whole, each],
      ),
      errors: [],
    };
  },
);
