import { bitAsMade, mm } from '../core/index.ts';
import type { CheckRow } from './checkRow.ts';

/** Grade IT8, micrometers, over the one diameter up to the other, mm. */
const grade8: readonly (readonly [over: number, upTo: number, micrometers: number])[] = [
  [3, 6, 18],
  [6, 10, 22],
  [10, 18, 27],
  [18, 30, 33],
];

/** How far a bit made to h8 may lie under its name. */
export const toleranceGradeRows: readonly CheckRow[] = grade8.map(([over, upTo, published]) => ({
  what: `Grade IT8 over ${over} and up to ${upTo} mm`,
  unit: { name: 'µm', decimals: 0 },
  published,
  computed: 1000 * (upTo - (bitAsMade(mm(upTo))?.least ?? NaN)),
  tolerance: 0.5,
  source: 'ISO 286-1, standard tolerance grades; two copies agree',
  standing: 'read',
}));
