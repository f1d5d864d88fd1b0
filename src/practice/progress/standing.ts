import { parseLength, plainLength } from '../../core/length/parseLength.ts';
import { hash } from '../made/hash.ts';
import type { Given, Question } from '../questions/types.ts';
import { partsOf } from './events.ts';

/** Where a student is in an assignment: what a learning system keeps between two sessions. */
export interface Standing {
  /** The calculator and the questions that it was begun with; see `versions.ts`. */
  readonly calc: number;
  readonly bank: number;
  /** When it was begun, in whole seconds since 1970 (UTC). */
  readonly begun: number;
  /** When it was handed in, likewise; undefined until then. */
  readonly handedIn?: number;
  /** What was answered to each question, in their order; null where nothing was. */
  readonly answers: readonly (CountedAnswer | null)[];
}

/** The answer to a question that counts. */
export interface CountedAnswer {
  readonly given: Given;
  /** Whole seconds from the beginning to that answer. */
  readonly after: number;
  /** How often it was checked. */
  readonly tries: number;
}

/** The most questions that a standing holds. */
export const MOST_QUESTIONS = 60;

/**
 * No encoded standing is longer, in characters, all of them ASCII: 60 answers of at most 55, and
 * 33 for the rest. SCORM 1.2 keeps 4,096.
 */
export const LONGEST_STANDING = 60 * 55 + 33;

export type DecodedStanding =
  | {
      readonly ok: true;
      readonly standing: Standing;
      /** How many answers are left out, for their question has been changed since. */
      readonly outdated: number;
    }
  | { readonly ok: false; readonly reason: string };

const VERSION = '1';

/** Whole numbers in base 36, and how many digits each may have. */
const DIGITS = { version: 3, moment: 7, revision: 3, after: 5, tries: 2 } as const;

/** A text that is typed as a length is kept as it is up to this many characters. */
const LONGEST_TEXT = 40;

/** The most choices or steps that a question has: one digit names each. */
const MOST_CHOICES = 36;

/** Characters that learning systems change or escape, and what stands for them. */
const STANDS = [
  ['"', '^'],
  ["'", '_'],
  [' ', '~'],
] as const;

function digits(value: number, of: keyof typeof DIGITS): string {
  return Math.min(Math.max(0, Math.round(value)), 36 ** DIGITS[of] - 1).toString(36);
}

/** A length as it was typed, in plain characters; where that is long, as it was read. */
function textFrom(text: string, unit: 'in' | 'mm'): string {
  const typed = text.replace(/^\s*≈/, '');
  const parsed = parseLength(typed, unit);
  if (!parsed.ok) throw new RangeError(`“${text}” is not a length, and was not counted`);
  const plain = plainLength(typed);
  const kept = plain.length <= LONGEST_TEXT ? plain : `${Number(parsed.mm.toFixed(6))} mm`;
  return STANDS.reduce((safe, [sign, stand]) => safe.replaceAll(sign, stand), kept);
}

function typedFrom(safe: string): string {
  return STANDS.reduce((text, [sign, stand]) => text.replaceAll(stand, sign), safe);
}

/** What an answer can name, in the question's own order. */
function idsOf(question: Question): readonly string[] {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return [];
    case 'order':
      return question.steps.map(({ id }) => id);
    default:
      return question.choices.map(({ id }) => id);
  }
}

function placesOf(named: readonly string[], question: Question): string {
  const ids = idsOf(question);
  return named
    .map((id) => {
      const place = ids.indexOf(id);
      if (place < 0 || place >= MOST_CHOICES) {
        throw new RangeError(`${question.identity} has no place for '${id}'`);
      }
      return place.toString(36);
    })
    .join('');
}

function answerText(given: Given, question: Question): string {
  switch (given.kind) {
    case 'length':
    case 'rule':
      return `${given.unit === 'in' ? 'i' : 'm'}${textFrom(given.text, given.unit)}`;
    case 'order':
      return placesOf(given.steps, question);
    default:
      return placesOf(given.choices, question);
  }
}

