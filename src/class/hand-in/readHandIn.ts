import { LARGEST_SEED } from '../../practice/made/index.ts';
import type { Given } from '../../practice/questions/types.ts';
import { MOST } from '../assignment/assignment.ts';
import type { Key } from './answerKey.ts';
import { type Answer, HAND_IN_VERSION, type HandIn, handInCode } from './handIn.ts';

export type ReadHandIn =
  | {
      readonly ok: true;
      readonly handIn: HandIn;
      /** What the file's content comes to. */
      readonly code: string;
      /** The code that stands in the file is another: it was changed after it was saved. */
      readonly edited: boolean;
    }
  | { readonly ok: false; readonly reason: string };

/** No hand-in is longer, in characters: forty questions with their longest answers need a third. */
export const LONGEST_HAND_IN = 100_000;

/** Thrown while reading a file, to be turned into a sentence at the door. */
class FileFault extends Error {}

/** Fields of a file that may hold anything. */
class Fields {
  readonly #fields: Record<string, unknown>;

  constructor(value: unknown) {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      throw new FileFault('something in it is not as a hand-in has it');
    }
    this.#fields = value as Record<string, unknown>;
  }

  get(name: string): unknown {
    return Object.hasOwn(this.#fields, name) ? this.#fields[name] : undefined;
  }

  text(name: string, longest: number): string {
    const value = this.get(name);
    if (typeof value !== 'string' || value.length > longest) {
      throw new FileFault(`its “${name}” is not a text, or too long`);
    }
    return value;
  }

  whole(name: string, most: number): number {
    const value = this.get(name);
    if (typeof value !== 'number' || !Number.isInteger(value) || value < 0 || value > most) {
      throw new FileFault(`its “${name}” is not a whole number that makes sense`);
    }
    return value;
  }

  list(name: string, most: number): readonly unknown[] {
    const value = this.get(name);
    if (!Array.isArray(value) || value.length > most) {
      throw new FileFault(`its “${name}” is not a list, or too long`);
    }
    return value as readonly unknown[];
  }

  texts(name: string): readonly string[] {
    return this.list(name, 40).map((value) => {
      if (typeof value === 'string' && value.length <= 60) return value;
      throw new FileFault(`its “${name}” holds something that is not a text`);
    });
  }

  time(name: string): string {
    const value = this.text(name, 30);
    if (
      !/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/.test(value) ||
      Number.isNaN(Date.parse(value))
    ) {
      throw new FileFault(`its “${name}” is not a time`);
    }
    return value;
  }
}

function givenFrom(value: unknown): Given {
  const fields = new Fields(value);
  const kind = fields.get('kind');
  switch (kind) {
    case 'length':
    case 'rule': {
      const unit = fields.get('unit');
      if (unit !== 'in' && unit !== 'mm') throw new FileFault('an answer names no unit');
      return { kind, text: fields.text('text', 200), unit };
    }
    case 'order':
      return { kind, steps: fields.texts('steps') };
    case 'one':
    case 'several':
    case 'fault':
      return { kind, choices: fields.texts('choices') };
    default:
      throw new FileFault('an answer is of no known kind');
  }
}

function keyFrom(fields: Fields): Key {
  const key = fields.get('key');
  return typeof key === 'number' && Number.isFinite(key) ? key : fields.texts('key');
}

function answerFrom(value: unknown): Answer {
  const fields = new Fields(value);
  const given = fields.get('given');
  return {
    question: fields.text('question', 100),
    given: given === null ? null : givenFrom(given),
    after: fields.get('after') === null ? null : fields.whole('after', 1e9),
    tries: fields.whole('tries', 10_000),
    key: keyFrom(fields),
  };
}

function handInFrom(fields: Fields): HandIn {
  return {
    assignment: fields.text('assignment', 2000),
    student: fields.text('student', 100),
    seed: fields.whole('seed', LARGEST_SEED),
    calc: fields.whole('calc', 9999),
    bank: fields.whole('bank', 9999),
    begun: fields.time('begun'),
    handedIn: fields.time('handedIn'),
    right: fields.whole('right', MOST.questions),
    answers: fields.list('answers', MOST.questions).map(answerFrom),
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    throw new FileFault('it is cut off or damaged, or is another sort of file');
  }
}

/**
 * Reads the text of a hand-in file. Files come from anyone: whatever is in one, this returns a
 * hand-in whose every field is as it should be, or a sentence that says what is wrong; it never
 * throws. Whether it is true is for marking to find out.
 */
export function readHandIn(text: string): ReadHandIn {
  const refused = (why: string): ReadHandIn => ({
    ok: false,
    reason: `This file can’t be read: ${why}.`,
  });
  if (text.length > LONGEST_HAND_IN) return refused('it is longer than any hand-in');
  try {
    const fields = new Fields(parsed(text));
    const version = fields.get('handIn');
    if (version === undefined) return refused('it is not a hand-in');
    if (version !== HAND_IN_VERSION) {
      return refused('it was written by another edition of this workbook');
    }
    const handIn = handInFrom(fields);
    const code = handInCode(handIn);
    return { ok: true, handIn, code, edited: fields.get('code') !== code };
  } catch (fault) {
    if (fault instanceof FileFault) return refused(fault.message);
    throw fault;
  }
}
