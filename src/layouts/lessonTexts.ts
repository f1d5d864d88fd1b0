import { getCollection } from 'astro:content';
import { theCourse } from './theCourse.ts';

/** Every written lesson in the course's order: its number, its title and its text as it was written. */
export async function lessonTexts() {
  const bodies = new Map((await getCollection('lessons')).map(({ id, body }) => [id, body ?? '']));
  return (await theCourse()).flatMap(({ lessons }) =>
    lessons.flatMap(({ number, written }) =>
      written
        ? [{ id: written.id, number, title: written.title, body: bodies.get(written.id) ?? '' }]
        : [],
    ),
  );
}
