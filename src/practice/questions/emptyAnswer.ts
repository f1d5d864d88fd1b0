import type { Given, Question } from './types.ts';

/** What stands in a question's fields before anything was done: nothing, or the steps as they are shown. */
export function emptyAnswer(question: Question): Given {
  switch (question.kind) {
    case 'length':
      return { kind: 'length', text: '', unit: question.system };
    case 'rule':
      return { kind: 'rule', text: '', unit: question.rule.division.unit };
    case 'order':
      return { kind: 'order', steps: question.steps.map(({ id }) => id) };
    default:
      return { kind: question.kind, choices: [] };
  }
}
