import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assignment } from '../../../src/class/assignment/assignment.ts';
import { encodeAssignment } from '../../../src/class/assignment/assignmentLink.ts';
import { seedOf } from '../../../src/class/assignment/student.ts';
import { type HandIn, writeHandIn } from '../../../src/class/hand-in/handIn.ts';
import { type Marks, markAll } from '../../../src/class/marking/markAll.ts';
import type { Finding } from '../../../src/class/marking/remarks.ts';
import { CALC } from '../../../src/practice/versions.ts';
import { misconceptions } from '../../practice/contentFiles.ts';
import { handInOf, stopAssignment } from '../../support/classOf.ts';

const bench = (number: number, skill = 0.6) =>
  handInOf(stopAssignment, `Bench ${number}`, skill, misconceptions);

function mark(texts: readonly string[], assignment?: Assignment): Marks {
  const sources = texts.map((text, i) => ({ file: `${i + 1}.json`, text }));
  const marking = markAll(sources, { assignment, misconceptions });
  let step = marking.next();
  while (!step.done) step = marking.next();
  return step.value;
}

/** The rows of hand-ins, whose codes fit what is in them. */
function rowsOf(...handIns: readonly HandIn[]) {
  return mark(handIns.map(writeHandIn), stopAssignment).sheet!.rows;
}

function findings(handIn: HandIn): readonly Finding[] {
  return rowsOf(handIn)[0]!.remarks.map(({ finding }) => finding);
}

/** A file that was changed with an editor: the code stays as it was. */
function edited(handIn: HandIn, change: Partial<HandIn>): string {
  const file = JSON.parse(writeHandIn(handIn)) as object;
  return JSON.stringify({ ...file, ...change });
}

