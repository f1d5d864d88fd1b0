import type { JointKind, System } from '../../core/joint/types.ts';
import type { Mm } from '../../core/length/mm.ts';
import type { Sentence } from '../../core/working/sentence.ts';
import type { Numbers } from '../questions/numbers.ts';
import type { Setup } from '../questions/setupKinds.ts';
import type { DrawnRule, FaultDrawing, PlaceInDrawing, Question } from '../questions/types.ts';
import type { Draws } from './draws.ts';

/** What makes questions of one sort: every seed another question. */
export interface Template {
  /** Never used again for another template. */
  readonly id: string;
  /** Raised whenever the same seed would make another question. */
  readonly revision: number;
  /** The lesson that it belongs to, by the name of its file. */
  readonly lesson: string;
  /** The joints that its questions can be about. */
  readonly joints: readonly JointKind[];
  readonly kind: Question['kind'];
  /** The mistakes that it recognizes, by their ids in content/misconceptions.yaml. */
  readonly misconceptions: readonly string[];
  /**
   * Draws the numbers of a question. A draft whose answers can't be told apart is passed over,
   * and the next is drawn.
   */
  readonly draft: (draws: Draws, system: System) => Draft;
}

/**
 * A question with its numbers drawn, its texts and formulas not yet worked out. Texts put numbers
 * in as those of content do: `{b.engagement}`, or `{this}` for the value of the answer itself.
 */
export type Draft = LengthDraft | RuleDraft | ChoicesDraft | OrderDraft | FaultDraft;

interface Drafted {
  /** What the numbers were worked out from; none where nothing but the numbers was drawn. */
  readonly setup?: Setup;
  readonly numbers: Numbers;
  /** What is given, in sentences. */
  readonly situation: string;
  /** What is asked for. */
  readonly ask: string;
}

interface TypedDraft extends Drafted {
  /** A formula for the right length. */
  readonly answer: string;
  readonly why: string;
  readonly hint: string;
  readonly mistakes: readonly DraftMistake[];
  /**
   * Steps besides the last that can be left blank, by their ids in the working, each with its own
   * mistakes. The last can always be.
   */
  readonly blanks?: Readonly<Record<string, readonly DraftMistake[]>>;
}

export interface LengthDraft extends TypedDraft {
  readonly kind: 'length';
  /** How far from the right length still counts as right, where that isn't the usual. */
  readonly tolerance?: Mm;
}

export interface RuleDraft extends TypedDraft {
  readonly kind: 'rule';
  readonly rule: DrawnRule;
  /** How far from the right length still counts as right. */
  readonly tolerance: Mm;
}

/** A mistake, and the length that the calculator gives with it. */
export interface DraftMistake {
  readonly misconception: string;
  /** A formula over the question's numbers, and over those of `changed` as `changed.b.stop`. */
  readonly of: string;
  /** The numbers with the mistake made. */
  readonly changed?: Numbers;
  readonly why: string;
}

export interface ChoicesDraft extends Drafted {
  readonly kind: 'one' | 'several';
  readonly choices: readonly DraftChoice[];
  /** A formula or the id of a step that the working leads to; without it there is none. */
  readonly working?: string;
}

/** A choice: a text, or the value of a formula. */
export interface DraftChoice {
  readonly id: string;
  readonly right?: boolean;
  readonly says?: string;
  readonly of?: string;
  readonly changed?: Numbers;
  /** Must be there, but for the right one of several. */
  readonly misconception?: string;
  /** A text, or a sentence of the calculator's. */
  readonly why: string | Sentence;
}

export interface OrderDraft extends Drafted {
  readonly kind: 'order';
  /** In the right order; each has to wait for the one before it. */
  readonly steps: readonly DraftStep[];
}

export interface DraftStep {
  readonly id: string;
  readonly says: string;
  /** Why it can't come sooner. */
  readonly why: string;
  readonly misconception: string;
}

export interface FaultDraft extends Drafted {
  readonly kind: 'fault';
  readonly drawing: FaultDrawing;
  readonly places: readonly (DraftChoice & { readonly at: PlaceInDrawing })[];
  readonly working?: string;
}
