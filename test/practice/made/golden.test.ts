import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { plainText } from '../../../src/core/working/plainText.ts';
import type { Sentence } from '../../../src/core/working/sentence.ts';
import { makeQuestion, templates } from '../../../src/practice/made/index.ts';
import type { Question } from '../../../src/practice/questions/types.ts';
import { misconceptions } from '../contentFiles.ts';
import golden from './golden.json' with { type: 'json' };

const SEEDS = 100;

/** A millionth of a millimeter is noise: engines differ in the last bits of a tangent. */
const round = (length: number) => length.toFixed(6);

const both = (says: Sentence) => [plainText(says, 'in'), plainText(says, 'mm')];

/** What a question asks and how each answer to it is marked; how it is explained may change. */
function meaning(question: Question): unknown {
  const asked = [question.identity, both(question.ask)];
  switch (question.kind) {
    case 'length':
    case 'rule':
      return [
        ...[...asked, round(question.right), round(question.tolerance)],
        question.mistakes.map(({ length, misconception }) => [round(length), misconception.id]),
        question.kind === 'rule' && [question.rule.division, round(question.rule.line)],
      ];
    case 'order':
      return [...asked, question.order, question.steps.map(({ id, says }) => [id, both(says)])];
    default:
      return [
        ...asked,
        question.choices.map(({ id, says, right, misconception }) => [
          ...[id, both(says), right, misconception?.id ?? null],
        ]),
      ];
  }
}

function hashOf(id: string): string {
  const sum = createHash('sha256');
  for (let seed = 0; seed < SEEDS; seed++) {
    const system = seed % 2 === 0 ? 'in' : 'mm';
    for (const level of seed % 5 === 0 ? (['own', 'blank'] as const) : (['own'] as const)) {
      const question = makeQuestion(id, seed, { system, level, misconceptions });
      sum.update(JSON.stringify(meaning(question)));
    }
  }
  return sum.digest('hex').slice(0, 16);
}

const kept: Readonly<Record<string, string>> = golden;

it.each(templates.map(({ id, revision }) => [`${id}@${revision}`, id] as const))(
  '%s asks what it always asked: where it does not, raise its revision and keep the new hash',
  (name, id) => {
    // A new template, or a raised revision: put the hash that it received into golden.json.
    expect({ [name]: hashOf(id) }).toEqual({ [name]: kept[name] });
  },
);

it('keeps no hash of what is gone', () => {
  const now = templates.map(({ id, revision }) => `${id}@${revision}`);
  expect(Object.keys(kept).sort()).toEqual([...now].sort());
});
