import { expect, it } from 'vitest';
import { seedOf } from '../../../src/class/assignment/student.ts';
import { questionsOf } from '../../../src/class/assignment/studentQuestions.ts';
import { writeHandIn } from '../../../src/class/hand-in/handIn.ts';
import { makeHandIn, rightIn } from '../../../src/class/hand-in/makeHandIn.ts';
import { readHandIn } from '../../../src/class/hand-in/readHandIn.ts';
import { markHandIn } from '../../../src/class/marking/markHandIn.ts';
import { BANK, CALC } from '../../../src/practice/versions.ts';
import { misconceptions } from '../../practice/contentFiles.ts';
import { rightAnswer } from '../../practice/made/rightAnswer.ts';
import { stopAssignment } from '../../support/classOf.ts';

const seed = seedOf(stopAssignment, 'Bench 7');
const questions = [...questionsOf(stopAssignment, seed, misconceptions)];
const standing = {
  ...{ calc: CALC, bank: BANK, begun: 1_793_000_000, handedIn: 1_793_000_600 },
  answers: questions.map((question, i) =>
    i === 3 ? null : { given: rightAnswer(question), after: 60 * i, tries: 1 },
  ),
};

it('hands in what was answered, so that marking finds the same score and nothing to remark', () => {
  const handIn = makeHandIn(stopAssignment, 'Bench 7', standing, questions);
  expect(rightIn(standing, questions)).toBe(7);
  expect(handIn).toMatchObject({ seed, right: 7, begun: '2026-10-26T07:33:20Z' });
  expect(handIn.answers[3]).toMatchObject({ given: null, after: null, tries: 0 });
  const read = readHandIn(writeHandIn(handIn));
  if (!read.ok) throw new Error(read.reason);
  const marked = markHandIn(read.handIn, read.edited, stopAssignment, misconceptions);
  expect(marked).toMatchObject({ right: 7, remarks: [] });
});

it('hands nothing in before its time', () => {
  const { handedIn: _later, ...open } = standing;
  expect(() => makeHandIn(stopAssignment, 'Bench 7', open, questions)).toThrow(RangeError);
});
