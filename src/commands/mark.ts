/**
 * Marks every hand-in in a folder, subfolders and zip archives included:
 *
 *     npm run mark -- FOLDER [--assignment LINK] [--out FILE] [--column NAME]
 *                            [--identifiers FILE] [--line-item ID]
 *
 * Prints the mark sheet and what the class misunderstands, and writes the sheet as
 * FOLDER/mark-sheet.csv or to FILE. `--identifiers` is a list `Bench 7, 20417`; with `--line-item`
 * the scores are also written as results.csv of OneRoster 1.2 beside the sheet.
 */
import { type Dirent, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { rightToPass } from '../class/assignment/assignment.ts';
import { decodeAssignment } from '../class/assignment/assignmentLink.ts';
import { readIdentifiers } from '../class/gradebook/identifiers.ts';
import { itemAnalysis } from '../class/gradebook/itemAnalysis.ts';
import { markSheetCsv, mistakesOf } from '../class/gradebook/markSheetCsv.ts';
import { isSourcedId, oneRosterResults } from '../class/gradebook/oneRoster.ts';
import { LONGEST_HAND_IN } from '../class/hand-in/readHandIn.ts';
import { type Source, type Unread, markAll } from '../class/marking/markAll.ts';
import { type MarkSheet, percent } from '../class/marking/markSheet.ts';
import { ARCHIVE_LIMITS, readArchive } from '../class/marking/readArchive.ts';
import { readMisconceptions } from '../practice/questions/misconceptions.ts';

const MISCONCEPTIONS = 'content/misconceptions.yaml';

/** Ends the command with a sentence for whoever typed it. */
function stop(sentence: string): never {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}

function say(text = ''): void {
  process.stdout.write(`${text}\n`);
}

/** Every hand-in and archive in a folder, in the order of their names. */
function filesIn(folder: string): readonly string[] {
  let entries: Dirent[];
  try {
    entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  } catch {
    return stop(`There is no folder ${folder}.`);
  }
  return entries
    .filter((entry) => entry.isFile() && /\.(json|zip)$/i.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

function readAll(folder: string): { sources: readonly Source[]; unread: readonly Unread[] } {
  const sources: Source[] = [];
  const unread: Unread[] = [];
  for (const path of filesIn(folder)) {
    const file = relative(folder, path);
    const archive = /\.zip$/i.test(path);
    const most = archive ? ARCHIVE_LIMITS.size : 2 * LONGEST_HAND_IN;
    if (statSync(path).size > most) {
      unread.push({ file, reason: 'This file can’t be read: it is too large.' });
    } else if (archive) {
      const inside = readArchive(file, readFileSync(path));
      sources.push(...inside.sources);
      unread.push(...inside.unread);
    } else sources.push({ file, text: readFileSync(path, 'utf8') });
  }
  return { sources, unread };
}

/** A name that a terminal shows as it is: nothing in it moves the cursor. */
function shown(text: string, width: number): string {
  const plain = text.replace(/\p{C}/gu, '');
  return plain.length > width ? `${plain.slice(0, width - 1)}…` : plain.padEnd(width);
}

function printSheet({ assignment, rows }: MarkSheet): void {
  const needed = rightToPass(assignment);
  say(`${shown(assignment.title, 60).trim()}: ${assignment.count} questions, ${needed} to pass.`);
  say();
  for (const row of rows) {
    const score = row.counts
      ? `${String(row.right).padStart(3)} of ${assignment.count} ${String(percent(row, assignment)).padStart(4)} %  ${row.right >= needed ? 'passed' : '      '}`
      : '  does not count     ';
    say(`${shown(row.student, 24)} ${score}  ${row.code}  ${mistakesOf(row).join('; ')}`);
    for (const { finding, says } of row.remarks)
      say(`    ! ${finding}: ${shown(says, 200).trim()}`);
  }
}

function printAnalysis(sheet: MarkSheet): void {
  const { students, items, mistakes } = itemAnalysis(sheet);
  say();
  say(`${students} hand-ins count. How each question went:`);
  for (const { number, template, difficulty, discrimination, blank } of items) {
    const tells = discrimination === null ? '' : `tells apart ${discrimination.toFixed(2)}`;
    const right = students === 0 ? '' : `${Math.round(100 * difficulty)} % right`;
    say(
      `${String(number).padStart(4)}  ${template.padEnd(24)} ${right.padStart(11)}  ${tells}${blank > 0 ? `  ${blank} blank` : ''}`,
    );
  }
  if (mistakes.length > 0) say();
  for (const { mistake, students: count } of mistakes) {
    say(`${String(count).padStart(5)}  ${mistake.name}`);
  }
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    assignment: { type: 'string' },
    out: { type: 'string' },
    column: { type: 'string', default: 'Student' },
    identifiers: { type: 'string' },
    'line-item': { type: 'string' },
  },
});
const [folder] = positionals;
if (folder === undefined || positionals.length > 1) {
  stop('Name one folder with hand-ins: npm run mark -- FOLDER');
}

const decoded =
  values.assignment === undefined
    ? undefined
    : decodeAssignment(values.assignment.replace(/^[^#]*#/, ''));
if (decoded && !decoded.ok) stop(decoded.reason);
const misconceptions = readMisconceptions(
  MISCONCEPTIONS,
  readFileSync(resolve(import.meta.dirname, '../..', MISCONCEPTIONS), 'utf8'),
);
const identifiers = readIdentifiers(
  values.identifiers === undefined ? '' : readFileSync(values.identifiers, 'utf8'),
);

const { sources, unread: refused } = readAll(folder);
const marking = markAll(sources, { assignment: decoded?.assignment, misconceptions });
let step = marking.next();
while (!step.done) step = marking.next();
const { sheet, unread } = step.value;

for (const { file, reason } of [...refused, ...unread]) say(`${shown(file, 40).trim()}: ${reason}`);
if (!sheet) stop('No file tells what was assigned.');
printSheet(sheet);
printAnalysis(sheet);

const out = values.out ?? join(folder, 'mark-sheet.csv');
writeFileSync(out, markSheetCsv(sheet, { column: values.column, identifiers, bench: new Map() }));
say();
say(`Written: ${out}`);
const lineItem = values['line-item'];
if (lineItem !== undefined) {
  if (!isSourcedId(lineItem)) stop(`“${lineItem}” can’t be the sourcedId of a line item.`);
  const results = oneRosterResults(sheet, { lineItem, identifiers });
  const path = join(dirname(out), 'results.csv');
  writeFileSync(path, results.csv);
  say(`Written: ${path}`);
  if (results.leftOut.length > 0) {
    say(
      `Without an identifier, so not in it: ${results.leftOut.map((each) => shown(each, 40).trim()).join(', ')}`,
    );
  }
}
