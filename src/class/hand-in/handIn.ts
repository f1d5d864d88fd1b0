import type { Given } from '../../practice/questions/types.ts';
import { codeOf } from '../codeOf.ts';
import type { Key } from './answerKey.ts';

/** What a student hands in: everything that is needed to mark it again, and nothing about the person. */
export interface HandIn {
  /** The assignment's link, the part after '#'. */
  readonly assignment: string;
  /** The name of the bench, as it was typed. */
  readonly student: string;
  readonly seed: number;
  /** The calculator and the questions that it was answered with; see `versions.ts`. */
  readonly calc: number;
  readonly bank: number;
  /** When it was begun and handed in, by the student's own clock: `2026-11-03T09:12:44Z`. */
  readonly begun: string;
  readonly handedIn: string;
  /** One for each question, in their order. */
  readonly answers: readonly Answer[];
  /** How many the student was told are right. */
  readonly right: number;
}

/** What was answered to one question. */
export interface Answer {
  /** Which question it was: `template@revision:seed`. */
  readonly question: string;
  /** The answer that counts; null where there is none. */
  readonly given: Given | null;
  /** Seconds from the beginning to that answer; null where there is none. */
  readonly after: number | null;
  /** How often it was checked; more than once only where each answer is explained at once. */
  readonly tries: number;
  /** What the student was shown to be right. */
  readonly key: Key;
}

/** The format of the file; raised when an older page could not read it any more. */
export const HAND_IN_VERSION = 1;

/** The fields in their fixed order, so that one hand-in has one text and one code. */
function ordered(handIn: HandIn) {
  const { assignment, student, seed, calc, bank, begun, handedIn, right } = handIn;
  return {
    handIn: HAND_IN_VERSION,
    ...{ assignment, student, seed, calc, bank, begun, handedIn, right },
    answers: handIn.answers.map(({ question, given, after, tries, key }) => ({
      ...{ question, given: given && orderedGiven(given), after, tries, key },
    })),
  };
}

function orderedGiven(given: Given): Given {
  switch (given.kind) {
    case 'length':
    case 'rule':
      return { kind: given.kind, text: given.text, unit: given.unit };
    case 'order':
      return { kind: given.kind, steps: given.steps };
    default:
      return { kind: given.kind, choices: given.choices };
  }
}

/**
 * Six characters to read out. The same code shows that two files hold the same; it shows nothing
 * else, for anybody can reckon it.
 */
export function handInCode(handIn: HandIn): string {
  return codeOf(JSON.stringify(ordered(handIn)), 6);
}

/** The file's text: JSON, with the code at its end. */
export function writeHandIn(handIn: HandIn): string {
  return `${JSON.stringify({ ...ordered(handIn), code: handInCode(handIn) }, null, 1)}\n`;
}

/**
 * What the file is called: letters and digits of the name, joined by hyphens.
 * @example handInName('Bench 7') // 'hand-in-bench-7.json'
 */
export function handInName(student: string): string {
  const name = student
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return `hand-in-${name || 'bench'}.json`;
}
