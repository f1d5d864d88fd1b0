import type { NamedMistake } from '../../practice/questions/types.ts';
import { templatesAsked } from '../assignment/studentQuestions.ts';
import type { MarkSheet, Row } from '../marking/markSheet.ts';

/** How a class did on one question of an assignment. */
export interface Item {
  /** Its number, from 1. */
  readonly number: number;
  /** The template that it is made from. */
  readonly template: string;
  readonly right: number;
  readonly wrong: number;
  readonly blank: number;
  /** The share of the class that has it right, 0 to 1; NaN where nobody handed in. */
  readonly difficulty: number;
  /**
   * How far those who have it right are also those who do well otherwise, -1 to 1; null where
   * that can't be said; see `discrimination`.
   */
  readonly discrimination: number | null;
  readonly mistakes: readonly Held[];
}

/** A mistake, and how many students made it. */
export interface Held {
  readonly mistake: NamedMistake;
  readonly students: number;
}

export interface ItemAnalysis {
  /** How many hand-ins count. */
  readonly students: number;
  readonly items: readonly Item[];
  /** What the class believes, the commonest first. */
  readonly mistakes: readonly Held[];
}

/** With fewer hand-ins than this a discrimination says more about chance than about a question. */
export const FEWEST_TO_DISCRIMINATE = 10;

/**
 * The correlation (Pearson's r) between having one question right and the number of the others
 * that are right: the point-biserial correlation, corrected for the question itself being part of
 * the score. 1: whoever has it right has the others right; 0: it tells nothing; below 0: those who
 * do well otherwise have it wrong, and the question wants looking at.
 * @param right whether each student has the question right
 * @param others how many of the other questions each student has right
 * @returns null where all have it right, none has, or all do equally well on the others
 */
export function discrimination(
  right: readonly boolean[],
  others: readonly number[],
): number | null {
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const one = right.map(Number);
  const [meanOne, meanOthers] = [mean(one), mean(others)];
  let [both, ones, rest] = [0, 0, 0];
  one.forEach((value, i) => {
    const [x, y] = [value - meanOne, others[i]! - meanOthers];
    both += x * y;
    ones += x * x;
    rest += y * y;
  });
  return ones > 1e-9 && rest > 1e-9 ? both / Math.sqrt(ones * rest) : null;
}

/** How many students made each mistake, the commonest first; one who made it twice counts once. */
function held(students: readonly (readonly NamedMistake[])[]): readonly Held[] {
  const found = new Map<string, { mistake: NamedMistake; students: number }>();
  for (const own of students) {
    for (const [id, mistake] of new Map(own.map((each) => [each.id, each]))) {
      const entry = found.get(id) ?? { mistake, students: 0 };
      entry.students += 1;
      found.set(id, entry);
    }
  }
  return [...found.values()].toSorted(
    (one, other) =>
      other.students - one.students || one.mistake.name.localeCompare(other.mistake.name, 'en'),
  );
}

/** What a mark sheet says about its questions and about the class. Only what counts is counted. */
export function itemAnalysis({ assignment, rows }: MarkSheet): ItemAnalysis {
  const counted = rows.filter((row) => row.counts);
  const verdicts = (row: Row, i: number) => row.answers[i]!.verdict;
  const items = templatesAsked(assignment).map((template, i): Item => {
    const count = (verdict: string) => counted.filter((row) => verdicts(row, i) === verdict).length;
    const right = counted.map((row) => verdicts(row, i) === 'right');
    const others = counted.map((row, s) => row.right - Number(right[s]));
    return {
      ...{ number: i + 1, template },
      ...{ right: count('right'), wrong: count('wrong'), blank: count('blank') },
      difficulty: count('right') / counted.length,
      discrimination:
        counted.length < FEWEST_TO_DISCRIMINATE ? null : discrimination(right, others),
      mistakes: held(counted.map((row) => row.answers[i]!.mistakes)),
    };
  });
  return {
    students: counted.length,
    items,
    mistakes: held(counted.map((row) => row.answers.flatMap(({ mistakes }) => mistakes))),
  };
}
