import { equilibriumMoisture, publishedMoisture } from '../core/index.ts';
import type { CheckRow } from './checkRow.ts';

/** Moisture content of wood in air. */
export const equilibriumMoistureRows: readonly CheckRow[] = Object.entries(
  publishedMoisture,
).flatMap(([fahrenheit, row]) =>
  row.map(([humidity, published]) => ({
    what: `Wood in air at ${fahrenheit} °F and ${humidity} % humidity`,
    unit: { name: '%', decimals: 1 },
    published,
    computed: equilibriumMoisture(((Number(fahrenheit) - 32) * 5) / 9, humidity / 100),
    tolerance: 0.1,
    source: 'USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, Table 4-2',
    standing: 'read',
  })),
);
