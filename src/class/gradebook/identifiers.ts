import { csvParseRows } from 'd3-dsv';
import { studentKey } from '../assignment/student.ts';

/** What a gradebook calls each student, by what students call themselves: `Bench 7` is `20417`. */
export type Identifiers = ReadonlyMap<string, string>;

/**
 * Reads a list of names and identifiers, a line each, parted by a comma or a tab as they come out
 * of a spreadsheet: `Bench 7, 20417`. Lines that have no identifier are passed over.
 */
export function readIdentifiers(text: string): Identifiers {
  return new Map(
    csvParseRows(text.replaceAll('\t', ',')).flatMap(([name = '', identifier = '']) =>
      name.trim() === '' || identifier.trim() === ''
        ? []
        : [[studentKey(name), identifier.trim()] as const],
    ),
  );
}

/** The identifier of a student; the name itself where the list has none. */
export function identifierOf(student: string, identifiers: Identifiers): string {
  return identifiers.get(studentKey(student)) ?? student;
}
