import type { JointKind, System } from '../../core/joint/types.ts';
import { mm } from '../../core/length/mm.ts';
import { type Given, LEVELS, type Limits, type Made } from '../questions/types.ts';
import { benchName } from './benchName.ts';
import { type ProgressEvent, partsOf } from './events.ts';
import { type VersionedEvent, broughtUp, inOrder } from './stored.ts';

/** The form of the file; raised when an older edition could not read it any more. */
const FILE_VERSION = 1;

/** No file that is read is longer, in characters: some years of a class at one machine. */
export const LONGEST_FILE = 20_000_000;

/** No file holds more entries. */
export const MOST_EVENTS = 50_000;

const DAY = 24 * 60 * 60 * 1000;

/** The text of a file with these events; `readProgressFile` makes them events again. */
export function progressFile(events: readonly (ProgressEvent | VersionedEvent)[]): string {
  const lines = events.map((event) => JSON.stringify(event));
  return `{"progress":${FILE_VERSION},"events":[\n${lines.join(',\n')}\n]}\n`;
}

/** Entries of a file that are not taken, and why. */
export interface Refusal {
  readonly count: number;
  /** Goes on from '3 entries' or 'One entry'; a plain fragment without a full stop. */
  readonly why: string;
}

export type ReadProgressFile =
  | {
      readonly ok: true;
      /** In the order in which they happened. */
      readonly events: readonly ProgressEvent[];
      readonly refusals: readonly Refusal[];
    }
  | { readonly ok: false; readonly reason: string };

/** Thrown while reading an entry, to be counted at the door. */
class EntryFault extends Error {}

const NOT_AS_KEPT = 'not as this workbook keeps it';

