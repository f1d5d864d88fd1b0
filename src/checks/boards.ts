import { type SoldSize, type Standing, boardsAsSold, inches } from '../core/index.ts';
import type { CheckRow } from './checkRow.ts';

/** The calculator's size by the name it is sold under; NaN where it has none. */
function sold(group: RegExp, name: string, side: 'thickness' | 'width'): number {
  const sizes: readonly SoldSize[] | undefined = boardsAsSold.find((each) =>
    group.test(each.name),
  )?.sizes;
  return sizes?.find((each) => each.name === name)?.[side] ?? NaN;
}

/** Hardwood in quarters, inches when surfaced on two sides. */
const quarters: readonly (readonly [name: string, thickness: number])[] = [
  ['1/2', 5 / 16],
  ['5/8', 7 / 16],
  ['3/4', 9 / 16],
  ['4/4', 13 / 16],
  ['5/4', 1 + 1 / 16],
  ['6/4', 1 + 5 / 16],
  ['8/4', 1 + 3 / 4],
  ['12/4', 2 + 3 / 4],
  ['16/4', 3 + 3 / 4],
];

const standard = 'American Softwood Lumber Standard, NIST PS 20';
const gradingPage = `${standard}, at a grading agency’s page`;
const history = `${standard}, in a history of the standard`;

/** Softwood boards, dry and dressed, in inches. */
const softwood: readonly (readonly [
  name: string,
  side: 'thickness' | 'width',
  actual: number,
  source: string,
  standing: Standing,
])[] = [
  ['1 × 6', 'thickness', 3 / 4, gradingPage, 'read'],
  ['1 × 6', 'width', 5.5, gradingPage, 'read'],
  ['2 × 4', 'thickness', 3 / 2, history, 'read'],
  ['1 1/4 × 4', 'thickness', 1, standard, 'from memory'],
  ['1 1/2 × 4', 'thickness', 5 / 4, standard, 'from memory'],
  ['1 × 2', 'width', 1.5, standard, 'from memory'],
  ['1 × 3', 'width', 2.5, standard, 'from memory'],
  ['1 × 4', 'width', 3.5, standard, 'from memory'],
  ['1 × 8', 'width', 7.25, standard, 'from memory'],
  ['1 × 10', 'width', 9.25, standard, 'from memory'],
  ['1 × 12', 'width', 11.25, standard, 'from memory'],
];

/** What boards measure, by the name they are sold under. */
export const boardRows: readonly CheckRow[] = [
  ...quarters.map(([name, thickness]): CheckRow => ({
    what: `Hardwood ${name}, surfaced two sides: thickness`,
    unit: 'length',
    published: inches(thickness),
    computed: sold(/Hardwood/, name, 'thickness'),
    tolerance: 0,
    source: 'Hardwood thickness tables, surfaced two sides; three agree',
    standing: 'read',
  })),
  ...softwood.map(([name, side, actual, source, standing]): CheckRow => ({
    what: `Softwood ${name}, dry and dressed: ${side}`,
    unit: 'length',
    published: inches(actual),
    computed: sold(/Softwood/, name, side),
    tolerance: 0,
    source,
    standing,
  })),
];
