import type { ProgressEvent } from './events.ts';
import type { LessonState } from './lessonState.ts';

/**
 * A lesson's state in a few words.
 * @param questions how many its self-check asks today
 * @example stateInWords({ state: 'begun', right: 3 }, 6) // '3 of 6 right'
 */
export function stateInWords({ state, right }: LessonState, questions: number): string {
  if (state === 'not begun') return 'Not begun';
  if (state === 'begun') return right === 0 ? 'Begun' : `${right} of ${questions} right`;
  return right < questions ? `Finished, ${questions - right} new since` : 'Finished';
}

const day = new Intl.DateTimeFormat('en-US', { month: 'short', day: 'numeric', year: 'numeric' });

/**
 * A moment as a day where the reader is.
 * @param at in milliseconds since 1970 (UTC)
 */
export function dayOf(at: number): string {
  return day.format(at);
}

/**
 * What a learner goes by; empty before a name was typed.
 * @param events of one learner, in the order in which they happened
 */
export function nameOf(events: readonly ProgressEvent[]): string {
  return events.findLast((event) => event.kind === 'name')?.name ?? '';
}
