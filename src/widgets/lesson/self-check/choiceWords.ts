import type { Given, Marked, Question } from '../../../practice/questions/types.ts';

/** The word that stands beside a choice, a place or a step once it is marked, by its id. */
export function choiceWords(
  question: Question,
  given: Given,
  { verdict, remarks }: Marked,
): Readonly<Record<string, string>> {
  if (verdict === 'unreadable') return {};
  const faults = new Set(verdict === 'wrong' ? remarks.map(({ choice }) => choice) : []);
  if (question.kind === 'order') {
    const early = question.steps.filter(({ id }) => faults.has(id));
    return Object.fromEntries(early.map(({ id }) => [id, 'Too soon']));
  }
  if (!('choices' in question) || !('choices' in given)) return {};
  return Object.fromEntries(
    question.choices.flatMap(({ id, right }) => {
      const chosen = given.choices.includes(id);
      if (faults.has(id)) return [[id, chosen ? 'Not this one' : 'Look again']];
      return right && chosen ? [[id, 'Right']] : [];
    }),
  );
}
