import { inches } from '../../../src/core/length/mm.ts';
import { caseCornerMoment } from '../../../src/core/strength/caseCornerMoment.ts';
import type { PublishedRow } from './publishedRow.ts';

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

/** Case corner in particleboard, one dowel. */
export const caseCornerRows: readonly PublishedRow[] = ends.map(
  ([diameter, depth, way, published]) => ({
    what: `Case corner, dowel ${diameter} in, ${depth} in into the face, ${way}`,
    source: 'Zhang and Eckelman 1993, Forest Products Journal 43(6) 19–24, the abstract’s formula',
    standing: 'read',
    unit: 'lb·in',
    published,
    tolerance: 0.001,
    compute: () => {
      const moment = caseCornerMoment({ diameter: inches(diameter), faceDepth: inches(depth) });
      return moment.ok ? moment[way] / newtonMetersPerPoundInch : NaN;
    },
  }),
);
