import { describe, expect, it } from 'vitest';
import { courseOf } from '../../src/course.ts';

const lesson = (id: string) => ({ id, title: `Title of ${id}`, summary: 'In short.', minutes: 45 });

describe('courseOf', () => {
  it('numbers lessons by unit and place, written or not', () => {
    const text = `
units:
  - title: First
    lessons: [one, { planned: Later }]
  - title: Second
    lessons: [two]
`;
    const units = courseOf(text, [lesson('two'), lesson('one')]);
    expect(
      units.flatMap(({ lessons }) =>
        lessons.map(({ number, title, written }) => [number, title, written?.id]),
      ),
    ).toEqual([
      ['1.1', 'Title of one', 'one'],
      ['1.2', 'Later', undefined],
      ['2.1', 'Title of two', 'two'],
    ]);
  });

  it.each([
    [
      'a lesson that has no file',
      'units: [{ title: First, lessons: [one, gone] }]',
      "content/course.yaml: units.0.lessons.1: the lesson 'gone' has no file content/lessons/gone.mdx",
    ],
    [
      'a lesson that is listed twice',
      'units: [{ title: First, lessons: [one, one] }]',
      "content/course.yaml: units.0.lessons.1: the lesson 'one' is listed twice",
    ],
    [
      'a lesson that no unit lists',
      'units: [{ title: First, lessons: [] }]',
      "content/lessons/one.mdx: no unit of content/course.yaml lists this lesson; put '- one' in its place there",
    ],
    [
      'a misspelled field',
      'units: [{ titel: First, title: First, lessons: [one] }]',
      'content/course.yaml: units.0: Unrecognized key: "titel"',
    ],
    [
      'an entry that is neither',
      'units: [{ title: First, lessons: [one, { later: Two }] }]',
      "content/course.yaml: units.0.lessons.1: expected a lesson's id, or `planned:` and a title",
    ],
  ])('refuses %s, naming file and field', (_, text, message) => {
    expect(() => courseOf(text, [lesson('one')])).toThrow(message);
  });

  it('refuses broken YAML with its line', () => {
    expect(() => courseOf('units:\n  - title: "First\n', [])).toThrow(
      /^content\/course\.yaml: .*line 3/s,
    );
  });
});
