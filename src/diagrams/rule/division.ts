import { type Mm, mm } from '../../core/length/mm.ts';

/** The finest marks of a rule. */
export type RuleDivision =
  | { readonly unit: 'in'; readonly denominator: 16 | 32 | 64 }
  | { readonly unit: 'mm'; readonly step: 0.5 | 1 };

/** Marks of one length on a rule: the longer they are, the farther they stand apart. */
export interface MarkRank {
  /** How many of the finest marks it is from one of these to the next. */
  readonly every: number;
  /** From one of these to the next, mm. */
  readonly apart: Mm;
  /** Length of the mark, as a part of the longest on the rule. */
  readonly tall: number;
  /** What one is called: 'thirty-second', '5 mm mark'. */
  readonly name: string;
}

/** An inch halved again and again: which part, its name, the length of its mark. */
const INCH_MARKS: readonly (readonly [parts: number, name: string, tall: number])[] = [
  [1, 'whole inch', 1],
  [2, 'half', 0.8],
  [4, 'quarter', 0.63],
  [8, 'eighth', 0.48],
  [16, 'sixteenth', 0.36],
  [32, 'thirty-second', 0.26],
  [64, 'sixty-fourth', 0.18],
];

const MILLIMETER_MARKS: readonly (readonly [size: number, name: string, tall: number])[] = [
  [10, '10 mm mark', 1],
  [5, '5 mm mark', 0.72],
  [1, 'millimeter', 0.46],
  [0.5, 'half millimeter', 0.28],
];

/** From one of the finest marks to the next, mm. */
export function finestStep(division: RuleDivision): Mm {
  return mm(division.unit === 'in' ? 25.4 / division.denominator : division.step);
}

/** The marks of a rule, from the numbered ones to the finest. */
export function markRanks(division: RuleDivision): readonly MarkRank[] {
  if (division.unit === 'in') {
    const { denominator } = division;
    return INCH_MARKS.filter(([parts]) => parts <= denominator).map(([parts, name, tall]) => ({
      every: denominator / parts,
      apart: mm(25.4 / parts),
      tall,
      name,
    }));
  }
  const { step } = division;
  return MILLIMETER_MARKS.filter(([size]) => size >= step).map(([size, name, tall]) => ({
    every: size / step,
    apart: mm(size),
    tall,
    name,
  }));
}

/** The longest kind of mark that stands at the mark of this count from the rule's zero. */
export function rankAt(count: number, ranks: readonly MarkRank[]): MarkRank {
  return ranks.find(({ every }) => count % every === 0)!;
}