function revisionOf({ identity }: Question): string {
  return digits(partsOf(identity)?.revision ?? 0, 'revision');
}

/**
 * A standing as a text for a learning system.
 * @param questions the assignment's, as this student gets them
 * @throws RangeError for more than 60 questions, or an answer that is not one to its question
 * @example encodeStanding(standing, questions) // '1:1:1:tzpggs:;1:2s:1:i3/4~in;;1:5k:2:20=1x8k3fz'
 */
export function encodeStanding(standing: Standing, questions: readonly Question[]): string {
  const { calc, bank, begun, handedIn, answers } = standing;
  if (questions.length > MOST_QUESTIONS || answers.length !== questions.length) {
    throw new RangeError(`${answers.length} answers to ${questions.length} questions`);
  }
  const head = [
    VERSION,
    digits(calc, 'version'),
    digits(bank, 'version'),
    digits(begun, 'moment'),
    handedIn === undefined ? '' : digits(handedIn, 'moment'),
  ].join(':');
  const listed = answers.map((answer, i) => {
    if (answer === null) return '';
    const { given, after, tries } = answer;
    const question = questions[i]!;
    return [
      revisionOf(question),
      digits(after, 'after'),
      digits(tries, 'tries'),
      answerText(given, question),
    ].join(':');
  });
  const text = [head, ...listed].join(';');
  return `${text}=${hash(text).toString(36)}`;
}

/** A number in base 36; 0 for what is none. */
function numberFrom(text = ''): number {
  return /^[\da-z]{1,7}$/.test(text) ? Number.parseInt(text, 36) : 0;
}

function givenFrom(text: string, question: Question): Given | null {
  switch (question.kind) {
    case 'length':
    case 'rule': {
      const [, unit, typed] = /^([im])(.*)$/.exec(text) ?? [];
      if (typed === undefined) return null;
      return { kind: question.kind, text: typedFrom(typed), unit: unit === 'i' ? 'in' : 'mm' };
    }
    default: {
      const ids = idsOf(question);
      const named = Array.from(text, (place) => ids[Number.parseInt(place, 36)]);
      if (!named.every((id) => id !== undefined)) return null;
      return question.kind === 'order'
        ? { kind: 'order', steps: named }
        : { kind: question.kind, choices: named };
    }
  }
}

/**
 * Reads what `encodeStanding` wrote. A learning system may have cut it off or mixed it up: whatever
 * the text, this returns a standing or a sentence; it never throws.
 * @param questions the assignment's, as this student gets them today. An answer to a question of
 *   an earlier revision is left out
 */
export function decodeStanding(text: string, questions: readonly Question[]): DecodedStanding {
  const refused = (why: string): DecodedStanding => ({
    ok: false,
    reason: `What the learning system kept of this assignment can’t be read: ${why}.`,
  });
  if (text.split(':', 1)[0] !== VERSION && /^\d{1,3}:/.test(text)) {
    return refused('a newer edition of this workbook wrote it');
  }
  const [, body, sum] = /^(.{1,8000})=([\da-z]{1,7})$/.exec(text) ?? [];
  if (body === undefined || hash(body).toString(36) !== sum) {
    return refused('a part of it is missing or was changed');
  }
  const [head = '', ...listed] = body.split(';');
  const [, calc, bank, begun, handedIn] = head.split(':');
  if (listed.length !== questions.length) return refused('it is of another assignment');
  let outdated = 0;
  const answers = listed.map((each, i) => {
    if (each === '') return null;
    const [revision, after, tries, answer = ''] = each.split(':');
    const question = questions[i]!;
    const given = revision === revisionOf(question) ? givenFrom(answer, question) : null;
    if (given === null) {
      outdated += 1;
      return null;
    }
    return { given, after: numberFrom(after), tries: numberFrom(tries) };
  });
  return {
    ok: true,
    standing: {
      calc: numberFrom(calc),
      bank: numberFrom(bank),
      begun: numberFrom(begun),
      ...(handedIn && { handedIn: numberFrom(handedIn) }),
      answers,
    },
    outdated,
  };
}
