import type { Given, Marked, Question } from '../../practice/questions/types.ts';
import { log } from './log.ts';

/**
 * Keeps an answer that was marked. What could not be read is no answer, and is not kept.
 * @param given plain data: of a rune's state, its snapshot
 */
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

/**
 * Keeps that a lesson's task in the shop was seen and signed off, or that this is taken back.
 * @param bench as it was typed, at most 40 characters
 */
export function recordSignOff(lesson: string, bench: string, seen: boolean): void {
  void log.append({ kind: 'sign-off', lesson, bench: bench.trim(), seen });
}
