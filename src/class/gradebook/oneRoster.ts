import { studentKey } from '../assignment/student.ts';
import { csv } from '../csv.ts';
import { type MarkSheet, percent } from '../marking/markSheet.ts';
import type { Identifiers } from './identifiers.ts';

/** The columns of results.csv in OneRoster 1.2 (1EdTech, CSV binding), in their order. */
const COLUMNS = [
  ...['sourcedId', 'status', 'dateLastModified', 'lineItemSourcedId', 'studentSourcedId'],
  ...['scoreStatus', 'score', 'scoreDate', 'comment', 'textScore', 'classSourcedId'],
  ...['inProgress', 'incomplete', 'late', 'missing'],
];

export interface OneRosterOptions {
  /** What the gradebook calls the assignment. */
  readonly lineItem: string;
  /** What it calls each student. */
  readonly identifiers: Identifiers;
}

export interface OneRosterResults {
  readonly csv: string;
  /** Students who have no identifier that the standard allows, and so are left out. */
  readonly leftOut: readonly string[];
}

/** True for what OneRoster takes as an identifier; it begins with a letter or a digit, so that it is never a formula. */
export function isSourcedId(text: string): boolean {
  return /^[0-9A-Za-z][0-9A-Za-z._/@-]{0,254}$/.test(text);
}

/**
 * The scores as results.csv of OneRoster 1.2, for a bulk import: percent for each hand-in that
 * counts. Names never go into it, identifiers only.
 */
export function oneRosterResults(
  { assignment, rows }: MarkSheet,
  { lineItem, identifiers }: OneRosterOptions,
): OneRosterResults {
  const leftOut: string[] = [];
  const lines = rows.flatMap((row) => {
    if (!row.counts) return [];
    const { student, handedIn } = row;
    const id = identifiers.get(studentKey(student));
    if (id === undefined || !isSourcedId(id)) {
      leftOut.push(student);
      return [];
    }
    const late = row.remarks.some(({ finding }) => finding === 'late');
    return [
      [
        ...[`${lineItem}-${id}`, '', '', lineItem, id],
        ...['fully graded', String(percent(row, assignment)), handedIn.slice(0, 10)],
        ...['', '', '', 'false', 'false', String(late), 'false'],
      ],
    ];
  });
  // Without the byte order mark: programs read this file, and some take it for part of a name.
  return { csv: csv([COLUMNS, ...lines]).slice(1), leftOut };
}
