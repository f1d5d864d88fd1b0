import { type Mm, lessThan } from '../length/mm.ts';
import { difference, quantity, quotient } from '../working/expression.ts';
import { reckon, taken } from '../working/reckon.ts';
import type { WorkingStep } from '../working/types.ts';
import type { Across } from './across.ts';
import { drilledSide } from './jointLine.ts';
import type { JointSpec } from './types.ts';

/** Wood along the axis of a hole in A, as far as it may go (not for a miter). */
export function reckonLimitA(spec: JointSpec): WorkingStep {
  const step = { id: 'a.limit', label: 'Wood along the hole in A', symbol: 'limit_A' } as const;
  return drilledSide(spec) === 'edge'
    ? reckon({
        ...step,
        formula: quantity('width_A', spec.a.width),
        source: 'geometry',
        rule: 'A is drilled in its edge: its width',
      })
    : reckon({
        ...step,
        formula: quantity('length_A', spec.a.length),
        source: 'geometry',
        rule: 'A is drilled in its end: its length',
      });
}

/** True where every hole of one apron's row passes clear of every hole of the other's. */
function rowsClear(
  row: readonly Mm[],
  secondRow: readonly Mm[],
  bit: Mm,
  leave: WorkingStep,
): boolean {
  const clear = bit + leave.result;
  return row.every((x) => secondRow.every((other) => !lessThan(Math.abs(x - other), clear)));
}

/**
 * Wood along the axis of a hole in B, as far as it may go (not for a miter).
 * @param bit diameter of the bit, mm
 */
export function reckonLimitB(
  spec: JointSpec,
  across: Across,
  row: readonly Mm[],
  secondRow: readonly Mm[],
  bit: Mm,
  leave: WorkingStep,
): WorkingStep {
  const step = { id: 'b.limit', label: 'Wood along the hole in B', symbol: 'limit_B' } as const;
  switch (spec.kind) {
    case 'edge':
    case 'frame':
      return reckon({
        ...step,
        formula: quantity('width_B', spec.b.width),
        source: 'geometry',
        rule: 'B is drilled in its edge: its width',
      });
    case 'leg': {
      const side = quantity('S', spec.b.thickness);
      return rowsClear(row, secondRow, bit, leave)
        ? reckon({
            ...step,
            formula: side,
            source: 'geometry',
            rule: 'the rows pass each other: the whole leg',
          })
        : reckon({
            ...step,
            formula: difference(side, taken(across.b), quotient(quantity('D', bit), 2)),
            source: 'geometry',
            rule: "the rows meet inside the leg: as far as the other row's holes",
          });
    }
    default:
      return reckon({
        ...step,
        formula: quantity('t_B', spec.b.thickness),
        source: 'geometry',
        rule: 'B is drilled in its face: its thickness',
      });
  }
}
