import { formatReadable, formatWorking } from '../length/formatLength.ts';
import { mm } from '../length/mm.ts';
import type { LengthUnit } from '../length/parseLength.ts';
import { type Measured, isMeasured, lengthUnit } from './lengthUnit.ts';
import type { WorkingUnit } from './types.ts';

/** How one unit is written: what the kept value is multiplied by, the sign after it, decimals. */
interface Written {
  readonly times: number;
  readonly sign: string;
  readonly decimals: number;
}

/** Whatever is not written as a length is. */
export type OtherUnit = Exclude<WorkingUnit, Measured>;

const PER_INCH = 1 / 25.4;

function alike(sign: string, decimals: number): Record<LengthUnit, Written> {
  const written = { times: 1, sign, decimals };
  return { in: written, mm: written };
}

const UNITS: Record<Exclude<OtherUnit, 'temperature' | 'ratio'>, Record<LengthUnit, Written>> = {
  fine: {
    in: { times: 1000 * PER_INCH, sign: 'thousandths', decimals: 1 },
    mm: { times: 1000, sign: 'µm', decimals: 0 },
  },
  area: {
    in: { times: PER_INCH ** 2, sign: 'in²', decimals: 5 },
    mm: { times: 1, sign: 'mm²', decimals: 2 },
  },
  volume: {
    in: { times: PER_INCH ** 3, sign: 'in³', decimals: 4 },
    mm: { times: 1, sign: 'mm³', decimals: 0 },
  },
  force: {
    in: { times: 1 / 4.4482216152605, sign: 'lb', decimals: 0 },
    mm: { times: 1, sign: 'N', decimals: 0 },
  },
  moment: {
    in: { times: 1 / 0.1129848290276167, sign: 'lb·in', decimals: 0 },
    mm: { times: 1, sign: 'N·m', decimals: 1 },
  },
  pressure: {
    in: { times: 145.03773773, sign: 'psi', decimals: 0 },
    mm: { times: 1, sign: 'MPa', decimals: 2 },
  },
  degrees: alike('°', 2),
  percent: alike('%', 1),
  probability: {
    in: { times: 100, sign: '%', decimals: 0 },
    mm: { times: 100, sign: '%', decimals: 0 },
  },
  count: alike('', 5),
};

/** A number in a reader's unit: what it reads there, the sign of the unit, and how exactly it is written. */
export interface InUnit {
  readonly value: number;
  readonly sign: string;
  readonly decimals: number;
}

/** A value of any unit but a length, as a reader of inches or of millimeters counts it. */
export function inUnit(value: number, unit: OtherUnit, reader: LengthUnit): InUnit {
  if (unit === 'temperature') {
    return reader === 'in'
      ? { value: value * 1.8 + 32, sign: '°F', decimals: 0 }
      : { value, sign: '°C', decimals: 0 };
  }
  // A ratio near one is never known to five figures; a change per percent of moisture needs them.
  if (unit === 'ratio') return { value, sign: '', decimals: Math.abs(value) < 0.1 ? 5 : 3 };
  const { times, sign, decimals } = UNITS[unit][reader];
  return { value: value * times, sign, decimals };
}

/**
 * A number with its unit, in words fit for a sentence. Small clearances are written in thousandths
 * of an inch or micrometers; glue in milliliters for everyone, since it is sold and measured so.
 * @example formatQuantity(0.1, 'fine', 'in') // '3.9 thousandths'
 * @example formatQuantity(290, 'volume', 'in') // '0.29 ml'
 */
export function formatQuantity(value: number, unit: WorkingUnit, reader: LengthUnit): string {
  if (isMeasured(unit)) {
    const shown = lengthUnit(unit, reader);
    const write = unit === 'caliper' ? formatWorking : formatReadable;
    return `${write(mm(value), shown)} ${shown}`;
  }
  if (unit === 'volume') return `${number(value / 1000, 2)} ml`;
  if (unit === 'probability' && value > 0.99 && value < 1) return 'over 99 %';
  if (unit === 'probability' && value < 0.01 && value > 0) return 'under 1 %';
  const { value: shown, sign, decimals } = inUnit(value, unit, reader);
  // In a sentence two places do, but for a change per percent of moisture, which they would hide.
  const two = unit === 'count' || (unit === 'ratio' && decimals < 5);
  const text = number(shown, two ? 2 : decimals);
  return sign === '' || sign === '°' ? `${text}${sign}` : `${text} ${sign}`;
}

function number(value: number, decimals: number): string {
  const rounded = Number(Math.abs(value).toFixed(decimals));
  const text = rounded >= 10_000 ? rounded.toLocaleString('en-US') : String(rounded);
  return value < 0 && rounded !== 0 ? `−${text}` : text;
}
