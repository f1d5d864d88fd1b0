import { type Mm, mm } from '../../core/length/mm.ts';
import { type MarkRank, type RuleDivision, finestStep, markRanks, rankAt } from './division.ts';

/** Marks of one kind on the way from the last number to the line. */
export interface ReadingPart {
  readonly rank: MarkRank;
  /** How many of them; in inches 1, in millimeters up to 4. */
  readonly count: number;
  /** From where to where on the rule, mm. */
  readonly from: Mm;
  readonly to: Mm;
}

/** A place on a rule as it is read: the last number, then the longest marks first. */
export interface RuleReading {
  /** The mark nearest to the place, counted in finest marks from zero. */
  readonly mark: number;
  /** The length that this mark stands for, mm. */
  readonly length: Mm;
  /** How far the place itself lies beyond the mark (negative: short of it), mm. */
  readonly beyond: Mm;
  readonly rank: MarkRank;
  /** The last number before the mark, or on it: what it stands for, mm. */
  readonly number: Mm;
  /** Finest marks from that number on. */
  readonly past: number;
  /** From that number to the mark. */
  readonly parts: readonly ReadingPart[];
}

/**
 * Reads a place on a rule.
 * @param place from the rule's zero, 0 and more, in mm
 * @example buildUp(inches(2 + 23 / 32), { unit: 'in', denominator: 32 }).parts
 * // a half, an eighth, a sixteenth, a thirty-second
 */
export function buildUp(place: Mm, division: RuleDivision): RuleReading {
  const step = finestStep(division);
  const ranks = markRanks(division);
  const mark = Math.max(0, Math.round(place / step));
  const numbered = ranks[0]!.every;
  const past = mark % numbered;
  const parts: ReadingPart[] = [];
  let at = mark - past;
  for (const rank of ranks.slice(1)) {
    const count = Math.floor((mark - at) / rank.every);
    if (count === 0) continue;
    const to = at + count * rank.every;
    parts.push({ rank, count, from: mm(at * step), to: mm(to * step) });
    at = to;
  }
  return {
    mark,
    length: mm(mark * step),
    beyond: mm(place - mark * step),
    rank: rankAt(mark, ranks),
    number: mm((mark - past) * step),
    past,
    parts,
  };
}
