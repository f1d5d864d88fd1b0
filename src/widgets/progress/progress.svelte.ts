import type { AnswerEvent, ProgressEvent } from '../../practice/progress/events.ts';
import { type LessonState, lessonState as stateIn } from '../../practice/progress/lessonState.ts';
import { log } from './log.ts';

export { recordAnswer } from './record.ts';

/** The log for islands: whatever reads it in markup or a `$derived` follows. */
class Progress {
  // Another script of the page may have read the log before this one came.
  #events = $state.raw<readonly ProgressEvent[]>(log.events);

  constructor() {
    if (typeof document === 'undefined') return;
    log.listen(() => {
      this.#events = log.events;
    });
    void log.open();
  }

  /** What the learner has done, in the order in which it happened. */
  get events(): readonly ProgressEvent[] {
    return this.#events;
  }
}

export const progress = new Progress();

/**
 * The learner's answers to a question, the first one first.
 * @param identity of this revision of it, and this seed: `lesson/id@revision` or `template@revision:seed`
 */
export function answersOf(identity: string): readonly AnswerEvent[] {
  return progress.events.filter(
    (event) => event.kind === 'answer' && event.question === identity,
  ) as readonly AnswerEvent[];
}

/**
 * How far the learner is with a lesson.
 * @param questions the identities of its self-check
 */
export function lessonState(lesson: string, questions: readonly string[]): LessonState {
  return stateIn(progress.events, lesson, questions);
}
