import { expect, it } from 'vitest';
import { templates } from '../../../../src/practice/made/index.ts';
import {
  assignableLessons,
  templateName,
} from '../../../../src/widgets/class/assign/assignable.ts';
import { readCourse } from '../../../practice/made/courseLessons.ts';

it('finds the templates of each lesson, be it written or planned', () => {
  const lessons = assignableLessons([
    { number: '2.3', title: 'Setting the stop', id: 'setting-the-stop' },
    { number: '2.4', title: 'Placing the pins' },
    { number: '9.9', title: 'A lesson without questions', id: 'nothing' },
  ]);
  expect(lessons.map(({ title }) => title)).toEqual(['Setting the stop', 'Placing the pins']);
  expect(lessons[0]!.templates).toContain('stop-for-a-board');
  expect(lessons[1]!.templates).toContain('place-of-a-pin');
});

it('leaves no template out of the course', () => {
  const lessons = readCourse().map((id, i) => ({ number: String(i), title: id, id }));
  const found = assignableLessons(lessons).flatMap((lesson) => lesson.templates);
  expect([...found].sort()).toEqual(templates.map(({ id }) => id).sort());
});

it('names a template in words', () => {
  expect(templateName('stop-for-a-board')).toBe('Stop for a board');
});
