import { describe, expect, it } from 'vitest';
import { seedOf, studentKey } from '../../../src/class/assignment/student.ts';
import { questionsOf, templatesAsked } from '../../../src/class/assignment/studentQuestions.ts';
import { mm } from '../../../src/core/length/mm.ts';
import { misconceptions } from '../../practice/contentFiles.ts';
import { stopAssignment } from '../../support/classOf.ts';

const questionsFor = (student: string, assignment = stopAssignment) => [
  ...questionsOf(assignment, seedOf(assignment, student), misconceptions),
];

describe('a student’s questions', () => {
  it('follow from the assignment and the name, and from nothing else', () => {
    expect(questionsFor('Bench 7')).toEqual(questionsFor(' bench  7 '));
    expect(questionsFor('Bench 7')).toHaveLength(8);
  });

  it('have other numbers for each student of a class, from the same templates', () => {
    const benches = Array.from({ length: 12 }, (_, i) => questionsFor(`Bench ${i + 1}`));
    for (const questions of benches) {
      expect(questions.map(({ made }) => made?.template)).toEqual(templatesAsked(stopAssignment));
    }
    for (let number = 0; number < 8; number++) {
      const identities = benches.map((questions) => questions[number]!.identity);
      expect(new Set(identities).size).toBe(12);
    }
  });

  it('go round the templates where there are more questions, and leave some out where fewer', () => {
    expect(templatesAsked({ ...stopAssignment, count: 6 })).toEqual([
      ...stopAssignment.templates,
      ...stopAssignment.templates.slice(0, 2),
    ]);
    const two = templatesAsked({ ...stopAssignment, count: 2 });
    expect(new Set(two).size).toBe(2);
    expect(stopAssignment.templates.filter((id) => two.includes(id))).toEqual(two);
  });

  it('fall back on any shop’s boards where the class’s leave nothing fair to ask', () => {
    const odd = {
      ...stopAssignment,
      templates: ['height-of-the-shelf'],
      count: 2,
      limits: { joints: ['tee'] as const, thicknesses: [mm(19.05)] },
    };
    const questions = questionsFor('Bench 1', odd);
    expect(questions).toHaveLength(2);
    expect(questions[0]!.made?.limits).toEqual({ joints: ['tee'] });
  });
});

describe('a student’s name', () => {
  it.each(['BENCH 7', ' bench   7 ', 'Bench\u00a07\u200b', 'Ｂｅｎｃｈ ７'])(
    'is the same student in any spelling: %j',
    (typed) => {
      expect(studentKey(typed)).toBe(studentKey('Bench 7'));
      expect(seedOf(stopAssignment, typed)).toBe(seedOf(stopAssignment, 'Bench 7'));
    },
  );
});
