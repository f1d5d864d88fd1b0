import { type Mm, mm } from '../../core/length/mm.ts';
import { type RuleReading, buildUp } from './buildUp.ts';
import type { RuleDivision } from './division.ts';

/**
 * Where on the rule the board starts.
 * - `end`: at the rule's own end, its zero
 * - `worn`: at the end of a rule that has lost some steel
 * - `hook`: against a hook that stands off the end of the rule
 * - `number`: at the first number, the 1 of an inch rule or the 10 of a millimeter rule
 */
export type Start = 'end' | 'worn' | 'hook' | 'number';

/** A board laid on a rule. */
export interface Measuring {
  readonly division: RuleDivision;
  /** Length of the board, mm. */
  readonly length: Mm;
  readonly start: Start;
}

/** What wear has taken off the end of the rule, and how far its hook stands off, mm. */
const FAULT = { in: mm(25.4 / 32), mm: mm(1) } as const;
const FIRST_NUMBER = { in: mm(25.4), mm: mm(10) } as const;

/** Where things lie along the rule, from its zero, mm. */
export interface MeasuredPlaces {
  /** Where the steel ends. */
  readonly steel: Mm;
  /** Where the board starts: left of zero (negative) where a hook stands off. */
  readonly start: Mm;
  readonly middle: Mm;
  /** Where the board ends, which is what the rule shows. */
  readonly line: Mm;
}

/** Lays the board on the rule. */
export function placesOf({ division, length, start }: Measuring): MeasuredPlaces {
  const fault = FAULT[division.unit];
  const places: Record<Start, number> = {
    end: 0,
    worn: fault,
    hook: -fault,
    number: FIRST_NUMBER[division.unit],
  };
  const at = places[start];
  return {
    steel: mm(start === 'worn' ? fault : 0),
    start: mm(at),
    middle: mm(at + length / 2),
    line: mm(Math.max(0, at + length)),
  };
}

/** What the rule shows at the board's end. */
export function readingOf(measuring: Measuring): RuleReading {
  return buildUp(placesOf(measuring).line, measuring.division);
}
