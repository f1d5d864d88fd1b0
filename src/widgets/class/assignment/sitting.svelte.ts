import { type Assignment, rightToPass } from '../../../class/assignment/assignment.ts';
import { seedOf } from '../../../class/assignment/student.ts';
import { questionsOf } from '../../../class/assignment/studentQuestions.ts';
import type { HandIn } from '../../../class/hand-in/handIn.ts';
import { makeHandIn, rightIn } from '../../../class/hand-in/makeHandIn.ts';
import type { MisconceptionNames } from '../../../practice/made/index.ts';
import {
  type CountedAnswer,
  type Standing,
  decodeStanding,
  encodeStanding,
} from '../../../practice/progress/standing.ts';
import { markAnswer } from '../../../practice/questions/markAnswer.ts';
import type { Given } from '../../../practice/questions/types.ts';
import { BANK, CALC } from '../../../practice/versions.ts';
import { type DrawnQuestion, drawn } from './drawn.ts';
import type { Keeper } from './keeper.ts';

function now(): number {
  return Math.floor(Date.now() / 1000);
}

/** One student at one assignment: the questions, the answers that count, and where they are kept. */
export class Sitting {
  readonly assignment: Assignment;
  readonly student: string;
  readonly questions: readonly DrawnQuestion[];
  /** How many kept answers were left out, for their question has been changed since. */
  readonly outdated: number;
  /** Why what was kept can't be read; empty where it can. */
  readonly problem: string;
  readonly #keeper: Keeper;
  #standing = $state.raw<Standing>({ calc: CALC, bank: BANK, begun: 0, answers: [] });
  #kept = $state(true);

  constructor(
    assignment: Assignment,
    student: string,
    keeper: Keeper,
    misconceptions: MisconceptionNames,
  ) {
    this.assignment = assignment;
    this.student = student;
    this.#keeper = keeper;
    const seed = seedOf(assignment, student);
    this.questions = [...questionsOf(assignment, seed, misconceptions)].map(drawn);
    const kept = keeper.load(student);
    const read = kept === '' ? undefined : decodeStanding(kept, this.#asked);
    this.#standing = read?.ok
      ? read.standing
      : { calc: CALC, bank: BANK, begun: now(), answers: this.questions.map(() => null) };
    this.outdated = read?.ok ? read.outdated : 0;
    this.problem = read && !read.ok ? read.reason : '';
  }

  get #asked() {
    return this.questions.map(({ question }) => question);
  }

  get answers(): readonly (CountedAnswer | null)[] {
    return this.#standing.answers;
  }

  get answered(): number {
    return this.answers.filter((answer) => answer !== null).length;
  }

  get right(): number {
    return rightIn(this.#standing, this.#asked);
  }

  /** Whether the answer that counts is right; null where there is none. */
  isRight(i: number): boolean | null {
    const answer = this.answers[i];
    const asked = this.questions[i];
    return answer && asked ? markAnswer(asked.question, answer.given).verdict === 'right' : null;
  }

  get passed(): boolean {
    return this.right >= rightToPass(this.assignment);
  }

  get handedIn(): boolean {
    return this.#standing.handedIn !== undefined;
  }

  /** False where the browser or the learning system keeps nothing. */
  get kept(): boolean {
    return this.#kept;
  }

  /**
   * Takes an answer that can be read. Where each is explained at once, the first one counts, and
   * later ones are only counted.
   */
  answer(i: number, given: Given): void {
    const before = this.answers[i] ?? null;
    const counted: CountedAnswer =
      before && this.assignment.feedback === 'each'
        ? { ...before, tries: before.tries + 1 }
        : {
            given,
            after: Math.max(0, now() - this.#standing.begun),
            tries: (before?.tries ?? 0) + 1,
          };
    this.#set({ ...this.#standing, answers: this.answers.with(i, counted) });
  }

  /** Takes an answer away again. */
  clear(i: number): void {
    this.#set({ ...this.#standing, answers: this.answers.with(i, null) });
  }

  handIn(): void {
    this.#set({ ...this.#standing, handedIn: now() });
  }

  /** What is handed in, once it is. */
  get file(): HandIn {
    return makeHandIn(this.assignment, this.student, this.#standing, this.#asked);
  }

  #set(standing: Standing): void {
    if (this.handedIn) return;
    this.#standing = standing;
    this.#kept = this.#keeper.keep(this.student, encodeStanding(standing, this.#asked), {
      score: (100 * this.right) / this.questions.length,
      finished: this.handedIn,
      passed: this.passed,
    });
  }
}
