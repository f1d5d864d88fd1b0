import { csv } from '../csv.ts';
import { studentKey } from '../assignment/student.ts';
import { rightToPass } from '../assignment/assignment.ts';
import { type MarkSheet, type Row, percent } from '../marking/markSheet.ts';
import { type Identifiers, identifierOf } from './identifiers.ts';
import { type BenchMarks, pointsOf, rubric } from './rubric.ts';

export interface MarkSheetOptions {
  /** What the first column is called: 'Student', or what the gradebook calls it. */
  readonly column: string;
  readonly identifiers: Identifiers;
  /** Bench assessments by `studentKey`. */
  readonly bench: ReadonlyMap<string, BenchMarks>;
}

/** The mistakes that a student made, each once, by name. */
export function mistakesOf({ answers }: Pick<Row, 'answers'>): readonly string[] {
  return [...new Set(answers.flatMap(({ mistakes }) => mistakes.map(({ name }) => name)))];
}

/**
 * The mark sheet as a table for a gradebook: one row for each hand-in that counts, then those that
 * do not, without a score.
 */
export function markSheetCsv(
  sheet: MarkSheet,
  { column, identifiers, bench }: MarkSheetOptions,
): string {
  const { assignment, rows } = sheet;
  const count = String(assignment.count);
  const head = [
    ...[column, 'Name as typed', 'Assignment', 'Percent', 'Right', 'Of', 'Passed'],
    ...assignmentNumbers(sheet),
    ...rubric.map(({ name }) => `Bench: ${name}`),
    ...['Bench points', 'Mistakes', 'Remarks', 'Handed in', 'Code', 'File'],
  ];
  const line = (row: Row) => {
    const marks = bench.get(studentKey(row.student)) ?? {};
    const score = row.counts
      ? [
          ...[String(percent(row, assignment)), String(row.right), count],
          row.right >= rightToPass(assignment) ? 'yes' : 'no',
        ]
      : ['', '', '', 'does not count'];
    return [
      ...[identifierOf(row.student, identifiers), row.student, assignment.title],
      ...score,
      ...Array.from({ length: assignment.count }, (_, i) => row.answers[i]?.verdict ?? ''),
      ...(row.counts ? rubric.map(({ id }) => String(marks[id] ?? '')) : rubric.map(() => '')),
      ...[row.counts ? String(pointsOf(marks) ?? '') : '', mistakesOf(row).join('; ')],
      row.remarks.map(({ says }) => says).join(' '),
      ...[row.handedIn, row.code, row.file],
    ];
  };
  const ordered = [...rows.filter((row) => row.counts), ...rows.filter((row) => !row.counts)];
  return csv([head, ...ordered.map(line)]);
}

function assignmentNumbers({ assignment }: MarkSheet): readonly string[] {
  return Array.from({ length: assignment.count }, (_, i) => `Question ${i + 1}`);
}
