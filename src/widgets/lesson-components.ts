/**
 * The components that a lesson may name, besides the typographic ones of the lesson page. This is
 * the only place that knows them: a lesson has no imports.
 *
 * Each is a small `.astro` wrapper next to its island. The wrapper checks its properties with
 * `lessonProps` and a `z.strictObject`, so that a mistake in a lesson fails the build with its
 * file and line, and it holds `client:visible` (a Svelte component handed to MDX as it is would
 * come out dead):
 *
 * ```astro
 * ---
 * import { z } from 'astro/zod';
 * import { lessonProps } from '../lesson-props.ts';
 * import DepthFigure from './DepthFigure.svelte';
 *
 * const schema = z.strictObject({ thickness: z.number() });
 * const { thickness } = lessonProps('DepthFigure', schema, Astro.props);
 * ---
 *
 * <DepthFigure {thickness} client:visible />
 * ```
 */
export const lessonComponents = {};
