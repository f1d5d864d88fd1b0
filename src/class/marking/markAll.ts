import type { MisconceptionNames } from '../../practice/made/index.ts';
import type { Assignment } from '../assignment/assignment.ts';
import { decodeAssignment, whatIsAsked } from '../assignment/assignmentLink.ts';
import { readHandIn } from '../hand-in/readHandIn.ts';
import { markHandIn } from './markHandIn.ts';
import { type MarkSheet, type Marked, markSheet } from './markSheet.ts';

/** A file with its text. */
export interface Source {
  readonly file: string;
  readonly text: string;
}

/** A file that could not be read as a hand-in. */
export interface Unread {
  readonly file: string;
  /** Why not, in a sentence. */
  readonly reason: string;
}

/** What came of all files. */
export interface Marks {
  /** Null where no file tells what was assigned. */
  readonly sheet: MarkSheet | null;
  readonly unread: readonly Unread[];
}

export interface MarkOptions {
  /** What was assigned; without it, what most files say. */
  readonly assignment?: Assignment | undefined;
  readonly misconceptions: MisconceptionNames;
}

/** The assignment that most of these links are of; undefined where none can be read. */
function mostCommon(links: readonly string[]): Assignment | undefined {
  const read = [...Map.groupBy(links, (link) => link)].flatMap(([link, same]) => {
    const decoded = decodeAssignment(link);
    return decoded.ok ? [{ assignment: decoded.assignment, count: same.length }] : [];
  });
  const groups = Map.groupBy(read, ({ assignment }) => whatIsAsked(assignment));
  const counted = [...groups.values()].map((same) => ({
    assignment: same.toSorted((one, other) => other.count - one.count)[0]!.assignment,
    count: same.reduce((sum, { count }) => sum + count, 0),
  }));
  return counted.toSorted((one, other) => other.count - one.count)[0]?.assignment;
}

/**
 * Marks any number of hand-ins. It yields how many are done after each, so that whoever runs it
 * can breathe, and returns the mark sheet.
 */
export function* markAll(
  sources: readonly Source[],
  { assignment: given, misconceptions }: MarkOptions,
): Generator<number, Marks, undefined> {
  const unread: Unread[] = [];
  const read = sources.flatMap(({ file, text }) => {
    const result = readHandIn(text);
    if (result.ok) return [{ file, ...result }];
    unread.push({ file, reason: result.reason });
    return [];
  });
  const assignment = given ?? mostCommon(read.map(({ handIn }) => handIn.assignment));
  if (!assignment) return { sheet: null, unread };
  const marked: Marked[] = [];
  for (const { file, handIn, code, edited } of read) {
    marked.push({ file, code, ...markHandIn(handIn, edited, assignment, misconceptions) });
    yield marked.length;
  }
  return { sheet: markSheet(assignment, marked), unread };
}
