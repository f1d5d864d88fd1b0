import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { questionsFor } from '../../widgets/lesson/lessonContent.ts';
import { drawQuestion } from '../../widgets/lesson/self-check/drawQuestion.ts';

/** A lesson's own questions with their drawings, for practice: the same that the lesson asks. */
export const getStaticPaths = (async () =>
  (await getCollection('lessons')).map(({ id }) => ({
    params: { lesson: id },
  }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ params: { lesson } }) => {
  const questions = questionsFor({ at: `content/lessons/${lesson}.mdx` })
    .filter(({ part }) => part !== 'prediction')
    .map((question) => ({ question, drawing: drawQuestion(question) }));
  return Response.json(questions);
};
