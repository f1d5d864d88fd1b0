import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import {
  FEWEST_TO_DISCRIMINATE,
  discrimination,
  itemAnalysis,
} from '../../../src/class/gradebook/itemAnalysis.ts';
import { writeHandIn } from '../../../src/class/hand-in/handIn.ts';
import { markAll } from '../../../src/class/marking/markAll.ts';
import { misconceptions } from '../../practice/contentFiles.ts';
import { handInOf, stopAssignment } from '../../support/classOf.ts';

function sheetOf(skills: readonly number[]) {
  const sources = skills.map((skill, i) => {
    const handIn = handInOf(stopAssignment, `Bench ${i + 1}`, skill, misconceptions);
    return { file: `${i}.json`, text: writeHandIn(handIn) };
  });
  const marking = markAll(sources, { misconceptions });
  let step = marking.next();
  while (!step.done) step = marking.next();
  return step.value.sheet!;
}

const skills = Array.from({ length: 24 }, (_, i) => (i + 1) / 25);

describe('discrimination', () => {
  it('is 1 where who has it right has the others right, -1 where it is the other way round', () => {
    expect(discrimination([true, true, false, false], [5, 5, 2, 2])).toBeCloseTo(1);
    expect(discrimination([true, true, false, false], [2, 2, 5, 5])).toBeCloseTo(-1);
    expect(discrimination([true, false, true, false], [3, 3, 5, 5])).toBeCloseTo(0);
  });

  it('can’t be said where all do alike', () => {
    expect(discrimination([true, true, true], [1, 2, 3])).toBeNull();
    expect(discrimination([true, false, true], [4, 4, 4])).toBeNull();
    expect(discrimination([], [])).toBeNull();
  });

  it('is what jstat finds for the correlation with the rest of the score', () => {
    const student = fc.record({ right: fc.boolean(), others: fc.integer({ min: 0, max: 20 }) });
    fc.assert(
      fc.property(fc.array(student, { minLength: 3, maxLength: 40 }), (students) => {
        const right = students.map((each) => each.right);
        const others = students.map((each) => each.others);
        const ours = discrimination(right, others);
        fc.pre(ours !== null);
        expect(ours).toBeCloseTo(jstat.corrcoeff(right.map(Number), others), 9);
      }),
    );
  });

  it('is also the textbooks’ point-biserial: means of the two groups apart, over the spread', () => {
    // r = (M1 - M0) / s * sqrt(p q), s being the spread of all (population) others.
    const right = [true, true, true, false, true, false, true, false, false, false];
    const others = [9, 8, 7, 7, 6, 5, 5, 4, 3, 2];
    const group = (which: boolean) => others.filter((_, i) => right[i] === which);
    const p = group(true).length / right.length;
    const apart = jstat.mean(group(true)) - jstat.mean(group(false));
    const expected = (apart / jstat.stdev(others, false)) * Math.sqrt(p * (1 - p));
    expect(discrimination(right, others)).toBeCloseTo(expected, 12);
    expect(expected).toBeCloseTo(0.6644, 4);
  });
});

describe('the analysis of a class', () => {
  const sheet = sheetOf(skills);
  const analysis = itemAnalysis(sheet);

  it('counts every student at every question once', () => {
    expect(analysis.students).toBe(24);
    for (const { right, wrong, blank, difficulty } of analysis.items) {
      expect(right + wrong + blank).toBe(24);
      expect(difficulty).toBeCloseTo(right / 24);
    }
    const all = analysis.items.reduce((sum, { right }) => sum + right, 0);
    expect(all).toBe(sheet.rows.reduce((sum, { right }) => sum + right, 0));
  });

  it('finds that the questions tell those who know from those who don’t', () => {
    const values = analysis.items.map((item) => item.discrimination!);
    expect(values.every((value) => value > 0)).toBe(true);
    const first = sheet.rows.map(({ answers }) => Number(answers[0]!.verdict === 'right'));
    const others = sheet.rows.map(({ right }, i) => right - first[i]!);
    expect(values[0]).toBeCloseTo(jstat.corrcoeff(first, others), 9);
  });

  it('counts each mistake once a student, the commonest first', () => {
    const counts = analysis.mistakes.map(({ students }) => students);
    expect(counts).toEqual(counts.toSorted((one, other) => other - one));
    const { mistake, students } = analysis.mistakes[0]!;
    const holding = sheet.rows.filter(({ answers }) =>
      answers.some(({ mistakes }) => mistakes.some(({ id }) => id === mistake.id)),
    );
    expect(students).toBe(holding.length);
    expect(students).toBeGreaterThan(4);
  });

  it('says nothing of discrimination where few hand in', () => {
    const few = itemAnalysis(sheetOf(skills.slice(0, FEWEST_TO_DISCRIMINATE - 1)));
    expect(few.items.every((item) => item.discrimination === null)).toBe(true);
  });
});
