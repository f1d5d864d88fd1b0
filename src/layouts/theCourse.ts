import { getCollection } from 'astro:content';
import text from '../../content/course.yaml?raw';
import { courseOf } from '../course.ts';

/** The course as it stands in the content folder; see `courseOf`. */
export async function theCourse() {
  const lessons = await getCollection('lessons');
  return courseOf(
    text,
    lessons.map(({ id, data: { title, summary, minutes } }) => ({ id, title, summary, minutes })),
  );
}
