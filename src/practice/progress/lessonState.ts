import type { ProgressEvent } from './events.ts';

/** How far a learner is with a lesson. Moments are milliseconds since 1970 (UTC). */
export interface LessonState {
  readonly state: 'not begun' | 'begun' | 'finished';
  /** How many of the questions that it asks today were once answered right. */
  readonly right: number;
  /** When something was last done in it. */
  readonly last?: number;
  /** When every question was first answered right. What is asked since doesn't take that away. */
  readonly finished?: number;
  /** The latest sign-off of its task in the shop; none where it was taken back. */
  readonly signedOff?: { readonly at: number; readonly bench: string };
}

/** The lesson in which something was done; undefined where it was done in none. */
export function lessonOf(event: ProgressEvent): string | undefined {
  if (event.kind === 'answer') return /^(.+)\//.exec(event.question)?.[1];
  return event.kind === 'name' ? undefined : event.lesson;
}

/**
 * How far a learner is with a lesson. It is begun once it was opened, a question of it answered or
 * its task signed off; it is finished once each question of its self-check was answered right.
 * @param events of one learner, in the order in which they happened
 * @param questions the identities of its self-check, with today's revisions: an answer to an
 *   earlier one doesn't count for a question that was changed
 */
export function lessonState(
  events: readonly ProgressEvent[],
  lesson: string,
  questions: readonly string[],
): LessonState {
  const right = new Set<string>();
  let last: number | undefined;
  let finished: number | undefined;
  let signedOff: LessonState['signedOff'];
  for (const event of events) {
    if (lessonOf(event) !== lesson) continue;
    last = event.at;
    if (event.kind === 'answer' && event.right && questions.includes(event.question)) {
      right.add(event.question);
      if (right.size === questions.length) finished ??= event.at;
    } else if (event.kind === 'finished') {
      finished ??= event.at;
    } else if (event.kind === 'sign-off') {
      signedOff = event.seen ? { at: event.at, bench: event.bench } : undefined;
    }
  }
  return {
    state: finished !== undefined ? 'finished' : last !== undefined ? 'begun' : 'not begun',
    right: right.size,
    ...(last !== undefined && { last }),
    ...(finished !== undefined && { finished }),
    ...(signedOff && { signedOff }),
  };
}

/** The lesson in which something was done last; undefined before anything was. */
export function lastLesson(events: readonly ProgressEvent[]): string | undefined {
  for (const event of events.toReversed()) {
    const lesson = lessonOf(event);
    if (lesson !== undefined) return lesson;
  }
  return undefined;
}
