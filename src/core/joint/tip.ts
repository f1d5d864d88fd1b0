import { fixedLength, product, quantity, quotient, tangent } from '../working/expression.ts';
import { reckon } from '../working/reckon.ts';
import type { WorkingStep } from '../working/types.ts';
import type { Mm } from '../length/mm.ts';
import type { BitPoint } from './types.ts';

/** A brad's spur as a share of the bit's diameter where nobody measured it; from memory. */
export const BRAD_SPUR_RATIO = 0.3;

/** The point of a bit where none is named: a twist bit of 118°. */
export const DEFAULT_POINT: BitPoint = { kind: 'twist', angle: 118 };

/**
 * How far a bit's point goes on beyond its full diameter, in mm.
 * @param diameter of the bit, mm
 */
export function reckonTip(point: BitPoint, diameter: Mm): WorkingStep {
  const step = { id: 'tip', label: "Point beyond the bit's full diameter", symbol: 'tip' } as const;
  switch (point.kind) {
    case 'twist':
      return reckon({
        ...step,
        formula: quotient(
          quotient(quantity('D', diameter), 2),
          tangent(quotient(quantity('angle', point.angle, 'degrees'), 2)),
        ),
        source: 'geometry',
        rule: 'a twist bit is a cone at its tip',
      });
    case 'brad':
      return point.spur === undefined
        ? reckon({
            ...step,
            formula: product(BRAD_SPUR_RATIO, quantity('D', diameter)),
            source: 'from-memory',
            rule: 'a brad point not measured: 0.3 of the diameter',
          })
        : reckon({ ...step, formula: fixedLength(point.spur), source: 'setting' });
    case 'center':
      return reckon({ ...step, formula: fixedLength(point.spur), source: 'setting' });
    case 'square':
      return reckon({
        ...step,
        formula: fixedLength(0),
        source: 'geometry',
        rule: 'a bit without a point ends where its full diameter ends',
      });
  }
}
