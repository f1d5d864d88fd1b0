import type { LengthUnit } from '../length/parseLength.ts';
import type { WorkingUnit } from './types.ts';

/** The units of lengths that a rule or a caliper shows; a `fine` length has its own way. */
export type Measured = 'length' | 'caliper' | 'inches' | 'millimeters';

/** Whether a number of this unit is written as a length on a rule is. */
export function isMeasured(unit: WorkingUnit): unit is Measured {
  return ['length', 'caliper', 'inches', 'millimeters'].includes(unit);
}

/**
 * What such a length is written in for a reader.
 * @example lengthUnit('length', 'mm') // 'mm'
 * @example lengthUnit('inches', 'mm') // 'in': an inch rule shows inches to everyone
 */
export function lengthUnit(unit: Measured, reader: LengthUnit): LengthUnit {
  return unit === 'inches' ? 'in' : unit === 'millimeters' ? 'mm' : reader;
}
