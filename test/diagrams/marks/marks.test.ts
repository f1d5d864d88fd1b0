import { describe, expect, it } from 'vitest';
import { arrangeMistakes, describeMistakes } from '../../../src/diagrams/marks/mistakeBars.ts';
import {
  type QuestionResult,
  arrangeQuestions,
  describeQuestions,
} from '../../../src/diagrams/marks/questionBars.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const WIDTHS = [280, 320, 420, 559, 560, 700, 1100];

const questions = (count: number, students: number): readonly QuestionResult[] =>
  Array.from({ length: count }, (_, i) => {
    const right = Math.round((students * (i + 1)) / (count + 1));
    const blank = i % 3 === 0 ? Math.min(1, students - right) : 0;
    return {
      number: i + 1,
      ...{ right, blank, wrong: students - right - blank },
      discrimination: i % 4 === 0 ? null : Math.cos(i),
    };
  });

const mistakes = [
  {
    name: 'Measured from the wrong side of the collar, with a very long name indeed',
    students: 12,
  },
  { name: 'Forgot the point', students: 3 },
  { name: 'Forgot the bushing', students: 1 },
];

describe('the bars of a class', () => {
  it.each(WIDTHS)('have labels that keep clear of each other on %i px', (width) => {
    for (const [count, students] of [
      [1, 1],
      [8, 17],
      [40, 2000],
    ] as const) {
      expect(labelFaults(arrangeQuestions(questions(count, students), width))).toEqual([]);
    }
    expect(labelFaults(arrangeMistakes(mistakes, 12, width))).toEqual([]);
    expect(labelFaults(arrangeMistakes(mistakes.slice(1), 3, width))).toEqual([]);
  });

  it('end where all of the class is counted', () => {
    const ends = [
      { number: 1, right: 3, wrong: 0, blank: 0, discrimination: null },
      { number: 2, right: 1, wrong: 1, blank: 1, discrimination: null },
    ].map((question) => {
      const { strokes } = arrangeQuestions([question], 400);
      const xs = strokes
        .filter(({ pen }) => pen.startsWith('wood') || pen === 'hole')
        .slice(3) // the key
        .flatMap(({ d }) => [...d.matchAll(/[ML]([\d.]+),/g)].map(([, x]) => Number(x)));
      return [Math.min(...xs), Math.max(...xs)];
    });
    expect(ends[0]).toEqual(ends[1]);
  });

  it('say in words what is hardest, easiest, and odd', () => {
    const said = describeQuestions([
      { number: 1, right: 9, wrong: 1, blank: 0, discrimination: 0.4 },
      { number: 2, right: 2, wrong: 6, blank: 2, discrimination: -0.3 },
    ]);
    expect(said).toContain('Question 2 is the hardest: 20 %');
    expect(said).toContain('Question 1 is the easiest: 90 %');
    expect(said).toContain('question 2 wrong more often');
    expect(describeQuestions([])).toBe('Nobody has handed in yet.');
    expect(describeMistakes(mistakes, 12)).toContain('made by 12 of 12 students');
    expect(describeMistakes([], 12)).toBe('No wrong answer shows a known mistake.');
  });
});