function isRecord(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Fields of an entry that may hold anything. Only what is asked for is ever taken over. */
class Fields {
  readonly #fields: object;

  constructor(value: unknown) {
    if (!isRecord(value)) throw new EntryFault(NOT_AS_KEPT);
    this.#fields = value;
  }

  get(name: string): unknown {
    return Object.hasOwn(this.#fields, name)
      ? (this.#fields as Record<string, unknown>)[name]
      : undefined;
  }

  text(name: string, pattern: RegExp): string {
    const value = this.get(name);
    if (typeof value !== 'string' || !pattern.test(value)) throw new EntryFault(NOT_AS_KEPT);
    return value;
  }

  whole(name: string, least: number, most: number): number {
    const value = this.get(name);
    if (!Number.isInteger(value) || (value as number) < least || (value as number) > most) {
      throw new EntryFault(NOT_AS_KEPT);
    }
    return value as number;
  }

  flag(name: string): boolean {
    const value = this.get(name);
    if (typeof value !== 'boolean') throw new EntryFault(NOT_AS_KEPT);
    return value;
  }

  oneOf<Choice extends string>(name: string, choices: readonly Choice[]): Choice {
    const found = choices.find((choice) => choice === this.get(name));
    if (found === undefined) throw new EntryFault(NOT_AS_KEPT);
    return found;
  }

  list<Item>(name: string, most: number, read: (item: unknown) => Item): readonly Item[] {
    const value = this.get(name);
    if (!Array.isArray(value) || value.length > most) throw new EntryFault(NOT_AS_KEPT);
    return value.map(read);
  }

  texts(name: string, pattern: RegExp): readonly string[] {
    return this.list(name, 40, (item) => {
      if (typeof item !== 'string' || !pattern.test(item)) throw new EntryFault(NOT_AS_KEPT);
      return item;
    });
  }
}

const RANDOM_ID = /^[\da-f]{24}$/;
const NAME = /^[a-z\d-]{1,60}$/;
const CHOICE = /^.{1,60}$/s;
const IDENTITY = /^.{1,100}$/;
const TYPED = /^.{0,200}$/s;

function givenFrom(value: unknown): Given {
  const fields = new Fields(value);
  const kind = fields.oneOf('kind', ['one', 'several', 'fault', 'length', 'rule', 'order']);
  switch (kind) {
    case 'length':
    case 'rule':
      return { kind, text: fields.text('text', TYPED), unit: fields.oneOf('unit', ['in', 'mm']) };
    case 'order':
      return { kind, steps: fields.texts('steps', CHOICE) };
    default:
      return { kind, choices: fields.texts('choices', CHOICE) };
  }
}

const SYSTEMS: readonly System[] = ['in', 'mm'];
const JOINTS: readonly JointKind[] = ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'];

function lengthFrom(value: unknown) {
  if (typeof value !== 'number' || !(value >= 0 && value <= 1000))
    throw new EntryFault(NOT_AS_KEPT);
  return mm(value);
}

function limitsFrom(value: unknown): Limits {
  const fields = new Fields(value);
  return {
    ...(fields.get('joints') !== undefined && {
      joints: fields.texts('joints', NAME).map((name) => {
        const found = JOINTS.find((kind) => kind === name);
        if (!found) throw new EntryFault(NOT_AS_KEPT);
        return found;
      }),
    }),
    ...(fields.get('thicknesses') !== undefined && {
      thicknesses: fields.list('thicknesses', 40, lengthFrom),
    }),
    ...(fields.get('tolerance') !== undefined && {
      tolerance: lengthFrom(fields.get('tolerance')),
    }),
  };
}

/** What a made question was made from has to agree with the question's identity. */
function madeFrom(value: unknown, question: string): Made {
  const fields = new Fields(value);
  const limits = fields.get('limits');
  const parts = partsOf(question);
  const made: Made = {
    template: fields.text('template', NAME),
    revision: fields.whole('revision', 0, 9999),
    seed: fields.whole('seed', 0, 2 ** 32 - 1),
    system: fields.oneOf('system', SYSTEMS),
    level: fields.oneOf('level', LEVELS),
    ...(limits !== undefined && { limits: limitsFrom(limits) }),
  };
  if (made.template !== parts?.id || made.revision !== parts.revision || made.seed !== parts.seed) {
    throw new EntryFault(NOT_AS_KEPT);
  }
  return made;
}

function nameFrom(fields: Fields, name: string): string {
  return benchName(fields.text(name, /^.{0,100}$/s));
}

function eventFrom(value: unknown, now: number): ProgressEvent {
  const version = new Fields(value).whole('version', 1, 9999);
  const today = broughtUp({ ...(value as object), version });
  if (!today) throw new EntryFault('of a newer edition of this workbook');
  const fields = new Fields(today);
  const happened = {
    version: 1 as const,
    id: fields.text('id', RANDOM_ID),
    learner: fields.text('learner', RANDOM_ID),
    at: fields.whole('at', 0, Number.MAX_SAFE_INTEGER),
    calc: fields.whole('calc', 1, 9999),
    bank: fields.whole('bank', 1, 9999),
  };
  // Clocks of two machines may differ, and so may their days.
  if (happened.at > now + DAY) throw new EntryFault('dated in the future');
  const kind = fields.get('kind');
  switch (kind) {
    case 'answer': {
      const question = fields.text('question', IDENTITY);
      const made = fields.get('made');
      const seed = partsOf(question)?.seed;
      if (!partsOf(question) || (seed === undefined) !== (made === undefined)) {
        throw new EntryFault(NOT_AS_KEPT);
      }
      return {
        ...happened,
        kind,
        question,
        ...(made !== undefined && { made: madeFrom(made, question) }),
        given: givenFrom(fields.get('given')),
        right: fields.flag('right'),
        mistakes: fields.texts('mistakes', NAME),
      };
    }
    case 'opened':
    case 'finished':
      return { ...happened, kind, lesson: fields.text('lesson', NAME) };
    case 'sign-off':
      return {
        ...happened,
        kind,
        lesson: fields.text('lesson', NAME),
        bench: nameFrom(fields, 'bench'),
        seen: fields.flag('seen'),
      };
    case 'name':
      return { ...happened, kind, name: nameFrom(fields, 'name') };
    default:
      throw new EntryFault('of a kind that this edition does not know');
  }
}

/**
 * Reads a file of progress. Files come from anyone: whatever is in one, this returns events whose
 * every field is as it should be, with the reasons why the others are left out, or a sentence that
 * says why there is nothing to take; it never throws.
 * @param text the file's
 * @param now in milliseconds since 1970 (UTC): what is dated more than a day later is refused
 */
export function readProgressFile(text: string, now: number): ReadProgressFile {
  const refused = (why: string): ReadProgressFile => ({
    ok: false,
    reason: `This file can’t be read: ${why}.`,
  });
  if (text.length > LONGEST_FILE) return refused('it is longer than any that is saved here');
  let file: unknown;
  try {
    file = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return refused('it is cut off or damaged, or is another sort of file');
  }
  const fields = new Fields(isRecord(file) ? file : {});
  const version = fields.get('progress');
  if (version === undefined) return refused('it is not progress that was saved here');
  if (version !== FILE_VERSION) return refused('it is of a newer edition of this workbook');
  const entries = fields.get('events');
  if (!Array.isArray(entries) || entries.length > MOST_EVENTS) {
    return refused('its entries are no list, or too many');
  }
  const events = new Map<string, ProgressEvent>();
  const refusals = new Map<string, number>();
  for (const entry of entries) {
    try {
      const event = eventFrom(entry, now);
      if (events.has(event.id)) throw new EntryFault('in it twice, and taken once');
      events.set(event.id, event);
    } catch (fault) {
      if (!(fault instanceof EntryFault)) throw fault;
      refusals.set(fault.message, (refusals.get(fault.message) ?? 0) + 1);
    }
  }
  return {
    ok: true,
    events: inOrder([...events.values()]),
    refusals: [...refusals].map(([why, count]) => ({ why, count })),
  };
}
