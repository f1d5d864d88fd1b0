import type { Assignment } from '../assignment/assignment.ts';
import { studentKey } from '../assignment/student.ts';
import type { MarkedHandIn } from './markHandIn.ts';
import { type MarkRemark, counts } from './remarks.ts';

/** One hand-in in the mark sheet. */
export interface Row extends MarkedHandIn {
  /** The file that it came from. */
  readonly file: string;
  /** Six characters; see `handInCode`. */
  readonly code: string;
  /** False where it is shown, but something keeps it from counting. */
  readonly counts: boolean;
}

export interface MarkSheet {
  readonly assignment: Assignment;
  /** In the order of the students' names, a student's later files first. */
  readonly rows: readonly Row[];
}

/** A marked hand-in with its file, before it is compared with the others. */
export type Marked = Omit<Row, 'counts'>;

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
    const [latest, ...others] = own.toSorted(later);
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

function later(one: Marked, other: Marked): number {
  return Date.parse(other.handIn.handedIn) - Date.parse(one.handIn.handedIn);
}

/** Compares hand-ins with each other and puts them in order. */
export function markSheet(assignment: Assignment, marked: readonly Marked[]): MarkSheet {
  const copied = copies(marked);
  const earlier = earlierOnes(marked.filter((row) => counts(row.remarks) && !copied.has(row)));
  const rows = marked.map((row) => {
    const more = [copied.get(row), earlier.get(row)].filter((remark) => remark !== undefined);
    const remarks = [...more, ...row.remarks];
    return { ...row, remarks, counts: counts(remarks) };
  });
  return {
    assignment,
    rows: rows.toSorted(
      (one, other) =>
        inOrder.compare(one.handIn.student, other.handIn.student) ||
        Number(other.counts) - Number(one.counts) ||
        later(one, other),
    ),
  };
}

/** Percent of the questions that are right, to a whole number. */
export function percent({ right }: Pick<Row, 'right'>, { count }: Assignment): number {
  return Math.round((100 * right) / count);
}
