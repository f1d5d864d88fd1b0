import type { MisconceptionNames } from '../../practice/made/index.ts';
import { markAnswer } from '../../practice/questions/markAnswer.ts';
import type { NamedMistake, Question } from '../../practice/questions/types.ts';
import { BANK, CALC } from '../../practice/versions.ts';
import { type Assignment, toleranceOf } from '../assignment/assignment.ts';
import { decodeAssignment, whatIsAsked } from '../assignment/assignmentLink.ts';
import { seedOf } from '../assignment/student.ts';
import { questionsOf } from '../assignment/studentQuestions.ts';
import { keyOf, rightByKey, sameKey } from '../hand-in/answerKey.ts';
import type { Answer, HandIn } from '../hand-in/handIn.ts';
import type { MarkRemark } from './remarks.ts';

/** What became of one answer when it was marked again. */
export interface MarkedAnswer {
  /** 'blank': no answer, or one that can't be read. */
  readonly verdict: 'right' | 'wrong' | 'blank';
  /** The mistakes that a wrong answer shows. */
  readonly mistakes: readonly NamedMistake[];
}

/** A hand-in and what it comes to. */
export interface MarkedHandIn {
  readonly handIn: HandIn;
  /** One for each question; none where the hand-in is of another assignment. */
  readonly answers: readonly MarkedAnswer[];
  readonly right: number;
  readonly remarks: readonly MarkRemark[];
}

const BLANK: MarkedAnswer = { verdict: 'blank', mistakes: [] };

function markAgain(question: Question, answer: Answer): MarkedAnswer {
  const { given } = answer;
  if (given?.kind !== question.kind) return BLANK;
  const { verdict, remarks } = markAnswer(question, given);
  if (verdict === 'unreadable') return BLANK;
  if (verdict === 'right') return { verdict, mistakes: [] };
  const named = remarks.flatMap(({ misconception }) => (misconception ? [misconception] : []));
  return { verdict, mistakes: [...new Map(named.map((each) => [each.id, each])).values()] };
}

/** An answer to a question that is asked otherwise today: the key that it was shown decides. */
function markByShown(again: MarkedAnswer, answer: Answer, tolerance: number): MarkedAnswer {
  if (answer.given === null) return BLANK;
  if (rightByKey(answer.given, answer.key, tolerance)) return { verdict: 'right', mistakes: [] };
  return again.verdict === 'wrong' ? again : { verdict: 'wrong', mistakes: [] };
}

/** 'question 3', or 'questions 1, 3 and 4'. */
function numbered(numbers: readonly number[]): string {
  if (numbers.length === 1) return `question ${numbers[0]}`;
  return `questions ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}

function ofAnother(handIn: HandIn): MarkedHandIn {
  const own = decodeAssignment(handIn.assignment);
  const says = own.ok
    ? `It belongs to another assignment, “${own.assignment.title}”.`
    : 'It belongs to another assignment, and its link can’t be read.';
  return { handIn, answers: [], right: 0, remarks: [{ finding: 'assignment', says }] };
}

/**
 * Marks a hand-in again from its seed and its answers; what the file claims is only compared.
 * Answers that are copied right can't be told from known ones.
 * @param edited whether the code in the file is another than its content has
 */
export function markHandIn(
  handIn: HandIn,
  edited: boolean,
  assignment: Assignment,
  misconceptions: MisconceptionNames,
): MarkedHandIn {
  const own = decodeAssignment(handIn.assignment);
  if (!own.ok || whatIsAsked(own.assignment) !== whatIsAsked(assignment)) return ofAnother(handIn);

  const sameEdition = handIn.calc === CALC && handIn.bank === BANK;
  const answers: MarkedAnswer[] = [];
  const otherKeys: number[] = [];
  const otherQuestions: number[] = [];
  for (const question of questionsOf(assignment, handIn.seed, misconceptions)) {
    const number = answers.length + 1;
    const answer = handIn.answers[number - 1];
    const asked = answer?.question === question.identity;
    if (!answer || (!asked && sameEdition)) {
      otherQuestions.push(number);
      answers.push(BLANK);
      continue;
    }
    const again = asked ? markAgain(question, answer) : BLANK;
    const known = asked && sameKey(answer.key, keyOf(question), question.kind);
    if (!known) otherKeys.push(number);
    answers.push(
      known || sameEdition ? again : markByShown(again, answer, toleranceOf(assignment)),
    );
  }
  const { count, due } = assignment;
  const right = answers.filter(({ verdict }) => verdict === 'right').length;
  const says: [MarkRemark['finding'], string | false][] = [
    [
      'seed',
      handIn.seed !== seedOf(assignment, handIn.student) &&
        `Its questions belong to another name than “${handIn.student}”.`,
    ],
    ['edited', edited && 'It was changed after it was saved: its code doesn’t fit what is in it.'],
    [
      'questions',
      (otherQuestions.length > 0 || handIn.answers.length > count) &&
        (otherQuestions.length > 0
          ? `What it answers as ${numbered(otherQuestions)} was not asked.`
          : `It has ${handIn.answers.length} answers to ${count} questions.`),
    ],
    [
      'edition',
      !sameEdition &&
        'It was answered with another edition of this workbook. Where that has other answers, those that it was shown count.',
    ],
    [
      'key',
      otherKeys.length > 0 &&
        `It says that something else was shown as right for ${numbered(otherKeys)}.`,
    ],
    ['score', handIn.right !== right && `It says ${handIn.right} right. Marked again: ${right}.`],
    [
      'late',
      due !== undefined &&
        handIn.handedIn.slice(0, 10) > due &&
        `It was handed in after ${due}, by the student’s clock.`,
    ],
  ];
  return {
    handIn,
    answers,
    right,
    remarks: says.flatMap(([finding, text]) => (text === false ? [] : [{ finding, says: text }])),
  };
}
