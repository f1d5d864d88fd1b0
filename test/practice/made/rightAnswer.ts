import type { Given, Question } from '../../../src/practice/questions/types.ts';

/** The right answer of a question, as a student would give it. */
export function rightAnswer(question: Question): Given {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return { kind: question.kind, text: `${question.right} mm`, unit: 'mm' };
    case 'order':
      return { kind: 'order', steps: question.order };
    default:
      return {
        kind: question.kind,
        choices: question.choices.filter(({ right }) => right).map(({ id }) => id),
      };
  }
}
