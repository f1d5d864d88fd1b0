import type { AnswerEvent } from '../progress/events.ts';

/**
 * After how many days something that was known is asked again, each time that it is still known. A
 * fixed schedule that gets wider, and no model of memory: what spacing gains hardly depends on the
 * exact schedule (Latimier and others, 2021), and a student can be told this one.
 */
export const REVIEW_DAYS = [1, 3, 7, 16, 35, 70] as const;

const HOUR = 3_600_000;

/** A class that meets on Tuesday at nine has Monday's evening behind it: that is a day. */
const SHORT_OF_A_DAY = 8 * HOUR;

/** What has become of something that was asked. Moments are milliseconds since 1970 (UTC). */
export interface Standing {
  /** The wait of `REVIEW_DAYS` that it is in, counted from 1; 0 where it was missed just now. */
  readonly wait: number;
  /** From when on it is to be asked again. */
  readonly due: number;
  /** When it was last answered. */
  readonly last: number;
  /** The last miss, until it was known again on another day. */
  readonly missed?: Miss;
}

/** A wrong answer that is still to be made good. */
export interface Miss {
  readonly at: number;
  /** What the marking named, by ids of content/misconceptions.yaml. */
  readonly mistakes: readonly string[];
  /** It was answered right since, having read why. */
  readonly mended: boolean;
}

function waiting(wait: number, from: number): Pick<Standing, 'wait' | 'due' | 'last'> {
  const longest = REVIEW_DAYS.length;
  const days = REVIEW_DAYS[Math.min(wait, longest) - 1]!;
  return {
    wait: Math.min(wait, longest),
    due: from + days * 24 * HOUR - SHORT_OF_A_DAY,
    last: from,
  };
}

/**
 * What an answer makes of it. Missed, it is due at once; then answered right with the explanation
 * still in mind, on the next day; known when it was due, after the next wait. An answer before it
 * was due changes nothing but when it was last seen.
 * @param before undefined where it has not been answered before
 */
export function afterAnswer(
  before: Standing | undefined,
  { at, right, mistakes }: Pick<AnswerEvent, 'at' | 'right' | 'mistakes'>,
): Standing {
  if (!right) return { wait: 0, due: at, last: at, missed: { at, mistakes, mended: false } };
  if (!before) return waiting(1, at);
  const { missed } = before;
  if (missed && !missed.mended) return { ...waiting(1, at), missed: { ...missed, mended: true } };
  return at < before.due ? { ...before, last: at } : waiting(before.wait + 1, at);
}
