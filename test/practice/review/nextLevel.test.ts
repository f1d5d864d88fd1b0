import { describe, expect, it, test } from 'vitest';
import type { AnswerEvent } from '../../../src/practice/progress/events.ts';
import { nextLevel, triedOf } from '../../../src/practice/review/nextLevel.ts';
import type { Level } from '../../../src/practice/questions/types.ts';

test.each([
  [[], 'blank'],
  [[['example', true]], 'blank'],
  [[['blank', true]], 'own'],
  [[['own', true]], 'own'],
  [[['own', false]], 'blank'],
  [[['blank', false]], 'example'],
  [
    [
      ['own', false],
      ['blank', true],
    ],
    'own',
  ],
] satisfies [[Level, boolean][], Level][])('after %j comes %s', (tried, level) => {
  expect(nextLevel(tried.map(([at, right]) => ({ level: at, right })))).toBe(level);
});

describe('what was tried', () => {
  const answer = (template: string, seed: number, level: Level, right: boolean) =>
    ({
      ...{ version: 1, id: `${template}${seed}${right}`, learner: 'one', at: seed, calc: 1 },
      ...{ bank: 1, kind: 'answer', question: `${template}@1:${seed}`, right, mistakes: [] },
      made: { template, revision: 1, seed, system: 'in', level },
      given: { kind: 'length', text: '1', unit: 'in' },
    }) satisfies AnswerEvent;

  it('is the first answer to each question of the template: the next have read why', () => {
    const events = [
      answer('stop-for-b', 1, 'blank', false),
      answer('stop-for-b', 1, 'blank', true),
      answer('wood-left', 2, 'own', true),
      answer('stop-for-b', 3, 'own', true),
    ];
    expect(triedOf('stop-for-b', events)).toEqual([
      { level: 'blank', right: false },
      { level: 'own', right: true },
    ]);
  });
});
