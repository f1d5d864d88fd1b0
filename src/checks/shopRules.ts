import {
  type Board,
  type JointPlan,
  type Mm,
  type Standing,
  type System,
  defaults,
  fitBands,
  inches,
  mm,
  planJoint,
  stockPins,
} from '../core/index.ts';
import type { CheckRow, CheckUnit, PublishedRange } from './checkRow.ts';

const board = (thickness: Mm): Board => ({ thickness, width: inches(5.5), length: inches(24) });

/** The panel joint that the rules are held against: 3/4 in boards edge to edge. */
const panel = planOf(inches(3 / 4), 'in');

function planOf(thickness: Mm, system: System): JointPlan {
  return planJoint({ kind: 'edge', system, a: board(thickness), b: board(thickness) });
}

const shared = 'Common practice, no source';
const diameters: CheckUnit = { name: 'diameters', decimals: 2 };
const shareOfBoard: CheckUnit = { name: 'of the thickness', decimals: 2 };
const range = (from: number, to: number): PublishedRange => ({ from, to });

type Rule = readonly [
  what: string,
  unit: CheckUnit,
  published: number | PublishedRange,
  computed: number,
  source: string,
  standing: Standing,
];

const pin = panel.pin ?? { diameter: mm(NaN), length: mm(NaN) };
const pitches = panel.positions.slice(1).map((at, j) => at - (panel.positions[j] ?? NaN));
const metricDiameters = new Set(stockPins('mm').map(({ diameter }) => Number(diameter)));

const rules: readonly Rule[] = [
  ...(
    [
      ['1/2 to 5/8', 9 / 16, 1 / 4],
      ['5/8 to 3/4', 11 / 16, 5 / 16],
      ['3/4 to 1 1/2', 1, 3 / 8],
    ] as const
  ).map(([boards, thickness, diameter]): Rule => [
    `Dowel for boards of ${boards} in, tried in the middle of the band`,
    'length',
    inches(diameter),
    planOf(inches(thickness), 'in').pin?.diameter ?? NaN,
    shared,
    'common practice',
  ]),
  [
    'Dowel for the board: share of a 3/4 in board',
    shareOfBoard,
    range(1 / 3, 1 / 2),
    pin.diameter / inches(3 / 4),
    'Summary of IS 3845:1966',
    'second-hand',
  ],
  [
    'Dowel for the board: share of a 3/4 in board',
    shareOfBoard,
    range(2 / 5, 3 / 5),
    pin.diameter / inches(3 / 4),
    'German trade-school notes (HOBAAG)',
    'read',
  ],
  [
    'Depth of pin in each board, at least; 3/4 in boards edge to edge',
    diameters,
    range(2, 2.5),
    panel.a.engagement / pin.diameter,
    'Summary of IS 3845:1966',
    'second-hand',
  ],
  [
    'Depth of pin in each board that is enough for the glue',
    diameters,
    1.5,
    panel.a.engagement / pin.diameter,
    'Hoadley 1980, quoted by others',
    'second-hand',
  ],
  [
    'Hole past the pin’s end, each hole',
    'length',
    inches(1 / 8),
    defaults.in.allowance,
    shared,
    'common practice',
  ],
  [
    'Pin shorter than both holes together, by',
    'length',
    inches(1 / 8),
    panel.a.holeDepth + panel.b.holeDepth - pin.length,
    'Two school-shop texts of the early 1900s',
    'read',
  ],
  [
    'Spacing of the pins, 24 in panel joint',
    'length',
    range(25, 200),
    Math.max(...pitches),
    'German trade-school notes (HOBAAG)',
    'read',
  ],
  [
    'Spacing of the pins, 24 in panel joint',
    'length',
    range(inches(3), inches(12)),
    Math.max(...pitches),
    'Old public-domain handbook',
    'read',
  ],
  ...[4, 6, 8, 10, 12].map((diameter): Rule => [
    `Stock dowel of ${diameter} mm; nearest in the calculator’s stock`,
    'length',
    mm(diameter),
    [...metricDiameters].reduce((best, each) =>
      Math.abs(each - diameter) < Math.abs(best - diameter) ? each : best,
    ),
    'German trade-school notes (HOBAAG)',
    'read',
  ]),
  [
    'Clearance where a glue line begins to be called good; several thousandths, read as 2 to 8',
    'length',
    range(inches(0.002), inches(0.008)),
    fitBands.goodFrom,
    'Hoadley, ‘The Dowel Joint’, Fine Woodworking 21, 1980',
    'read',
  ],
  [
    'Clearance where a glue line ceases to be called good; several thousandths, read as 2 to 8',
    'length',
    range(inches(0.002), inches(0.008)),
    fitBands.goodTo,
    'Hoadley, ‘The Dowel Joint’, Fine Woodworking 21, 1980',
    'read',
  ],
  [
    'Glue line at the thick end of the good clearances',
    'length',
    0.1,
    fitBands.goodTo / 2,
    'EN 205:2016, thin glue line',
    'read',
  ],
];

/** Habits of the shop beside what the calculator does by itself. They differ, so none is judged. */
export const shopRuleRows: readonly CheckRow[] = rules.map(
  ([what, unit, published, computed, source, standing]) => ({
    what,
    unit,
    published,
    computed,
    tolerance: null,
    source,
    standing,
  }),
);
