import type { ProgressEvent } from './events.ts';

/** A misconception that the marking has named. */
export interface MistakeMet {
  /** Its id in content/misconceptions.yaml. */
  readonly id: string;
  /** How many answers it was in. */
  readonly times: number;
  /** When it was last met, in milliseconds since 1970 (UTC). */
  readonly last: number;
  /** How many questions that once had it were answered right since. */
  readonly mended: number;
}

/**
 * The misconceptions that a learner has met, the most frequent first.
 * @param events of one learner, in the order in which they happened
 */
export function mistakesMet(events: readonly ProgressEvent[]): readonly MistakeMet[] {
  const met = new Map<string, { times: number; last: number; mended: number }>();
  /** The mistakes made in a question that has not been answered right since. */
  const open = new Map<string, Set<string>>();
  for (const event of events) {
    if (event.kind !== 'answer') continue;
    const { question, at, right } = event;
    const waiting = open.get(question) ?? new Set();
    for (const id of new Set(event.mistakes)) {
      const { times, mended } = met.get(id) ?? { times: 0, mended: 0 };
      met.set(id, { times: times + 1, last: at, mended });
      waiting.add(id);
    }
    if (right) {
      for (const id of waiting) met.get(id)!.mended += 1;
      waiting.clear();
    }
    open.set(question, waiting);
  }
  return [...met]
    .map(([id, counts]) => ({ id, ...counts }))
    .sort((a, b) => b.times - a.times || b.last - a.last);
}