describe('marking', () => {
  it('finds what the student was told, and nothing to remark in an honest file', () => {
    for (const skill of [0, 0.3, 0.7, 1]) {
      const handIn = bench(7, skill);
      const [row] = rowsOf(handIn);
      expect(row).toMatchObject({ right: handIn.right, counts: true, remarks: [] });
    }
    expect(rowsOf(bench(7, 1))[0]!.right).toBe(8);
    expect(rowsOf(bench(7, 0))[0]!.right).toBe(0);
  });

  it('names the mistakes behind wrong answers', () => {
    const [row] = rowsOf(bench(3, 0));
    const named = row!.answers.flatMap(({ mistakes }) => mistakes);
    expect(named.length).toBeGreaterThan(4);
    for (const { id, name } of named) expect(misconceptions.get(id)?.name).toBe(name);
  });

  it('takes a question without an answer for blank', () => {
    const handIn = bench(7, 1);
    const [first, ...rest] = handIn.answers;
    const blank = { ...first!, given: null, after: null, tries: 0 };
    const [row] = rowsOf({ ...handIn, right: 7, answers: [blank, ...rest] });
    expect(row).toMatchObject({ right: 7, remarks: [] });
    expect(row!.answers[0]!.verdict).toBe('blank');
  });

  it('catches an edited score, even with a code that fits', () => {
    const handIn = bench(7, 0.4);
    const { sheet } = mark([edited(handIn, { right: 8 })], stopAssignment);
    expect(sheet!.rows[0]).toMatchObject({ right: handIn.right });
    expect(sheet!.rows[0]!.remarks.map(({ finding }) => finding)).toEqual(['edited', 'score']);
    expect(findings({ ...handIn, right: 8 })).toEqual(['score']);
  });

  it('catches an edited answer by its code, and marks the answer that is there', () => {
    const [poor, good] = [bench(7, 0), bench(7, 1)];
    const { sheet } = mark([edited(poor, { answers: good.answers })], stopAssignment);
    const [row] = sheet!.rows;
    expect(row!.remarks.map(({ finding }) => finding)).toEqual(['edited', 'score']);
    expect(row).toMatchObject({ right: 8, counts: true });
  });

  it('catches a chosen seed, even with a code that fits: it does not count', () => {
    const handIn = { ...bench(7), seed: 1 };
    expect(findings(handIn)).toEqual(['seed', 'questions', 'score']);
    expect(rowsOf(handIn)[0]!.counts).toBe(false);
  });

  it('catches answers to questions that its seed does not ask', () => {
    const handIn = bench(7, 1);
    const strange = { ...handIn.answers[2]!, question: 'read-the-rule@1:4' };
    const answers = handIn.answers.with(2, strange);
    expect(findings({ ...handIn, answers, right: 7 })).toEqual(['questions']);
    expect(findings({ ...handIn, answers: [...handIn.answers, strange] })).toEqual(['questions']);
    expect(findings({ ...handIn, answers: handIn.answers.slice(1) })).toContain('questions');
  });

  it('sets aside what belongs to another assignment, be it only a wider tolerance', () => {
    const wider = { ...stopAssignment, limits: {} };
    const handIn = handInOf(wider, 'Bench 7', 1, misconceptions);
    expect(rowsOf(handIn)[0]).toMatchObject({ counts: false, right: 0, answers: [] });
    expect(findings(handIn)).toEqual(['assignment']);
    expect(findings({ ...bench(7), assignment: 'nonsense' })).toEqual(['assignment']);
  });

  it('does not mind another title, pass mark or due date in the student’s link', () => {
    const assignment = encodeAssignment({ ...stopAssignment, title: 'Stops', passMark: 0 });
    expect(findings({ ...bench(7), assignment })).toEqual([]);
  });

  it('calls out another edition, and lets the key that was shown decide there', () => {
    const handIn = { ...bench(7, 1), calc: CALC + 1 };
    expect(findings(handIn)).toEqual(['edition']);
    // That edition reckoned the first answer otherwise, and told the student so.
    const [first, ...rest] = handIn.answers;
    const shown = { ...first!, key: Number(first!.key) + 5 };
    const [row] = rowsOf({ ...handIn, right: 7, answers: [shown, ...rest] });
    expect(row!.remarks.map(({ finding }) => finding)).toEqual(['edition', 'key']);
    expect(row).toMatchObject({ right: 7, counts: true });
  });

  it('does not believe another key in a file of this edition', () => {
    const handIn = bench(7, 0);
    const answers = handIn.answers.map((answer) => {
      const { given } = answer;
      return given && 'choices' in given ? { ...answer, key: given.choices } : answer;
    });
    const [row] = rowsOf({ ...handIn, answers, right: 2 });
    expect(row!.remarks.map(({ finding }) => finding)).toEqual(['key', 'score']);
    expect(row!.right).toBe(0);
  });

  it('counts the latest of one student’s files, whatever their order', () => {
    const first = bench(7, 0.2);
    const second = { ...bench(7, 1), student: 'bench 7', handedIn: '2026-11-05T08:00:00Z' };
    for (const files of [
      [first, second],
      [second, first],
    ]) {
      const rows = rowsOf(...files);
      expect(rows.map((row) => [row.right, row.counts])).toEqual([
        [8, true],
        [first.right, false],
      ]);
      expect(rows[1]!.remarks).toMatchObject([{ finding: 'earlier' }]);
    }
    const twice = rowsOf(first, first);
    expect(twice.map((row) => row.counts)).toEqual([true, false]);
    expect(twice[1]!.remarks[0]!.says).toContain('same file once more');
  });

  it('calls out a file that was handed in again under another name', () => {
    const own = bench(3, 0.8);
    const rows = rowsOf({ ...own, student: 'Bench 7' }, own);
    expect(rows.map((row) => [row.student, row.counts])).toEqual([
      ['Bench 3', true],
      ['Bench 7', false],
    ]);
    const said = rows[1]!.remarks;
    expect(said.map(({ finding }) => finding)).toEqual(['copied', 'seed']);
    expect(said[0]!.says).toContain('“Bench 3”');
  });

  it('does not take two honest students who do equally well for copies', () => {
    const rows = rowsOf(...Array.from({ length: 12 }, (_, i) => bench(i + 1, 1)));
    expect(rows.every((row) => row.counts && row.remarks.length === 0)).toBe(true);
    expect(rows.map((row) => row.student)).toEqual(
      Array.from({ length: 12 }, (_, i) => `Bench ${i + 1}`),
    );
  });

  it('remarks what came late, and counts it', () => {
    const due = { ...stopAssignment, due: '2026-11-01' };
    const { sheet } = mark([writeHandIn(bench(7))], due);
    expect(sheet!.rows[0]).toMatchObject({ counts: true, remarks: [{ finding: 'late' }] });
  });

  it('goes by what most files say where no assignment is given, and names what it can’t read', () => {
    const other = handInOf({ ...stopAssignment, id: 'ZZZZZZZZ' }, 'Bench 4', 1, misconceptions);
    const texts = [bench(1), other, bench(2)].map(writeHandIn);
    const { sheet, unread } = mark([...texts, 'a photo of a cat']);
    expect(sheet!.assignment).toEqual(stopAssignment);
    expect(sheet!.rows.map((row) => row.counts)).toEqual([true, true, false]);
    expect(unread).toMatchObject([{ file: '4.json' }]);
    expect(mark(['{}'])).toMatchObject({ sheet: null, unread: [{ file: '1.json' }] });
  });

  it('gives the same sheet in whatever order the files come', () => {
    const handIns = Array.from({ length: 6 }, (_, i) => bench(i + 1));
    const files = [
      ...handIns,
      { ...bench(2, 1), handedIn: '2026-11-09T10:00:00Z' },
      { ...bench(3), student: 'Bench 5' },
    ];
    const sheetOf = (some: readonly HandIn[]) =>
      rowsOf(...some).map(({ student, handedIn, right, counts, remarks }) => [
        ...[student, handedIn, right, counts],
        remarks.map(({ finding }) => finding),
      ]);
    const expected = sheetOf(files);
    fc.assert(
      fc.property(fc.shuffledSubarray(files, { minLength: files.length }), (shuffled) => {
        expect(sheetOf(shuffled)).toEqual(expected);
      }),
      { numRuns: 8 },
    );
  });

  it('knows a seed that fits: it follows from assignment and name', () => {
    expect(bench(7).seed).toBe(seedOf(stopAssignment, 'BENCH 7'));
  });
});
