import { Draws } from '../../practice/made/draws.ts';
import { hash } from '../../practice/made/hash.ts';
import { type MisconceptionNames, NoFairDraft, makeQuestion } from '../../practice/made/index.ts';
import type { Question } from '../../practice/questions/types.ts';
import type { Assignment } from './assignment.ts';

/**
 * Which template each question comes from: the same for the whole class, so that a question's
 * number means the same for all, and in the order of the course. Where there are more templates
 * than questions, the assignment's own draw decides which are left out.
 */
export function templatesAsked({ id, templates, count }: Assignment): readonly string[] {
  if (count < templates.length) return new Draws(`asked:${id}`).some(templates, count);
  return Array.from({ length: count }, (_, i) => templates[i % templates.length]!);
}

/**
 * The questions of one student: they follow from the assignment and the seed and from nothing
 * else.
 * @param seed as `seedOf` gives it
 */
export function* questionsOf(
  assignment: Assignment,
  seed: number,
  misconceptions: MisconceptionNames,
): Generator<Question, void, undefined> {
  const { system, limits } = assignment;
  const options = { system, level: 'own', misconceptions } as const;
  let number = 0;
  for (const template of templatesAsked(assignment)) {
    number += 1;
    const own = hash(`${seed}:${number}`);
    try {
      yield makeQuestion(template, own, { ...options, limits });
    } catch (error) {
      // The class's boards or tolerance leave this seed no fair question: then those of any shop.
      if (!(error instanceof NoFairDraft)) throw error;
      const { joints } = limits;
      yield makeQuestion(template, own, { ...options, ...(joints && { limits: { joints } }) });
    }
  }
}
