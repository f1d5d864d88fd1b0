import { decodeAssignment } from '../../../class/assignment/assignmentLink.ts';
import type { Assignment } from '../../../class/assignment/assignment.ts';
import { type ItemAnalysis, itemAnalysis } from '../../../class/gradebook/itemAnalysis.ts';
import { LONGEST_HAND_IN } from '../../../class/hand-in/readHandIn.ts';
import { type Source, type Unread, markAll } from '../../../class/marking/markAll.ts';
import type { Row } from '../../../class/marking/markSheet.ts';
import { ARCHIVE_LIMITS, isArchive, readArchive } from '../../../class/marking/readArchive.ts';
import type { NamedMistake } from '../../../practice/questions/types.ts';

/** What is to be marked. */
export interface MarkRequest {
  readonly files: readonly File[];
  /** The assignment's link, after '#'; empty where the files are to tell. */
  readonly fragment: string;
  readonly misconceptions: readonly NamedMistake[];
}

/** What marking says while it goes on. The sheet comes in parts, so that no part takes long. */
export type MarkEvent =
  | { readonly kind: 'read'; readonly done: number; readonly of: number }
  | { readonly kind: 'marked'; readonly done: number; readonly of: number }
  | { readonly kind: 'rows'; readonly rows: readonly Row[] }
  | {
      readonly kind: 'done';
      /** Null where no file tells what was assigned. */
      readonly assignment: Assignment | null;
      readonly unread: readonly Unread[];
      readonly analysis: ItemAnalysis | null;
    }
  | { readonly kind: 'refused'; readonly reason: string };

/** Rows in one part. */
const PART = 100;

async function sourcesOf(file: File): Promise<{
  readonly sources: readonly Source[];
  readonly unread: readonly Unread[];
}> {
  const refused = (reason: string) => ({ sources: [], unread: [{ file: file.name, reason }] });
  if (file.size > ARCHIVE_LIMITS.size) return refused('This file is too large.');
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (isArchive(bytes)) return readArchive(file.name, bytes);
    if (bytes.length > 2 * LONGEST_HAND_IN) {
      return refused('This file can’t be read: it is larger than any hand-in.');
    }
    return { sources: [{ file: file.name, text: new TextDecoder().decode(bytes) }], unread: [] };
  } catch {
    return refused('This file can’t be opened: it was moved or changed since it was chosen.');
  }
}

/**
 * Reads and marks files, saying how far it is. Between two events whoever listens may do
 * something else.
 */
export async function* markFiles({
  files,
  fragment,
  misconceptions,
}: MarkRequest): AsyncGenerator<MarkEvent, void, undefined> {
  const decoded = fragment === '' ? undefined : decodeAssignment(fragment);
  if (decoded && !decoded.ok) {
    yield { kind: 'refused', reason: decoded.reason };
    return;
  }
  const sources: Source[] = [];
  const refused: Unread[] = [];
  for (const [i, file] of files.entries()) {
    const found = await sourcesOf(file);
    sources.push(...found.sources);
    refused.push(...found.unread);
    yield { kind: 'read', done: i + 1, of: files.length };
  }
  const marking = markAll(sources, {
    assignment: decoded?.assignment,
    misconceptions: new Map(misconceptions.map((each) => [each.id, each])),
  });
  let step = marking.next();
  for (; !step.done; step = marking.next()) {
    yield { kind: 'marked', done: step.value, of: sources.length };
  }
  const { sheet, unread } = step.value;
  for (let from = 0; sheet && from < sheet.rows.length; from += PART) {
    yield { kind: 'rows', rows: sheet.rows.slice(from, from + PART) };
  }
  yield {
    kind: 'done',
    assignment: sheet?.assignment ?? null,
    unread: [...refused, ...unread],
    analysis: sheet && itemAnalysis(sheet),
  };
}
