import { parse } from 'yaml';
import { textOf } from '../contentFiles.ts';

/** A lesson of content/course.yaml: the name of its file, or the title of one in preparation. */
type Listed = string | { readonly planned: string };

/** Every lesson of the course by the name of its file, which for a planned one follows from its title. */
export function readCourse(): readonly string[] {
  const { units } = parse(textOf('content/course.yaml')) as {
    readonly units: readonly { readonly lessons: readonly Listed[] }[];
  };
  return units.flatMap(({ lessons }) =>
    lessons.map((lesson) =>
      typeof lesson === 'string'
        ? lesson
        : lesson.planned
            .toLowerCase()
            .replace(/[^a-z -]/g, '')
            .replaceAll(' ', '-'),
    ),
  );
}
