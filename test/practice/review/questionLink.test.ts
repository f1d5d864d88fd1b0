import { describe, expect, it, test } from 'vitest';
import { LARGEST_SEED, makeQuestion, templates } from '../../../src/practice/made/index.ts';
import { LEVELS } from '../../../src/practice/questions/types.ts';
import { questionLink, readQuestionLink } from '../../../src/practice/review/questionLink.ts';
import { misconceptions, questionCalled } from '../contentFiles.ts';

describe('a link to a question', () => {
  it('leads back to the same template, seed, system and level', () => {
    for (const { id } of templates) {
      for (const system of ['in', 'mm'] as const) {
        for (const level of LEVELS) {
          const question = makeQuestion(id, LARGEST_SEED, { system, level, misconceptions });
          expect(readQuestionLink(questionLink(question))).toEqual({
            ...{ kind: 'made', template: id, seed: LARGEST_SEED, system, level },
          });
        }
      }
    }
  });

  it('is short for the usual ones, and names a lesson’s own question without its revision', () => {
    const question = makeQuestion('wood-left', 7, { system: 'in', level: 'own', misconceptions });
    expect(questionLink(question)).toBe('#try=wood-left:7');
    const own = questionLink(questionCalled('stop-for-b'));
    expect(own).toBe('#try=splitting-the-depth/stop-for-b');
    expect(readQuestionLink(own)).toEqual({
      ...{ kind: 'lesson', lesson: 'splitting-the-depth', id: 'stop-for-b' },
    });
  });

  test.each(['', '#', '#main', '#start=sound'])('%j is not about a question', (fragment) => {
    expect(readQuestionLink(fragment)).toBeNull();
  });

  test.each([
    ['#try=', 'names no question'],
    ['#try=wood-left', 'names no question'],
    ['#try=wood-left:4294967296', 'names no question'],
    ['#try=wood-left:-1', 'names no question'],
    ['#try=Wood left:1', 'names no question'],
    ['#try=wood-left:1;system=ft', 'a unit or a level'],
    ['#try=wood-left:1;level=easy', 'a unit or a level'],
  ])('%s is refused in a sentence', (fragment, refusal) => {
    expect(readQuestionLink(fragment)).toContain(refusal);
  });
});
