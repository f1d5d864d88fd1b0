import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { defineCollection } from 'astro:content';

/** What stands at the top of a lesson's file, between the lines of dashes. */
const lesson = z.strictObject({
  /** The lesson's name, as in the course: 'Splitting the depth'. */
  title: z.string().min(1),
  /** One sentence for the contents page: what is decided in this lesson. */
  summary: z.string().min(1),
  /** What a student can do afterwards; each goes on from 'You will be able to …'. */
  outcomes: z.array(z.string().min(1)).min(1),
  /** Class time in minutes, the task in the shop included. */
  minutes: z.int().min(5).max(240),
  /** What has to be ready at each bench for the task in the shop; none where there is no task. */
  bring: z.array(z.string().min(1)).default([]),
});

/** A lesson's id is its file's name without `.mdx`; its unit and place are in content/course.yaml. */
const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '*.mdx' }),
  schema: lesson,
});

export const collections = { lessons };
