import { formatQuantity } from '../../core/working/formatQuantity.ts';
import type { Unit } from '../drafting/reading.ts';

/**
 * A clearance in thousandths of an inch and in micrometers, the reader's first: shops talk in the
 * one and papers in the other.
 * @example bothUnits(0.1, 'mm') // '100 µm (3.9 thousandths)'
 */
export function bothUnits(length: number, reader: Unit): string {
  const write = (unit: Unit) => formatQuantity(length, 'fine', unit).replace(' ', '\u00a0');
  return `${write(reader)} (${write(reader === 'in' ? 'mm' : 'in')})`;
}
