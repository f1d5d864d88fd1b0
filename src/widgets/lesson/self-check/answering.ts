import type { Snippet } from 'svelte';
import type { Given, Marked, Question } from '../../../practice/questions/types.ts';
import type { QuestionDrawing } from './questionDrawing.ts';

/** What whoever asks a question says about it. */
export interface AskedProps {
  readonly question: Question;
  /** Of a question that asks about one: what `drawQuestion` gives. */
  readonly drawing?: QuestionDrawing | undefined;
  /** Its number in a list of questions. */
  readonly number?: number;
  readonly onmarked?: ((marked: Marked) => void) | undefined;
  /** What can be done once it is marked, besides trying again. */
  readonly next?: Snippet;
}

/** What the fields of every kind of question are given. */
export interface AnswerProps {
  readonly question: Question;
  /** Begins as `emptyAnswer` of the question. */
  given: Given;
  readonly drawing?: QuestionDrawing | undefined;
  /** What became of single choices or steps, in a word, by their ids. */
  readonly words: Readonly<Record<string, string>>;
  /** What was answered could not be read. */
  readonly invalid: boolean;
  /** Id of the element that says what became of the answer. */
  readonly says: string;
  /** The page's scripts run. */
  readonly ready: boolean;
}
