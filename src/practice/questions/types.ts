import type { Mm } from '../../core/length/mm.ts';
import type { System } from '../../core/joint/types.ts';
import type { LengthUnit } from '../../core/length/parseLength.ts';
import type { Sentence } from '../../core/working/sentence.ts';

/**
 * A question as a student meets it, with every number worked out: plain data that travels as
 * JSON. What is right and what each wrong answer means is in it; nothing has to be calculated to
 * mark it.
 */
export type Question = ChoiceQuestion | LengthQuestion;

/** Where in a lesson a question stands. */
export const QUESTION_PARTS = ['prediction', 'example', 'on-your-own', 'self-check'] as const;
export type QuestionPart = (typeof QUESTION_PARTS)[number];

interface Asked {
  /** `lesson/id@revision`: never used for another question. */
  readonly identity: string;
  readonly part: QuestionPart;
  readonly ask: Sentence;
  /** How the right answer comes about, with this question's numbers. */
  readonly working: readonly ShownStep[];
}

/** One of several, or all that apply of several. */
export interface ChoiceQuestion extends Asked {
  readonly kind: 'one' | 'several';
  readonly choices: readonly Choice[];
}

export interface Choice {
  /** Unique in its question. */
  readonly id: string;
  readonly says: Sentence;
  readonly right: boolean;
  /** Why it is right, or why it is not. */
  readonly why: Sentence;
  /** What whoever judges this choice wrongly has in mind; none for the right one of several. */
  readonly misconception?: NamedMistake;
}

/** A length to be typed. */
export interface LengthQuestion extends Asked {
  readonly kind: 'length';
  readonly system: System;
  readonly right: Mm;
  /** How far from the right length still counts as right. */
  readonly tolerance: Mm;
  /** Why the right length is right. */
  readonly why: Sentence;
  /** Where to begin, for a wrong length that no known mistake gives. */
  readonly hint: Sentence;
  readonly mistakes: readonly Mistake[];
  /** What the right number in the wrong unit is called. */
  readonly wrongUnit: NamedMistake;
}

/** A wrong length and the mistake that leads to it. */
export interface Mistake {
  readonly length: Mm;
  readonly misconception: NamedMistake;
  readonly why: Sentence;
}

/** A misconception by its id, and by its name for the reader. */
export interface NamedMistake {
  readonly id: string;
  readonly name: string;
}

/** A step of a working, ready to be shown: MathML in either unit. */
export interface ShownStep {
  readonly label: string;
  readonly lines: { readonly in: readonly string[]; readonly mm: readonly string[] };
  /** Which branch of a rule served, in a sentence. */
  readonly rule?: string;
  /** Where it comes from and how far it can be trusted. */
  readonly source: string;
}

/** What a student answered, as it was given. */
export type Given =
  | { readonly kind: 'one' | 'several'; readonly choices: readonly string[] }
  | { readonly kind: 'length'; readonly text: string; readonly unit: LengthUnit };

/** What became of an answer. */
export interface Marked {
  /** 'unreadable': nothing was answered, or not a length; it doesn't count as an attempt. */
  readonly verdict: 'right' | 'wrong' | 'unreadable';
  /** What there is to say, in order. */
  readonly remarks: readonly Remark[];
}

export interface Remark {
  readonly says: Sentence;
  /** The choice that it is about, where it is about one of several. */
  readonly choice?: string;
  readonly misconception?: NamedMistake;
}
