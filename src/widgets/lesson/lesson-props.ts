import type { z } from 'astro/zod';

/**
 * The properties of a component as a lesson wrote them, checked. In a lesson every component is
 * also given `at`, its file and line, which is taken off here and named in the error.
 * @param name the component's name in lessons
 * @param schema a `z.strictObject`, so that a misspelled property is refused
 * @throws Error `content/lessons/one.mdx:8: <Joint> thickness: expected number` and so on
 * @example lessonProps('Length', z.strictObject({ mm: z.number() }), Astro.props)
 */
export function lessonProps<Schema extends z.ZodType>(
  name: string,
  schema: Schema,
  given: Record<string, unknown>,
): z.output<Schema> {
  const { at, ...written } = given;
  const result = schema.safeParse(written);
  if (result.success) return result.data;
  const faults = result.error.issues.map(
    ({ path, message }) => `${path.length === 0 ? '' : `${path.join('.')}: `}${message}`,
  );
  const place = typeof at === 'string' ? `${at}: ` : '';
  throw new Error(`${place}<${name}> ${faults.join('; ')}`);
}
