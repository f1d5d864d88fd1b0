import type { Mm } from '../../core/length/mm.ts';
import { type RuleDivision, finestStep, markRanks, rankAt } from './division.ts';

/** A rule with a line that meets it. */
export interface MarkedRule {
  readonly division: RuleDivision;
  /** The stretch of it that may be drawn, from the rule's end, mm. */
  readonly from: Mm;
  readonly to: Mm;
  /** Where the line meets it, from the rule's end, mm. */
  readonly line: Mm;
}

/** One mark of a rule. */
export interface Tick {
  /** Counted in finest marks from the rule's zero. */
  readonly count: number;
  /** Length of the mark, as a part of the longest. */
  readonly tall: number;
  /** The number that stands at it, if one does. */
  readonly number: string | null;
}

/** The stretch of a rule that is drawn, its places counted in finest marks. */
export interface Stretch {
  readonly first: number;
  readonly last: number;
  /** Px from one mark to the next: whole, so that every mark is equally sharp. */
  readonly pitch: number;
  readonly ticks: readonly Tick[];
}

/** Closer marks than this can't be told apart, px. */
const LEAST_PITCH = 4;

/**
 * The stretch that fits into `room` px: all that may be drawn if its marks can be told apart;
 * else less of it, but at least from the number before the line to the number after it.
 */
export function stretchOf(rule: MarkedRule, room: number): Stretch {
  const step = finestStep(rule.division);
  const ranks = markRanks(rule.division);
  const numbered = ranks[0]!.every;
  const [from, to] = [Math.round(rule.from / step), Math.round(rule.to / step)];
  const before = Math.max(from, Math.floor(rule.line / step / numbered + 1e-6) * numbered);
  const after = Math.min(to, before + numbered);
  const most = Math.max(after - before, Math.floor(room / LEAST_PITCH));
  let [first, last] = [from, to];
  if (last - first > most) {
    const spare = most - (after - before);
    first = Math.max(from, Math.min(before - Math.floor(spare / 2), to - most));
    last = first + most;
  }
  return {
    first,
    last,
    pitch: Math.max(1, Math.floor(room / Math.max(1, last - first))),
    ticks: Array.from({ length: last - first + 1 }, (_, i) => {
      const count = first + i;
      const { tall } = rankAt(count, ranks);
      const isNumbered = count % numbered === 0 && count > 0;
      const value = rule.division.unit === 'in' ? count / numbered : (count / numbered) * 10;
      return { count, tall, number: isNumbered ? String(value) : null };
    }),
  };
}
