import { z } from 'astro/zod';
import { describe, expect, it } from 'vitest';
import { lessonProps } from '../../src/widgets/lesson/lesson-props.ts';

const schema = z.strictObject({ thickness: z.number() });
const at = 'content/lessons/one.mdx:8';

describe('lessonProps', () => {
  it('returns what was written, without the place', () => {
    expect(lessonProps('Figure', schema, { thickness: 19, at })).toEqual({ thickness: 19 });
  });

  it.each([
    [{ thickness: '19' }, 'thickness: Invalid input: expected number, received string'],
    [{}, 'thickness: Invalid input: expected number, received undefined'],
    [{ thickness: 19, color: 'red' }, 'Unrecognized key: "color"'],
  ])('refuses %o with file, line, component and property', (written, fault) => {
    expect(() => lessonProps('Figure', schema, { ...written, at })).toThrow(
      `content/lessons/one.mdx:8: <Figure> ${fault}`,
    );
  });
});
