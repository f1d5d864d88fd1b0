import { z } from 'astro/zod';
import { parse } from 'yaml';

/** What the course needs to know of a written lesson. */
export interface LessonHead {
  /** The name of its file, without `.mdx`. */
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly minutes: number;
}

/** One line of the contents. */
export interface CourseLesson {
  /** Unit and place in it: '2.2'. */
  readonly number: string;
  readonly title: string;
  /** What there is to open; null while the lesson is in preparation. */
  readonly written: LessonHead | null;
}

export interface CourseUnit {
  readonly number: number;
  readonly title: string;
  readonly lessons: readonly CourseLesson[];
}

const file = 'content/course.yaml';

const schema = z.strictObject({
  units: z.array(
    z.strictObject({
      title: z.string(),
      lessons: z.array(
        z.union([z.string(), z.strictObject({ planned: z.string() })], {
          error: "expected a lesson's id, or `planned:` and a title",
        }),
      ),
    }),
  ),
});

/**
 * The course in order: what content/course.yaml says, joined with the lessons that are written.
 * @param text the file's text
 * @param written every lesson of content/lessons
 * @throws Error a sentence that names file and field: a lesson that does not exist, is listed
 *   twice or is not listed, or a field that is wrong
 */
export function courseOf(text: string, written: readonly LessonHead[]): readonly CourseUnit[] {
  const { data, error } = schema.safeParse(yamlOf(text));
  if (error) {
    const faults = error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
    throw new Error(`${file}: ${faults.join('; ')}`);
  }
  const unlisted = new Map(written.map((head) => [head.id, head]));
  const lessonOf = (entry: string | { planned: string }, path: string) => {
    if (typeof entry !== 'string') return { title: entry.planned, written: null };
    const head = unlisted.get(entry);
    if (!head) {
      const why = written.some(({ id }) => id === entry)
        ? 'is listed twice'
        : `has no file content/lessons/${entry}.mdx`;
      throw new Error(`${file}: ${path}: the lesson '${entry}' ${why}`);
    }
    unlisted.delete(entry);
    return { title: head.title, written: head };
  };
  const units = data.units.map(({ title, lessons }, u) => ({
    number: u + 1,
    title,
    lessons: lessons.map((entry, i) => ({
      number: `${u + 1}.${i + 1}`,
      ...lessonOf(entry, `units.${u}.lessons.${i}`),
    })),
  }));
  const [left] = unlisted.keys();
  if (left !== undefined) {
    throw new Error(
      `content/lessons/${left}.mdx: no unit of ${file} lists this lesson; put '- ${left}' in its place there`,
    );
  }
  return units;
}

function yamlOf(text: string): unknown {
  try {
    return parse(text);
  } catch (error) {
    throw new Error(`${file}: ${(error as Error).message}`, { cause: error });
  }
}
