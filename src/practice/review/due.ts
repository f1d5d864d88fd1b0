import { type ProgressEvent, partsOf } from '../progress/events.ts';
import { type Miss, type Standing, afterAnswer } from './schedule.ts';

/** Something that can be asked again: a question of a lesson, or a template with fresh numbers. */
export interface Reviewable {
  /** `lesson/id` of a lesson's question, or the id of a template. */
  readonly id: string;
  /** The lesson that it belongs to. */
  readonly lesson: string;
}

/** Something that is to be asked again, and why. */
export interface Due extends Reviewable {
  /** Since when, in milliseconds since 1970 (UTC). */
  readonly due: number;
  /** When it was last answered. */
  readonly last: number;
  /** What it was missed with; none where it was known, and the days have passed. */
  readonly missed?: Miss;
}

/** Which reviewable a question is, by its identity: its revision and its numbers don't matter. */
export function reviewableId(identity: string): string | null {
  const parts = partsOf(identity);
  return parts && (parts.lesson === undefined ? parts.id : `${parts.lesson}/${parts.id}`);
}

/**
 * What has become of everything that was answered, by the ids of reviewables.
 * @param events of one learner, in the order in which they happened
 */
export function standings(events: readonly ProgressEvent[]): ReadonlyMap<string, Standing> {
  const found = new Map<string, Standing>();
  for (const event of events) {
    if (event.kind !== 'answer') continue;
    const id = reviewableId(event.question);
    if (id !== null) found.set(id, afterAnswer(found.get(id), event));
  }
  return found;
}

/**
 * What is to be asked again by now: first what was missed, then what was known; of each, what has
 * waited longest.
 * @param events of one learner, in the order in which they happened
 * @param now in milliseconds since 1970 (UTC)
 * @param known what there is to ask today; what is there no more is not due
 */
export function dueForReview(
  events: readonly ProgressEvent[],
  now: number,
  known: readonly Reviewable[],
): readonly Due[] {
  const found = standings(events);
  return known
    .flatMap(({ id, lesson }): Due[] => {
      const standing = found.get(id);
      if (!standing || standing.due > now) return [];
      const { due, last, missed } = standing;
      return [{ id, lesson, due, last, ...(missed && { missed }) }];
    })
    .sort(
      (one, other) =>
        Number(!one.missed) - Number(!other.missed) ||
        one.due - other.due ||
        (one.id < other.id ? -1 : 1),
    );
}

/**
 * When the next of what is not due yet will be, in milliseconds since 1970 (UTC); undefined where
 * everything is due, or nothing was answered.
 */
export function nextDue(
  events: readonly ProgressEvent[],
  now: number,
  known: readonly Reviewable[],
): number | undefined {
  const found = standings(events);
  const moments = known.flatMap(({ id }) => found.get(id)?.due ?? []).filter((due) => due > now);
  return moments.length === 0 ? undefined : Math.min(...moments);
}
