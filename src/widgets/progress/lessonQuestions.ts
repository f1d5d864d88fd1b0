/** What each lesson asks, as pages that show progress need it. Read when the site is built. */
import { templates } from '../../practice/made/index.ts';
import type { Question } from '../../practice/questions/types.ts';
import { reviewableId } from '../../practice/review/due.ts';
import { questionsFor } from '../lesson/lessonContent.ts';

const files = import.meta.glob<string>('../../../content/questions/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** Several pages ask for the same, and some questions take long to work out. */
const known = new Map<string, readonly Question[]>();

function questionsOf(lesson: string): readonly Question[] {
  if (!(`../../../content/questions/${lesson}.yaml` in files)) return [];
  const found = known.get(lesson) ?? questionsFor({ at: `content/lessons/${lesson}.mdx` });
  // While a lesson is being written, its questions change under the running server.
  if (import.meta.env.PROD) known.set(lesson, found);
  return found;
}

/**
 * The identities of a lesson's self-check, in its order; none where it asks nothing.
 * @param lesson the name of its file
 */
export function selfCheckOf(lesson: string): readonly string[] {
  return questionsOf(lesson)
    .filter(({ part }) => part === 'self-check')
    .map(({ identity }) => identity);
}

/**
 * The ids of all that practice asks again of a lesson, as `dueForReview` has them: the lesson's own
 * questions but for its predictions, and what makes questions for it.
 * @param lesson the name of its file
 */
export function reviewedOf(lesson: string): readonly string[] {
  return [
    ...questionsOf(lesson)
      .filter(({ part }) => part !== 'prediction')
      .flatMap(({ identity }) => reviewableId(identity) ?? []),
    ...templates.flatMap((template) => (template.lesson === lesson ? template.id : [])),
  ];
}
