import { questionsFor } from '../lessonContent.ts';

const files = import.meta.glob('../../../content/questions/*.yaml', { query: '?raw' });

/**
 * The identities of a lesson's self-check, in its order; none where it asks nothing. Read when the
 * site is built.
 * @param lesson the name of its file
 */
export function selfCheckOf(lesson: string): readonly string[] {
  if (!(`../../../content/questions/${lesson}.yaml` in files)) return [];
  return questionsFor({ at: `content/lessons/${lesson}.mdx` })
    .filter(({ part }) => part === 'self-check')
    .map(({ identity }) => identity);
}
