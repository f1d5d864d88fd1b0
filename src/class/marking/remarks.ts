/**
 * What marking can find about a hand-in besides its score. Each comes with a sentence; none is a
 * proof of anything.
 */
export type Finding =
  /** The code in the file is not the one that its content has. */
  | 'edited'
  /** It claims another score than it has when it is marked again. */
  | 'score'
  /** Its seed is not the one that the name has. */
  | 'seed'
  /** Its answers are to other questions than its seed asks. */
  | 'questions'
  /** It belongs to another assignment. */
  | 'assignment'
  /** It was answered with another calculator or other questions than this edition has. */
  | 'edition'
  /** What it says was shown to be right isn't what this edition says is right. */
  | 'key'
  /** The same student has a later file, which counts. */
  | 'earlier'
  /** The same answers to the same questions as a file of another name. */
  | 'copied'
  /** Handed in after the due date. */
  | 'late';

export interface MarkRemark {
  readonly finding: Finding;
  readonly says: string;
}

/** A hand-in with one of these is shown with its marks, but does not count. */
const SET_ASIDE: readonly Finding[] = ['seed', 'assignment', 'earlier', 'copied'];

/** True where nothing found keeps the hand-in from counting. */
export function counts(remarks: readonly MarkRemark[]): boolean {
  return !remarks.some(({ finding }) => SET_ASIDE.includes(finding));
}
