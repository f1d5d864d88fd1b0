import type { Mm } from '../../core/length/mm.ts';
import type { JointKind, System } from '../../core/joint/types.ts';
import type { Member } from '../../core/trial/trial.ts';
import type { LengthUnit } from '../../core/length/parseLength.ts';
import type { Sentence } from '../../core/working/sentence.ts';
import type { DrawnSetup } from './drawnSetup.ts';

/**
 * A question as a student meets it, with every number worked out: plain data that travels as
 * JSON. What is right and what each wrong answer means is in it; nothing has to be calculated to
 * mark it.
 */
export type Question =
  ChoiceQuestion | LengthQuestion | OrderQuestion | FaultQuestion | RuleQuestion;

/** Where in a lesson a question stands. */
export const QUESTION_PARTS = ['prediction', 'example', 'on-your-own', 'self-check'] as const;
export type QuestionPart = (typeof QUESTION_PARTS)[number];

interface Asked {
  /** `lesson/id@revision`, or `template@revision:seed` of a made one: never used for another question. */
  readonly identity: string;
  readonly part: QuestionPart;
  readonly ask: Sentence;
  /** How the right answer comes about, with this question's numbers. */
  readonly working: readonly ShownStep[];
  /** What a made question was made from, so that it can be made again. */
  readonly made?: Made;
  /** Steps that are worked out before the student's eyes, ahead of the answer; none where left out. */
  readonly shown?: readonly ShownStep[];
}

/**
 * How much of a made question is worked out for the student: all of it, all but one step, or
 * nothing.
 */
export const LEVELS = ['example', 'blank', 'own'] as const;
export type Level = (typeof LEVELS)[number];

/** What `makeQuestion` needs to make the same question again. */
export interface Made {
  readonly template: string;
  readonly revision: number;
  readonly seed: number;
  readonly system: System;
  readonly level: Level;
  readonly limits?: Limits;
}

/** What the questions of a class keep to; what is left out is as in any shop. */
export interface Limits {
  /** The joints that questions about a joint may be about. */
  readonly joints?: readonly JointKind[];
  /** How thick the boards are. */
  readonly thicknesses?: readonly Mm[];
  /** How far from the right length still counts as right, where a length is typed. */
  readonly tolerance?: Mm;
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

/** Steps to be put in order. */
export interface OrderQuestion extends Asked {
  readonly kind: 'order';
  /** In the order in which they are shown, which is not the right one. */
  readonly steps: readonly OrderStep[];
  /** The right order, by the steps' ids. */
  readonly order: readonly string[];
  /** How many steps of the right order already stand in their places. */
  readonly placed: number;
}

export interface OrderStep {
  /** Unique in its question. */
  readonly id: string;
  readonly says: Sentence;
  /** The steps that must be done before it, by their ids. */
  readonly after: readonly string[];
  /** Why it has to wait for them; of one that waits for none, why it can come first. */
  readonly why: Sentence;
  /** What whoever does it too soon has in mind; none where it waits for no other. */
  readonly misconception?: NamedMistake;
}

/** One or more places of a drawing that are at fault; the list of its places serves as well. */
export interface FaultQuestion extends Asked {
  readonly kind: 'fault';
  /** What is drawn: a joint as it was set up. */
  readonly drawing: FaultDrawing;
  /** The places that can be pointed at; `right` where the place is at fault. */
  readonly choices: readonly Place[];
}

/** How a faulty joint is drawn: the row of holes seen on both boards, or a cut along a pin. */
export interface FaultDrawing {
  readonly view: 'row' | 'section';
  readonly setup: DrawnSetup;
}

/** A place in a drawing, and in the list beside it. */
export interface Place extends Choice {
  readonly at: PlaceInDrawing;
}

/** One of the row's holes, counted from 0; or the depth of a board's holes, as its stop made it. */
export type PlaceInDrawing =
  | { readonly member: Member; readonly part: 'hole'; readonly hole: number }
  | { readonly member: Member; readonly part: 'depth' };

/** A length to be typed. */
export interface LengthQuestion extends TypedLength {
  readonly kind: 'length';
}

/** A length to be read from a drawn rule, and typed. */
export interface RuleQuestion extends TypedLength {
  readonly kind: 'rule';
  readonly rule: DrawnRule;
}

/** A rule with a line across it. */
export interface DrawnRule {
  /** Its finest division. */
  readonly division:
    | { readonly unit: 'in'; readonly denominator: 16 | 32 | 64 }
    | { readonly unit: 'mm'; readonly step: 0.5 | 1 };
  /** The stretch of it that is drawn, from the rule's end. */
  readonly from: Mm;
  readonly to: Mm;
  /** Where the line to be read crosses it, from the rule's end. */
  readonly line: Mm;
}

interface TypedLength extends Asked {
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
  | { readonly kind: 'one' | 'several' | 'fault'; readonly choices: readonly string[] }
  /** What was typed, and the unit that is assumed where it names none; with a rule, the rule's own. */
  | { readonly kind: 'length' | 'rule'; readonly text: string; readonly unit: LengthUnit }
  /** All steps by their ids, the first to be done first. */
  | { readonly kind: 'order'; readonly steps: readonly string[] };

/** What became of an answer. */
export interface Marked {
  /** 'unreadable': nothing was answered, or not a length; it doesn't count as an attempt. */
  readonly verdict: 'right' | 'wrong' | 'unreadable';
  /** What there is to say, in order. */
  readonly remarks: readonly Remark[];
}

export interface Remark {
  readonly says: Sentence;
  /** The choice, place or step that it is about, where it is about one of several. */
  readonly choice?: string;
  readonly misconception?: NamedMistake;
}
