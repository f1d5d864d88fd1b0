import type { Assignment } from '../assignment/assignment.ts';
import { studentKey } from '../assignment/student.ts';
import type { MarkedHandIn } from './markHandIn.ts';
import { type MarkRemark, counts } from './remarks.ts';

/** One hand-in in the mark sheet: what its marking found, without the answers themselves. */
export interface Row extends Omit<MarkedHandIn, 'handIn'> {
  /** The file that it came from. */
  readonly file: string;
  /** Six characters; see `handInCode`. */
  readonly code: string;
  /** The name of the bench, as it was typed. */
  readonly student: string;
  /** By the student's clock: `2026-11-03T09:12:44Z`. */
  readonly handedIn: string;
  /** False where it is shown, but something keeps it from counting. */
  readonly counts: boolean;
}

export interface MarkSheet {
  readonly assignment: Assignment;
  /** In the order of the students' names, a student's later files first. */
  readonly rows: readonly Row[];
}

/** A marked hand-in with its file, before it is compared with the others. */
export interface Marked extends MarkedHandIn {
  readonly file: string;
  readonly code: string;
}

const inOrder = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

function groupedBy<Item>(items: readonly Item[], key: (item: Item) => string) {
  return Map.groupBy(items, key).values();
}

function has(row: Marked, finding: MarkRemark['finding']): boolean {
  return row.remarks.some((remark) => remark.finding === finding);
}

/** Files of different names with the same answers to the same questions, one of which owns them. */
function copies(rows: readonly Marked[]): ReadonlyMap<Marked, MarkRemark> {
  const found = new Map<Marked, MarkRemark>();
  const answered = rows.filter(
    ({ handIn, answers }) => answers.length > 0 && handIn.answers.some(({ given }) => given),
  );
  const content = ({ handIn }: Marked) =>
    JSON.stringify([handIn.seed, handIn.answers.map(({ given }) => given)]);
  for (const same of groupedBy(answered, content)) {
    const owner = same.find((row) => !has(row, 'seed')) ?? same[0]!;
    for (const row of same) {
      const other = row === owner ? undefined : owner;
      if (!other || studentKey(row.handIn.student) === studentKey(other.handIn.student)) continue;
      found.set(row, {
        finding: 'copied',
        says: `It has the same answers to the same questions as the file of “${other.handIn.student}”.`,
      });
    }
  }
  return found;
}

/** Of several files of one student all but the latest, with the reason. */
function earlierOnes(rows: readonly Marked[]): ReadonlyMap<Marked, MarkRemark> {
  const found = new Map<Marked, MarkRemark>();
  for (const own of groupedBy(rows, ({ handIn }) => studentKey(handIn.student))) {
    const [latest, ...others] = own.toSorted((one, other) =>
      later(one.handIn.handedIn, other.handIn.handedIn),
    );
    for (const row of others) {
      found.set(row, {
        finding: 'earlier',
        says:
          row.code === latest!.code
            ? 'It is the same file once more.'
            : 'The same student handed in again later; that file counts.',
      });
    }
  }
  return found;
}

/** Orders by time, the latest first. */
function later(one: string, other: string): number {
  return Date.parse(other) - Date.parse(one);
}

/** Compares hand-ins with each other and puts them in order. */
export function markSheet(assignment: Assignment, marked: readonly Marked[]): MarkSheet {
  const copied = copies(marked);
  const earlier = earlierOnes(marked.filter((row) => counts(row.remarks) && !copied.has(row)));
  const rows = marked.map((row): Row => {
    const more = [copied.get(row), earlier.get(row)].filter((remark) => remark !== undefined);
    const remarks = [...more, ...row.remarks];
    const { file, code, answers, right } = row;
    const { student, handedIn } = row.handIn;
    return { file, code, student, handedIn, answers, right, remarks, counts: counts(remarks) };
  });
  return {
    assignment,
    rows: rows.toSorted(
      (one, other) =>
        inOrder.compare(one.student, other.student) ||
        Number(other.counts) - Number(one.counts) ||
        later(one.handedIn, other.handedIn),
    ),
  };
}

/** Percent of the questions that are right, to a whole number. */
export function percent({ right }: Pick<Row, 'right'>, { count }: Assignment): number {
  return Math.round((100 * right) / count);
}
