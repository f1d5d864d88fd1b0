import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { identifierOf, readIdentifiers } from '../../../src/class/gradebook/identifiers.ts';
import { markSheetCsv } from '../../../src/class/gradebook/markSheetCsv.ts';
import { isSourcedId, oneRosterResults } from '../../../src/class/gradebook/oneRoster.ts';
import { MOST_POINTS, pointsOf, rubric } from '../../../src/class/gradebook/rubric.ts';
import { studentKey } from '../../../src/class/assignment/student.ts';
import { writeHandIn } from '../../../src/class/hand-in/handIn.ts';
import { markAll } from '../../../src/class/marking/markAll.ts';
import { misconceptions } from '../../practice/contentFiles.ts';
import { handInOf, stopAssignment } from '../../support/classOf.ts';

/** Names as somebody would type who hopes that a spreadsheet runs them. */
const HOSTILE = [
  '=HYPERLINK("http://x","y")',
  '+1+1',
  '-2+3|cmd',
  '@SUM(A1:A9)',
  '＝1+1',
  'Bench "7", left',
  '"',
  ',;',
];

function sheetOf(students: readonly string[], due = '2026-12-04') {
  const sources = students.map((student, i) => ({
    file: `=file ${i}.json`,
    text: writeHandIn(handInOf({ ...stopAssignment, due }, student, 0.5, misconceptions)),
  }));
  const marking = markAll(sources, { misconceptions });
  let step = marking.next();
  while (!step.done) step = marking.next();
  return step.value.sheet!;
}

const read = (csv: string): string[][] => parse(csv, { bom: true });

const options = { column: 'Student', identifiers: new Map(), bench: new Map() };

describe('the mark sheet as CSV', () => {
  it('is read by another parser, every row as wide as the first', () => {
    const sheet = sheetOf(['Bench 1', 'Bench 2', 'Bench 10']);
    const [head, ...rows] = read(markSheetCsv(sheet, options));
    expect(head).toEqual(expect.arrayContaining(['Student', 'Percent', 'Question 8', 'Mistakes']));
    expect(rows.map(([student]) => student)).toEqual(['Bench 1', 'Bench 2', 'Bench 10']);
    expect(rows.map((row) => row[head!.indexOf('Right')])).toEqual(
      sheet.rows.map(({ right }) => String(right)),
    );
  });

  it('leaves nothing that a spreadsheet would run, whatever students are called', () => {
    const cells = read(markSheetCsv(sheetOf(HOSTILE), options)).flat();
    expect(cells).toContain(`'=HYPERLINK("http://x","y")`);
    for (const cell of cells) expect(cell).not.toMatch(/^\s*[=+\-@＝＋－＠\t\r\n]/);
    for (const name of HOSTILE.map((each) => each.normalize('NFKC'))) {
      const shown = cells.filter((cell) => cell.normalize('NFKC').replace(/^'/, '') === name);
      expect(shown.length, name).toBeGreaterThan(0);
    }
  });

  it('has the column that the gradebook wants, with its identifiers', () => {
    const identifiers = readIdentifiers('Bench 1, 20417\nbench 2\t"20,418"\n\nBench 3,\n');
    const csv = markSheetCsv(sheetOf(['Bench 1', 'Bench 2', 'Bench 3']), {
      ...options,
      column: 'SIS ID',
      identifiers,
    });
    const [head, ...rows] = read(csv);
    expect(head![0]).toBe('SIS ID');
    expect(rows.map((row) => row.slice(0, 2))).toEqual([
      ['20417', 'Bench 1'],
      ['20,418', 'Bench 2'],
      ['Bench 3', 'Bench 3'],
    ]);
    expect(identifierOf('BENCH  1', identifiers)).toBe('20417');
  });

  it('has the bench assessment beside the score, and a sum once it is complete', () => {
    const bench = new Map([
      [studentKey('Bench 1'), { gap: 3, step: 2, wood: 3, process: 0 } as const],
      [studentKey('Bench 2'), { gap: 1 } as const],
    ]);
    const [head, ...rows] = read(
      markSheetCsv(sheetOf(['Bench 1', 'Bench 2']), { ...options, bench }),
    );
    const column = (name: string) => rows.map((row) => row[head!.indexOf(name)]);
    expect(column('Bench: Gap')).toEqual(['3', '1']);
    expect(column('Bench: Process')).toEqual(['0', '']);
    expect(column('Bench points')).toEqual(['8', '']);
  });

  it('gives what does not count no score', () => {
    const sheet = sheetOf(['Bench 1', 'Bench 1']);
    const [head, ...rows] = read(markSheetCsv(sheet, options));
    expect(rows.map((row) => row[head!.indexOf('Passed')])).toEqual([
      expect.stringMatching(/yes|no/),
      'does not count',
    ]);
    expect(rows[1]![head!.indexOf('Percent')]).toBe('');
  });
});

describe('OneRoster', () => {
  const identifiers = readIdentifiers('Bench 1,a81f-2\nBench 2,=1+1\n');

  it('gets the scores by its own identifiers, and no names', () => {
    const sheet = sheetOf(['Bench 1', 'Bench 2', 'Bench 3'], '2026-11-01');
    const { csv, leftOut } = oneRosterResults(sheet, { lineItem: 'stop-1', identifiers });
    expect(leftOut).toEqual(['Bench 2', 'Bench 3']);
    expect(csv.startsWith('sourcedId,status,dateLastModified,lineItemSourcedId')).toBe(true);
    expect(csv).not.toContain('Bench');
    const rows: Record<string, string>[] = parse(csv, { columns: true });
    expect(rows).toEqual([
      {
        sourcedId: 'stop-1-a81f-2',
        status: '',
        dateLastModified: '',
        lineItemSourcedId: 'stop-1',
        studentSourcedId: 'a81f-2',
        scoreStatus: 'fully graded',
        score: String(Math.round((100 * sheet.rows[0]!.right) / 8)),
        scoreDate: '2026-11-03',
        comment: '',
        textScore: '',
        classSourcedId: '',
        inProgress: 'false',
        incomplete: 'false',
        late: 'true',
        missing: 'false',
      },
    ]);
  });

  it.each(['', '=1', '@x', '-1', 'a b', 'x'.repeat(256)])('takes no such identifier: %j', (id) => {
    expect(isSourcedId(id)).toBe(false);
  });
});

describe('the rubric', () => {
  it('has four things to look at, three points each, and sums them once all are judged', () => {
    expect(rubric.map(({ id }) => id)).toEqual(['gap', 'step', 'wood', 'process']);
    expect(MOST_POINTS).toBe(12);
    expect(pointsOf({ gap: 3, step: 3, wood: 3, process: 3 })).toBe(12);
    expect(pointsOf({ gap: 0, step: 0, wood: 0, process: 0 })).toBe(0);
    expect(pointsOf({ gap: 3, step: 3, wood: 3 })).toBeNull();
  });
});
