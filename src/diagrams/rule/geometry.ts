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
}

/** Closer marks than this can't be told apart, px. */
export const LEAST_PITCH = 4;

/** The number before a place, or at it, and the number after, counted in finest marks. */
export function numbersAround(place: Mm, division: RuleDivision): readonly [number, number] {
  const numbered = markRanks(division)[0]!.every;
  const before = Math.floor(place / finestStep(division) / numbered + 1e-6) * numbered;
  return [before, before + numbered];
}

/**
 * The stretch that fits into `room` px: all that may be drawn if its marks can be told apart;
 * else less of it, but at least from the number before the line to the number after it.
 */
export function stretchOf(rule: MarkedRule, room: number): Stretch {
  const step = finestStep(rule.division);
  const [from, to] = [Math.round(rule.from / step), Math.round(rule.to / step)];
  const around = numbersAround(rule.line, rule.division);
  const [before, after] = [Math.max(from, around[0]), Math.min(to, around[1])];
  const most = Math.max(after - before, Math.floor(room / LEAST_PITCH));
  let [first, last] = [from, to];
  if (last - first > most) {
    const spare = most - (after - before);
    first = Math.max(from, Math.min(before - Math.floor(spare / 2), to - most));
    last = first + most;
  }
  return { first, last, pitch: Math.max(1, Math.floor(room / Math.max(1, last - first))) };
}

/** The marks from one to another, both counted in finest marks from the rule's zero. */
export function ticksOf(division: RuleDivision, from: number, to: number): readonly Tick[] {
  const ranks = markRanks(division);
  const numbered = ranks[0]!.every;
  const first = Math.max(0, from);
  return Array.from({ length: Math.max(0, to - first + 1) }, (_, i) => {
    const count = first + i;
    const value = division.unit === 'in' ? count / numbered : (count / numbered) * 10;
    return {
      count,
      tall: rankAt(count, ranks).tall,
      number: count % numbered === 0 && count > 0 ? String(value) : null,
    };
  });
}
