import { Draws } from '../made/draws.ts';
import { type ProgressEvent } from '../progress/events.ts';
import { lessonOf } from '../progress/lessonState.ts';
import { type Due, type Reviewable, dueForReview, standings } from './due.ts';

/** Something that is asked in a sitting, and why. */
export type Asked =
  | (Due & { readonly why: 'due' })
  /** Nobody has answered it yet, in a lesson that was begun or in one that was not. */
  | (Reviewable & { readonly why: 'new' | 'ahead' })
  /** Not due yet; there is nothing else. */
  | (Reviewable & { readonly why: 'early' });

export interface SittingOptions {
  /** In milliseconds since 1970 (UTC). */
  readonly now: number;
  /** A whole number of 32 bits, from 0: which of what is not due comes, and in what order. */
  readonly seed: number;
  /** How many questions at most. */
  readonly count: number;
}

/** One of each lesson, then the next of each, and so on; the lessons in the order of the list. */
function inTurns(list: readonly Reviewable[]): readonly Reviewable[] {
  const turns = new Map<string, number>();
  return list
    .map((item) => {
      const turn = turns.get(item.lesson) ?? 0;
      turns.set(item.lesson, turn + 1);
      return { item, turn };
    })
    .sort((one, other) => one.turn - other.turn)
    .map(({ item }) => item);
}

/** In the same order as far as can be, but no two of one lesson in a row while there is another. */
function mixed<Item extends Reviewable>(list: readonly Item[]): readonly Item[] {
  const left = [...list];
  const out: Item[] = [];
  while (left.length > 0) {
    const other = left.findIndex(({ lesson }) => lesson !== out.at(-1)?.lesson);
    out.push(...left.splice(Math.max(0, other), 1));
  }
  return out;
}

/**
 * The questions of one sitting, mixed across lessons: what is due, then what is new in lessons that
 * were begun, then what is new in the next lessons of the course, then what is not due yet. None
 * comes twice. The same events, moment and seed give the same sitting.
 * @param events of one learner, in the order in which they happened
 * @param known what there is to ask, in the order of the course
 */
export function sittingOf(
  events: readonly ProgressEvent[],
  known: readonly Reviewable[],
  { now, seed, count }: SittingOptions,
): readonly Asked[] {
  const due = dueForReview(events, now, known);
  const found = standings(events);
  const begun = new Set(events.flatMap((event) => lessonOf(event) ?? []));
  for (const { id, lesson } of known) if (found.has(id)) begun.add(lesson);
  const shuffled = new Draws(`sitting:${seed}`).shuffled(known);
  // Shuffled within each lesson; the lessons stay in the order of the course.
  const order = [...new Set(known.map(({ lesson }) => lesson))];
  const byLesson = shuffled.toSorted(
    (one, other) => order.indexOf(one.lesson) - order.indexOf(other.lesson),
  );
  // A lesson's own questions are asked in the lesson first.
  const fresh = inTurns(byLesson.filter(({ id }) => !found.has(id) && !id.includes('/')));
  const isDue = new Set(due.map(({ id }) => id));
  const early = byLesson
    .filter(({ id }) => found.has(id) && !isDue.has(id))
    .toSorted((one, other) => found.get(one.id)!.due - found.get(other.id)!.due);
  const asked: readonly Asked[] = [
    ...due.map((each) => ({ ...each, why: 'due' }) as const),
    ...fresh
      .filter(({ lesson }) => begun.has(lesson))
      .map((each) => ({ ...each, why: 'new' }) as const),
    ...fresh
      .filter(({ lesson }) => !begun.has(lesson))
      .map((each) => ({ ...each, why: 'ahead' }) as const),
    ...early.map((each) => ({ ...each, why: 'early' }) as const),
  ];
  return mixed(asked.slice(0, count));
}
