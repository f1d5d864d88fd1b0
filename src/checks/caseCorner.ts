import { caseCornerMoment, inches } from '../core/index.ts';
import type { CheckRow } from './checkRow.ts';

const newtonMetersPerPoundInch = 0.112984829;

/** The published formulas at the ends of their range, by logarithms, in pound-inches. */
const ends: readonly (readonly [
  diameter: number,
  depth: number,
  way: 'opening' | 'closing',
  moment: number,
])[] = [
  [1 / 4, 1 / 4, 'opening', Math.exp(Math.log(614.6) - (0.591 + 1.18) * Math.log(4))],
  [1 / 4, 1 / 4, 'closing', Math.exp(Math.log(460.4) - (0.452 + 1.14) * Math.log(4))],
  [
    3 / 8,
    5 / 8,
    'opening',
    Math.exp(Math.log(614.6) + 0.591 * Math.log(0.375) + 1.18 * Math.log(0.625)),
  ],
  [
    3 / 8,
    5 / 8,
    'closing',
    Math.exp(Math.log(460.4) + 0.452 * Math.log(0.375) + 1.14 * Math.log(0.625)),
  ],
];

/** Pound-inches by the calculator; NaN where it refuses. */
function computed(diameter: number, depth: number, way: 'opening' | 'closing'): number {
  const moment = caseCornerMoment({ diameter: inches(diameter), faceDepth: inches(depth) });
  return moment.ok ? moment[way] / newtonMetersPerPoundInch : NaN;
}

const inWords: Readonly<Record<number, string>> = { 0.25: '1/4', 0.375: '3/8', 0.625: '5/8' };

/** Case corner in particleboard, one dowel. */
export const caseCornerRows: readonly CheckRow[] = ends.map(
  ([diameter, depth, way, published]) => ({
    what: `Case corner, dowel ${inWords[diameter]} in, ${inWords[depth]} in into the face, ${way}`,
    unit: { name: 'lb·in', decimals: 2 },
    published,
    computed: computed(diameter, depth, way),
    tolerance: 0.001,
    source: 'Zhang and Eckelman 1993, Forest Products Journal 43(6) 19–24, the abstract’s formula',
    standing: 'read',
  }),
);
