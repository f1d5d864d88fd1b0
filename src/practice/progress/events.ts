import type { Given, Level, Made } from '../questions/types.ts';

/**
 * Something that a learner did. Events are only ever added, never changed: whatever is shown of a
 * learner's progress is worked out from them, and two machines' events are put together by
 * keeping each id once.
 */
export type ProgressEvent = AnswerEvent | LessonEvent | SignOffEvent | NameEvent;

/** The form in which events are kept; raised when an older edition could not read them any more. */
export const EVENT_VERSION = 1;

/** What every event has. */
export interface Happened {
  readonly version: typeof EVENT_VERSION;
  /** Random: no two events have the same, on whatever machines. */
  readonly id: string;
  /** Who did it, by a random id; see `learnersOf` for the names. */
  readonly learner: string;
  /** When, by that machine's clock, in milliseconds since 1970 (UTC). */
  readonly at: number;
  /** The calculator and the questions of that day; see `versions.ts`. */
  readonly calc: number;
  readonly bank: number;
}

/** A question was answered and marked. What could not be read is not an answer. */
export interface AnswerEvent extends Happened {
  readonly kind: 'answer';
  /** The question's identity: `lesson/id@revision` or `template@revision:seed`. */
  readonly question: string;
  /** What a made question was made from, its seed and level among it. */
  readonly made?: Made;
  readonly given: Given;
  /** What the learner was told. */
  readonly right: boolean;
  /** The misconceptions that the marking named, by their ids. */
  readonly mistakes: readonly string[];
}

/** A lesson was opened, or all its self-check has been answered right. */
export interface LessonEvent extends Happened {
  readonly kind: 'opened' | 'finished';
  readonly lesson: string;
}

/** A person who watched ticked the box of a lesson's task in the shop, or took the tick back. */
export interface SignOffEvent extends Happened {
  readonly kind: 'sign-off';
  readonly lesson: string;
  /** The bench, as it was typed. */
  readonly bench: string;
  readonly seen: boolean;
}

/** The learner goes by this name from now on: 'Bench 3'. */
export interface NameEvent extends Happened {
  readonly kind: 'name';
  readonly name: string;
}

/** An event without what every event has. */
export type Deed =
  | Pick<AnswerEvent, 'kind' | 'question' | 'made' | 'given' | 'right' | 'mistakes'>
  | Pick<LessonEvent, 'kind' | 'lesson'>
  | Pick<SignOffEvent, 'kind' | 'lesson' | 'bench' | 'seen'>
  | Pick<NameEvent, 'kind' | 'name'>;

/** The parts of a question's identity. */
export interface IdentityParts {
  /** The lesson whose file asks it; undefined for a made one. */
  readonly lesson?: string;
  /** Its id in the lesson, or its template. */
  readonly id: string;
  readonly revision: number;
  /** Of a made one. */
  readonly seed?: number;
}

const IDENTITY = /^(?:([a-z\d-]+)\/)?([a-zA-Z\d-]+)@(\d{1,4})(?::(\d{1,10}))?$/;

/**
 * Takes a question's identity apart.
 * @returns null where it is none
 * @example partsOf('setting-the-stop/set-it@2') // { lesson: 'setting-the-stop', id: 'set-it', revision: 2 }
 */
export function partsOf(identity: string): IdentityParts | null {
  const [, lesson, id, revision, seed] = IDENTITY.exec(identity) ?? [];
  if (id === undefined || (lesson === undefined) === (seed === undefined)) return null;
  return {
    ...(lesson !== undefined && { lesson }),
    id,
    revision: Number(revision),
    ...(seed !== undefined && { seed: Number(seed) }),
  };
}

/** How much of the question was worked out for the learner. */
export function levelOf({ made }: AnswerEvent): Level {
  return made?.level ?? 'own';
}
