import type { Asked } from '../../practice/review/sitting.ts';
import type { Due } from '../../practice/review/due.ts';

const NUMBERS = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** Where the reader is, days begin at midnight; the longest of them has 25 hours. */
function daysBetween(at: number, now: number): number {
  const midnight = (moment: number) => new Date(moment).setHours(0, 0, 0, 0);
  return Math.round((midnight(now) - midnight(at)) / 86_400_000);
}

/**
 * How long ago a moment was, in words of days.
 * @param at in milliseconds since 1970 (UTC), and `now` likewise
 * @example ago(now - 2 * 86_400_000, now) // 'two days ago'
 */
export function ago(at: number, now: number): string {
  const days = daysBetween(at, now);
  if (days <= 0) return 'today';
  if (days === 1) return 'yesterday';
  return `${NUMBERS[days - 2] ?? days} days ago`;
}

/**
 * How soon a moment is, in words of days.
 * @example until(now + 86_400_000, now) // 'tomorrow'
 */
export function until(at: number, now: number): string {
  const days = daysBetween(now, at);
  if (days <= 0) return 'later today';
  if (days === 1) return 'tomorrow';
  return `in ${NUMBERS[days - 2] ?? days} days`;
}

function lowerCase(name: string): string {
  return `${name[0]?.toLowerCase() ?? ''}${name.slice(1)}`;
}

/**
 * Why something is due, in a few words.
 * @param names misconceptions' names by their ids
 * @example 'Missed two days ago: forgot the point'
 */
export function whyDue(
  { missed, last }: Due,
  now: number,
  names: ReadonlyMap<string, string>,
): string {
  if (!missed) return `Right ${ago(last, now)}: does it stay?`;
  const mistakes = [...new Set(missed.mistakes)].flatMap((id) => names.get(id) ?? []);
  const what = mistakes.map(lowerCase).join(', ');
  return `Missed ${ago(missed.at, now)}${what && `: ${what}`}`;
}

/** Why something is asked in this sitting, in a few words. */
export function whyAsked(asked: Asked, now: number, names: ReadonlyMap<string, string>): string {
  switch (asked.why) {
    case 'due':
      return whyDue(asked, now, names);
    case 'new':
      return 'New, from a lesson that you are at';
    case 'ahead':
      return 'New, from a lesson that you have not begun';
    case 'early':
      return 'Not due yet, for practice';
  }
}
