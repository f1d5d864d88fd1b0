import type { AnswerEvent, ProgressEvent } from '../../practice/progress/events.ts';
import { type LessonState, lessonState as stateIn } from '../../practice/progress/lessonState.ts';
import type { Given, Marked, Question } from '../../practice/questions/types.ts';
import { log } from './log.ts';

/** The log for islands: whatever reads it in markup or a `$derived` follows. */
class Progress {
  #events = $state.raw<readonly ProgressEvent[]>([]);
  #trouble = $state('');

  constructor() {
    if (typeof document === 'undefined') return;
    log.listen(() => {
      this.#events = log.events;
      this.#trouble = log.trouble;
    });
    void log.open();
  }

  /** What the learner has done, in the order in which it happened. */
  get events(): readonly ProgressEvent[] {
    return this.#events;
  }

  /** Why what is done now is not kept, in a sentence for the page; empty while it is. */
  get trouble(): string {
    return this.#trouble;
  }
}

export const progress = new Progress();

/** Keeps an answer that was marked. What could not be read is no answer, and is not kept. */
export function recordAnswer(question: Question, given: Given, marked: Marked): void {
  if (marked.verdict === 'unreadable') return;
  void log.append({
    kind: 'answer',
    question: question.identity,
    ...(question.made && { made: question.made }),
    given,
    right: marked.verdict === 'right',
    mistakes: marked.remarks.flatMap(({ misconception }) => misconception?.id ?? []),
  });
}

/** Keeps that a lesson's task in the shop was seen and signed off, or that this is taken back. */
export function recordSignOff(lesson: string, bench: string, seen: boolean): void {
  void log.append({ kind: 'sign-off', lesson, bench, seen });
}

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
