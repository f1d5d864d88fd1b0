import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parse } from 'csv-parse/sync';
import { strToU8, zipSync } from 'fflate';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { encodeAssignment } from '../../src/class/assignment/assignmentLink.ts';
import { writeHandIn } from '../../src/class/hand-in/handIn.ts';
import { misconceptions } from '../practice/contentFiles.ts';
import { handInOf, stopAssignment } from '../support/classOf.ts';

const command = resolve(import.meta.dirname, '../../src/commands/mark.ts');
const handIn = (bench: number) =>
  writeHandIn(handInOf(stopAssignment, `Bench ${bench}`, 0.6, misconceptions));

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'hand-ins-'));
  mkdirSync(join(folder, 'later'));
  writeFileSync(join(folder, 'hand-in-bench-1.json'), handIn(1));
  writeFileSync(join(folder, 'later/hand-in-bench-2.json'), handIn(2));
  writeFileSync(join(folder, 'notes.json'), '{}');
  writeFileSync(join(folder, 'photo.jpg'), 'x');
  writeFileSync(join(folder, 'rest.zip'), zipSync({ 'b3.json': strToU8(handIn(3)) }));
  writeFileSync(join(folder, 'ids.csv'), 'Bench 1,20417\nBench 2,20418\nBench 3,20419\n');
});

afterAll(() => rmSync(folder, { recursive: true }));

it('marks a folder: prints the sheet, writes it, and the scores for OneRoster', () => {
  const ids = join(folder, 'ids.csv');
  const link = `https://school.example/assignment/#${encodeAssignment(stopAssignment)}`;
  const said = execFileSync(
    process.execPath,
    [command, folder, '--assignment', link, '--identifiers', ids, '--line-item', 'stop-1'],
    { encoding: 'utf8' },
  );
  expect(said).toContain('Setting the stop: 8 questions, 6 to pass.');
  expect(said).toMatch(/Bench 1 .*Bench 2 .*Bench 3 /s);
  expect(said).toContain('notes.json: This file can’t be read: it is not a hand-in.');
  expect(said).toContain('3 hand-ins count.');
  const sheet: string[][] = parse(readFileSync(join(folder, 'mark-sheet.csv')), { bom: true });
  expect(sheet.map(([first]) => first)).toEqual(['Student', '20417', '20418', '20419']);
  const results: string[][] = parse(readFileSync(join(folder, 'results.csv')));
  expect(results).toHaveLength(4);
});

it.each([
  [[], 'Name one folder'],
  [[join(tmpdir(), 'no-such-folder')], 'There is no folder'],
  [[tmpdir(), '--assignment', 'https://school.example/#1;n=8'], 'This link can’t be read'],
])('stops with a sentence: %j', (args, sentence) => {
  const { status, stderr } = spawnSync(process.execPath, [command, ...args], { encoding: 'utf8' });
  expect(status).toBe(1);
  expect(stderr).toContain(sentence);
});
