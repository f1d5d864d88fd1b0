/**
 * A made-up class that does an assignment: some know more, some less, and who errs errs as people
 * do. For tests and for looking at pages with something on them.
 */
import { mm } from '../../src/core/length/mm.ts';
import { formatWorking } from '../../src/core/length/formatLength.ts';
import type { Assignment } from '../../src/class/assignment/assignment.ts';
import { encodeAssignment } from '../../src/class/assignment/assignmentLink.ts';
import { seedOf } from '../../src/class/assignment/student.ts';
import { questionsOf } from '../../src/class/assignment/studentQuestions.ts';
import { keyOf } from '../../src/class/hand-in/answerKey.ts';
import type { HandIn } from '../../src/class/hand-in/handIn.ts';
import { Draws } from '../../src/practice/made/draws.ts';
import type { MisconceptionNames } from '../../src/practice/made/index.ts';
import { markAnswer } from '../../src/practice/questions/markAnswer.ts';
import type { Given, Question } from '../../src/practice/questions/types.ts';
import { BANK, CALC } from '../../src/practice/versions.ts';

/** The assignment of the tests: the stop for 3/4 in and 7/8 in boards. */
export const stopAssignment: Assignment = {
  id: '7K2M9QXB',
  title: 'Setting the stop',
  templates: ['stop-for-a-board', 'stop-in-an-edge', 'hole-from-the-stop', 'wrong-depth'],
  count: 8,
  passMark: 70,
  system: 'in',
  feedback: 'end',
  limits: { joints: ['edge', 'corner', 'tee', 'frame'], thicknesses: [mm(19.05), mm(22.225)] },
  calc: CALC,
  bank: BANK,
};

/** An answer to a question: the right one, or one that a mistake leads to. */
export function answerTo(question: Question, right: boolean, draws: Draws): Given {
  switch (question.kind) {
    case 'length':
    case 'rule': {
      const length = right ? question.right : draws.pick(question.mistakes).length;
      const text = `${formatWorking(length, question.system)} ${question.system}`;
      return { kind: question.kind, text, unit: question.system };
    }
    case 'order':
      return {
        kind: 'order',
        steps: right ? question.order : question.order.toReversed(),
      };
    default: {
      const { kind, choices } = question;
      const wanted = choices.filter((choice) => choice.right === right);
      const some = right && kind !== 'one' ? wanted : [draws.pick(wanted)];
      return { kind, choices: some.map(({ id }) => id) };
    }
  }
}

/**
 * What a student hands in.
 * @param skill the share of questions that the student knows, 0 to 1
 */
export function handInOf(
  assignment: Assignment,
  student: string,
  skill: number,
  misconceptions: MisconceptionNames,
): HandIn {
  const draws = new Draws(`class:${student}`);
  const seed = seedOf(assignment, student);
  let [after, right] = [0, 0];
  const answers = [...questionsOf(assignment, seed, misconceptions)].map((question) => {
    const given = answerTo(question, draws.whole(0, 999) < 1000 * skill, draws);
    if (markAnswer(question, given).verdict === 'right') right += 1;
    after += draws.whole(20, 90);
    return { question: question.identity, given, after, tries: 1, key: keyOf(question) };
  });
  const begun = Date.UTC(2026, 10, 3, 9, draws.whole(0, 9));
  const time = (milliseconds: number) => `${new Date(milliseconds).toISOString().slice(0, 19)}Z`;
  return {
    assignment: encodeAssignment(assignment),
    ...{ student, seed, calc: CALC, bank: BANK, right, answers },
    begun: time(begun),
    handedIn: time(begun + 1000 * (after + 15)),
  };
}
