import { describe, expect, it } from 'vitest';
import { plainText } from '../../src/core/working/plainText.ts';
import type { Sentence } from '../../src/core/working/sentence.ts';
import type { Question, NamedMistake } from '../../src/practice/questions/types.ts';
import { templates } from '../../src/practice/made/index.ts';
import { filesIn, misconceptions, questions, setups, textOf } from '../practice/contentFiles.ts';

interface WrongAnswer {
  readonly question: Question;
  readonly misconception?: NamedMistake | undefined;
  readonly why: Sentence;
}

/** What can be got wrong in a question, with what stands behind it. */
function wrongIn(question: Question): readonly Omit<WrongAnswer, 'question'>[] {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return question.mistakes;
    case 'order':
      return question.steps.filter(({ after }) => after.length > 0);
    default:
      return question.choices.filter(({ right }) => !right);
  }
}

const wrongAnswers = questions.flatMap((question) =>
  wrongIn(question).map(({ misconception, why }): WrongAnswer => ({
    question,
    misconception,
    why,
  })),
);

/** What a question and its answers say. */
function saidIn(question: Question): readonly Sentence[] {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return [question.why, question.hint, ...question.mistakes.map(({ why }) => why)];
    case 'order':
      return question.steps.flatMap(({ says, why }) => [says, why]);
    default:
      return question.choices.flatMap(({ says, why }) => [says, why]);
  }
}

function textsOf(question: Question): readonly string[] {
  const sentences = [question.ask, ...saidIn(question)];
  return sentences.flatMap((says) => [plainText(says, 'in'), plainText(says, 'mm')]);
}

describe('the questions of the content folder', () => {
  it('have identities that are never shared, each of a lesson that exists', () => {
    const identities = questions.map(({ identity }) => identity.replace(/@.*/, ''));
    expect(new Set(identities).size).toBe(identities.length);
    const lessons = filesIn('content/lessons', '.mdx').map((file) =>
      file.replace(/^.*\/|\.mdx$/g, ''),
    );
    for (const { identity } of questions) {
      expect(identity).toMatch(/^[a-z0-9-]+\/[a-z0-9-]+@[1-9]\d*$/);
      expect(lessons).toContain(identity.split('/')[0]);
    }
  });

  it('tie every wrong answer to a misconception and explain it', () => {
    expect(wrongAnswers.length).toBeGreaterThan(30);
    for (const { question, misconception, why } of wrongAnswers) {
      expect(misconceptions.has(misconception?.id ?? ''), question.identity).toBe(true);
      expect(plainText(why, 'in').length, question.identity).toBeGreaterThan(30);
    }
  });

  it('keep a right length at least twice the tolerance away from every wrong one', () => {
    for (const question of questions) {
      if (!('mistakes' in question)) continue;
      for (const { length } of question.mistakes) {
        expect(Math.abs(length - question.right), question.identity).toBeGreaterThanOrEqual(
          2 * question.tolerance,
        );
      }
    }
  });

  it('show a working wherever the calculator has a say', () => {
    for (const question of questions) {
      if ('mistakes' in question) expect(question.working.length).toBeGreaterThan(0);
      for (const { lines } of question.working) {
        for (const line of [...lines.in, ...lines.mm]) expect(line).toMatch(/^<math>.*<\/math>$/);
      }
    }
  });

  it('leave no brace, no doubled word and no missing number in any text', () => {
    for (const question of questions) {
      for (const text of textsOf(question)) {
        expect(text, question.identity).not.toMatch(/[{}]|undefined|NaN|\b([a-z]{2,}) \1\b/i);
        expect(text, question.identity).toMatch(/^[A-Z0-9≈−]/);
      }
    }
  });

  it('type no length that the calculator should give', () => {
    for (const file of filesIn('content/questions', '.yaml')) {
      const typed = textOf(file)
        .split('\n')
        .filter((line) => !/^\s*#/.test(line) && !/\b(?:with|moved): \{/.test(line))
        .filter((line) => /\d\/\d|\d\s?(?:mm|in)\b/.test(line));
      expect(typed, file).toEqual([]);
    }
  });
});

describe('the right answer', () => {
  it('is not told by its length', () => {
    const lengths = questions.flatMap((question) => {
      if (question.kind !== 'one') return [];
      const said = question.choices.map(({ says }) => plainText(says, 'in').length);
      if (Math.max(...said) < 20) return []; // numbers
      const right = said[question.choices.findIndex((choice) => choice.right)]!;
      const wrong = Math.max(...said.filter((_, i) => !question.choices[i]!.right));
      return [{ id: question.identity, right, wrong, choices: said.length }];
    });
    expect(lengths.length).toBeGreaterThan(80);
    const telling = lengths.filter(({ right, wrong }) => right > 1.35 * wrong);
    expect(telling.map(({ id }) => id)).toEqual([]);
    // Who takes the longest each time does no better than who guesses.
    const longest = lengths.filter(({ right, wrong }) => right > wrong).length;
    const guessed = lengths.reduce((sum, { choices }) => sum + 1 / choices, 0);
    expect(longest).toBeLessThanOrEqual(1.15 * guessed);
  });
});

describe('misconceptions and setups', () => {
  it('are all in use, but for what marking gives by itself', () => {
    const used = new Set([
      ...wrongAnswers.map(({ misconception }) => misconception?.id),
      // A right one of several names what whoever leaves it out has in mind.
      ...questions.flatMap((question) =>
        'choices' in question ? question.choices.map(({ misconception }) => misconception?.id) : [],
      ),
      ...templates.flatMap((template) => template.misconceptions),
    ]);
    for (const id of misconceptions.keys()) {
      if (id !== 'wrong-unit') expect(used, id).toContain(id);
    }
    const content = [
      ...filesIn('content/questions', '.yaml'),
      ...filesIn('content/lessons', '.mdx'),
      // One setup may be made from another.
      'content/setups.yaml',
    ]
      .map(textOf)
      .join('\n');
    for (const name of setups.keys()) expect(content).toMatch(new RegExp(`[ '"]${name}['"\\s]`));
  });
});
