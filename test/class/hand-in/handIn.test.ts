import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keyOf, rightByKey, sameKey } from '../../../src/class/hand-in/answerKey.ts';
import { handInCode, handInName, writeHandIn } from '../../../src/class/hand-in/handIn.ts';
import { readHandIn } from '../../../src/class/hand-in/readHandIn.ts';
import { makeQuestion, templates } from '../../../src/practice/made/index.ts';
import { markAnswer } from '../../../src/practice/questions/markAnswer.ts';
import { Draws } from '../../../src/practice/made/draws.ts';
import { misconceptions } from '../../practice/contentFiles.ts';
import { answerTo, handInOf, stopAssignment } from '../../support/classOf.ts';

const handIn = handInOf(stopAssignment, 'Bench 7', 0.6, misconceptions);
const file = writeHandIn(handIn);

/** The file with something else in one of its fields. */
function withField(change: Record<string, unknown>): string {
  return JSON.stringify({ ...(JSON.parse(file) as object), ...change });
}

function withAnswer(change: Record<string, unknown>): string {
  const { answers } = JSON.parse(file) as { answers: object[] };
  return withField({ answers: [{ ...answers[0], ...change }, ...answers.slice(1)] });
}

describe('a hand-in file', () => {
  it('brings back what was handed in, and its code', () => {
    expect(readHandIn(file)).toEqual({
      ok: true,
      handIn,
      code: handInCode(handIn),
      edited: false,
    });
    expect(handInCode(handIn)).toMatch(/^[0-9A-HJKMNP-TV-Z]{6}$/);
  });

  it('has the same code however it is laid out, and another for anything else in it', () => {
    const spread = JSON.stringify(JSON.parse(file), null, 8).replaceAll('\n', '\r\n');
    expect(readHandIn(`\uFEFF${spread}`)).toMatchObject({ ok: true, edited: false });
    for (const changed of [
      withField({ student: 'Bench 8' }),
      withField({ right: 8 }),
      withField({ seed: handIn.seed + 1 }),
      withField({ handedIn: '2026-11-04T09:00:00Z' }),
      withAnswer({ given: { kind: 'length', text: '2 in', unit: 'in' } }),
      withAnswer({ key: 51 }),
      withField({ code: undefined }),
    ]) {
      expect(readHandIn(changed)).toMatchObject({ ok: true, edited: true });
    }
  });

  it('holds no name but what was typed', () => {
    expect(Object.keys(JSON.parse(file) as object).sort()).toEqual(
      [
        ...['answers', 'assignment', 'bank', 'begun', 'calc', 'code'],
        ...['handIn', 'handedIn', 'right', 'seed', 'student'],
      ].sort(),
    );
  });

  it.each([
    ['Bench 7', 'hand-in-bench-7.json'],
    ['../../etc/passwd', 'hand-in-etc-passwd.json'],
    ['Établi 3', 'hand-in-établi-3.json'],
    ['???', 'hand-in-bench.json'],
  ])('is called by the bench: %s', (student, name) => {
    expect(handInName(student)).toBe(name);
  });

  it.each([
    ['', 'cut off or damaged'],
    [file.slice(0, 300), 'cut off or damaged'],
    ['[]', 'not as a hand-in'],
    ['null', 'not as a hand-in'],
    ['{}', 'not a hand-in'],
    ['['.repeat(50_000), 'cut off or damaged'],
    [`"${'x'.repeat(200_000)}"`, 'longer than any hand-in'],
    [withField({ handIn: 2 }), 'another edition'],
    [withField({ seed: 1.5 }), '“seed”'],
    [withField({ seed: -1 }), '“seed”'],
    [withField({ seed: 2 ** 32 }), '“seed”'],
    [withField({ student: ['Bench 7'] }), '“student”'],
    [withField({ student: 'x'.repeat(101) }), '“student”'],
    [withField({ handedIn: 'yesterday' }), '“handedIn” is not a time'],
    [withField({ handedIn: '2026-99-99T09:00:00Z' }), '“handedIn” is not a time'],
    [withField({ answers: Array.from({ length: 41 }, () => null) }), '“answers”'],
    [withField({ answers: [null] }), 'not as a hand-in'],
    [withAnswer({ given: { kind: 'essay' } }), 'no known kind'],
    [withAnswer({ given: { kind: 'length', text: '2', unit: 'ft' } }), 'names no unit'],
    [withAnswer({ given: { kind: 'length', text: 2, unit: 'in' } }), '“text”'],
    [withAnswer({ given: { kind: 'one', choices: [1] } }), '“choices”'],
    [withAnswer({ given: undefined }), 'not as a hand-in'],
    [withAnswer({ key: { right: 2 } }), '“key”'],
    [withAnswer({ key: null }), '“key”'],
  ])('is refused in a sentence where it is not one: %#', (text, why) => {
    const read = readHandIn(text);
    expect(read).toMatchObject({ ok: false, reason: expect.stringContaining(why) });
    expect(!read.ok && read.reason).toMatch(/^This file can’t be read: .*\.$/);
  });

  it('never throws, whatever is in it', () => {
    const anything = fc.record({
      handIn: fc.constant(1),
      assignment: fc.anything(),
      answers: fc.oneof(fc.anything(), fc.array(fc.anything())),
      student: fc.anything(),
      seed: fc.anything(),
    });
    fc.assert(
      fc.property(
        fc.oneof(
          fc.json(),
          anything.map((each) => JSON.stringify(each)),
        ),
        (text) => {
          expect(readHandIn(text).ok).toBe(false);
        },
      ),
    );
  });
});

describe('the key that was shown', () => {
  it('marks every kind of question as marking itself does', () => {
    for (const { id } of templates) {
      for (let seed = 0; seed < 6; seed++) {
        const draws = new Draws(`key:${id}:${seed}`);
        const question = makeQuestion(id, seed, { system: 'in', level: 'own', misconceptions });
        const key = keyOf(question);
        const tolerance = 'tolerance' in question ? question.tolerance : 0;
        for (const right of [true, false]) {
          const given = answerTo(question, right, draws);
          const { verdict } = markAnswer(question, given);
          expect([id, seed, rightByKey(given, key, tolerance)]).toEqual([
            ...[id, seed, verdict === 'right'],
          ]);
        }
        const copy = JSON.parse(JSON.stringify(key)) as typeof key;
        expect(sameKey(copy, key, question.kind)).toBe(true);
      }
    }
  });

  it('minds the order of steps, not that of choices, and counts nothing twice', () => {
    expect(sameKey(['a', 'b'], ['b', 'a'], 'several')).toBe(true);
    expect(sameKey(['a', 'b'], ['b', 'a'], 'order')).toBe(false);
    expect(sameKey(['a', 'a'], ['a', 'b'], 'several')).toBe(false);
    expect(sameKey(12.7, ['a'], 'length')).toBe(false);
    expect(rightByKey({ kind: 'several', choices: ['a', 'a'] }, ['a', 'b'], 0)).toBe(false);
  });
});
