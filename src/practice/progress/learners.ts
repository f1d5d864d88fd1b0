import type { ProgressEvent } from './events.ts';

/** Somebody who has learned at this machine, or whose progress was brought here. */
export interface Learner {
  readonly id: string;
  /** What the learner goes by; empty before a name was typed. */
  readonly name: string;
  /** How many answers are kept. */
  readonly answers: number;
}

/**
 * Everybody who did anything, the first one first.
 * @param events in the order in which they happened
 */
export function learnersOf(events: readonly ProgressEvent[]): readonly Learner[] {
  const found = new Map<string, Learner>();
  for (const event of events) {
    const { id, name, answers } = found.get(event.learner) ?? {
      id: event.learner,
      name: '',
      answers: 0,
    };
    found.set(id, {
      id,
      name: event.kind === 'name' ? event.name : name,
      answers: event.kind === 'answer' ? answers + 1 : answers,
    });
  }
  return [...found.values()];
}
