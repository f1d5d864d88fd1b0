import { questionsFor } from '../lessonContent.ts';

const files = import.meta.glob<string>('../../../content/questions/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** Three pages ask for the same, and some questions take long to work out. */
const known = new Map<string, readonly string[]>();

/**
 * The identities of a lesson's self-check, in its order; none where it asks nothing. Read when the
 * site is built.
 * @param lesson the name of its file
 */
export function selfCheckOf(lesson: string): readonly string[] {
  if (!(`../../../content/questions/${lesson}.yaml` in files)) return [];
  const found =
    known.get(lesson) ??
    questionsFor({ at: `content/lessons/${lesson}.mdx` })
      .filter(({ part }) => part === 'self-check')
      .map(({ identity }) => identity);
  // While a lesson is being written, its questions change under the running server.
  if (import.meta.env.PROD) known.set(lesson, found);
  return found;
}
