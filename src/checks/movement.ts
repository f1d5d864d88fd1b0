import { dimensionalChange, mm, species } from '../core/index.ts';
import type { CheckRow } from './checkRow.ts';

/** Shrinkage from green to oven-dry, percent: across the rings and along them. */
const shrinkage: Readonly<Record<string, readonly [radial: number, tangential: number]>> = {
  'ash, white': [4.9, 7.8],
  'beech, American': [5.5, 11.9],
  'birch, yellow': [7.3, 9.5],
  'birch, paper': [6.3, 8.6],
  'cherry, black': [3.7, 7.1],
  'maple, sugar (hard)': [4.8, 9.9],
  'oak, northern red': [4.0, 8.6],
  'oak, white': [5.6, 10.5],
  'walnut, black': [5.5, 7.8],
  'yellow-poplar': [4.6, 8.2],
  'basswood, American': [6.6, 9.3],
  'aspen, quaking': [3.5, 6.7],
  'Douglas-fir, coast': [4.8, 7.6],
  'pine, longleaf': [5.1, 7.5],
  'pine, loblolly': [4.8, 7.4],
  'pine, shortleaf': [4.6, 7.7],
  'pine, lodgepole': [4.3, 6.7],
  'cedar, western redcedar': [2.4, 5.0],
  'fir, white': [3.3, 7.0],
};

/** The worked example of Eq. 13-2. */
const whiteFir: CheckRow = {
  what: 'White fir flooring 232 mm wide, from 8 to 11 % moisture: change of width',
  unit: { name: 'mm', decimals: 1 },
  published: 1.7,
  computed: dimensionalChange({
    size: mm(232),
    coefficient: species('fir, white')?.tangential ?? NaN,
    fromMoisture: 8,
    toMoisture: 11,
  }),
  tolerance: 0.05,
  source: 'USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, Eq. 13-2, worked example',
  standing: 'read',
};

/** Coefficients of movement against the shrinkage of the other table, C = S/(3000 − 20 S). */
const coefficients: readonly CheckRow[] = Object.entries(shrinkage).flatMap(([name, both]) =>
  (['radial', 'tangential'] as const).map((direction, k): CheckRow => {
    const percent = both[k] as number;
    return {
      what: `Movement of ${name}, ${direction}, per 1 % moisture`,
      unit: { name: 'per %', decimals: 5 },
      published: percent / (3000 - 20 * percent),
      computed: species(name)?.[direction] ?? NaN,
      tolerance: 0.00001,
      source:
        'USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, Table 4-3, by C = S/(3000 − 20 S)',
      standing: 'read',
    };
  }),
);

/** How wood moves with its moisture. */
export const movementRows: readonly CheckRow[] = [whiteFir, ...coefficients];
