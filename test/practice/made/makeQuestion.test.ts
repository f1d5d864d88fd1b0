import { describe, expect, it } from 'vitest';
import { makeQuestion, templates } from '../../../src/practice/made/index.ts';
import { markAnswer } from '../../../src/practice/questions/markAnswer.ts';
import type { Given, Question } from '../../../src/practice/questions/types.ts';
import { misconceptions } from '../contentFiles.ts';

const SEEDS = Array.from({ length: 40 }, (_, i) => i * 7919);

/** The right answer of a question, as a student would give it. */
function rightAnswer(question: Question): Given {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return { kind: question.kind, text: `${question.right} mm`, unit: 'mm' };
    case 'order':
      return { kind: 'order', steps: question.order };
    case 'fault':
      return {
        kind: 'fault',
        choices: question.choices.filter(({ right }) => right).map(({ id }) => id),
      };
    default:
      return {
        kind: question.kind,
        choices: question.choices.filter(({ right }) => right).map(({ id }) => id),
      };
  }
}

describe.each(templates.map((template) => [template.id, template] as const))(
  'the template %s',
  (id, template) => {
    const made = SEEDS.flatMap((seed) =>
      (['in', 'mm'] as const).map((system) =>
        makeQuestion(id, seed, { system, level: 'own', misconceptions }),
      ),
    );

    it('makes the same question from the same seed', () => {
      const options = { system: 'in', level: 'own', misconceptions } as const;
      expect(makeQuestion(id, 5, options)).toEqual(makeQuestion(id, 5, options));
    });

    it('names only misconceptions that are written down', () => {
      for (const name of template.misconceptions) expect(misconceptions.has(name), name).toBe(true);
    });

    it('has one right answer, which marking takes, and wrong ones that it does not', () => {
      for (const question of made) {
        expect(markAnswer(question, rightAnswer(question)).verdict).toBe('right');
        if (question.kind === 'length' || question.kind === 'rule') {
          for (const { length } of question.mistakes) {
            expect(Math.abs(length - question.right)).toBeGreaterThanOrEqual(
              2 * question.tolerance - 1e-9,
            );
          }
        }
        if (question.kind === 'one') {
          expect(question.choices.filter(({ right }) => right)).toHaveLength(1);
        }
      }
    });
  },
);
