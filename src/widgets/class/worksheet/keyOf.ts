import type { Question } from '../../../practice/questions/types.ts';
import type { Sentence } from '../../../core/working/sentence.ts';
import { drawQuestion } from '../../lesson/self-check/drawQuestion.ts';

/**
 * The right answer as it stands on a key: a length, letters, or numbers in the order of the
 * printed steps.
 */
export function keyOf(question: Question): Sentence {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return [{ mm: question.right }];
    case 'order':
      return [question.steps.map(({ id }) => question.order.indexOf(id) + 1).join(', ')];
    case 'fault': {
      const spots = drawQuestion(question)?.spots ?? {};
      const right = question.choices.filter((choice) => choice.right);
      return [right.map(({ id }) => spots[id]?.letter ?? id).join(', ')];
    }
    default: {
      const letters = question.choices.flatMap(({ right }, i) =>
        right ? [String.fromCharCode(65 + i)] : [],
      );
      return [letters.join(', ')];
    }
  }
}
