import type { Standing } from '../../practice/progress/standing.ts';
import { markAnswer } from '../../practice/questions/markAnswer.ts';
import type { Question } from '../../practice/questions/types.ts';
import { BANK, CALC } from '../../practice/versions.ts';
import type { Assignment } from '../assignment/assignment.ts';
import { encodeAssignment } from '../assignment/assignmentLink.ts';
import { seedOf } from '../assignment/student.ts';
import { keyOf } from './answerKey.ts';
import type { HandIn } from './handIn.ts';

/** A moment as it stands in a hand-in. @param seconds since 1970 (UTC) */
function moment(seconds: number): string {
  return `${new Date(1000 * seconds).toISOString().slice(0, 19)}Z`;
}

/** How many of the answers that count are right. */
export function rightIn({ answers }: Pick<Standing, 'answers'>, questions: readonly Question[]) {
  return questions.filter((question, i) => {
    const answer = answers[i];
    return answer && markAnswer(question, answer.given).verdict === 'right';
  }).length;
}

/**
 * What a student hands in.
 * @param questions the student's own, as `questionsOf` gives them
 * @throws RangeError where the standing has not been handed in
 */
export function makeHandIn(
  assignment: Assignment,
  student: string,
  standing: Standing,
  questions: readonly Question[],
): HandIn {
  const { begun, handedIn, answers } = standing;
  if (handedIn === undefined) throw new RangeError('it has not been handed in');
  return {
    assignment: encodeAssignment(assignment),
    student,
    seed: seedOf(assignment, student),
    calc: CALC,
    bank: BANK,
    begun: moment(begun),
    handedIn: moment(handedIn),
    right: rightIn(standing, questions),
    answers: questions.map((question, i) => {
      const { given = null, after = null, tries = 0 } = answers[i] ?? {};
      return { question: question.identity, given, after, tries, key: keyOf(question) };
    }),
  };
}
