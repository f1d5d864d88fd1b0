import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeQuestion, templates } from '../../../src/practice/made/index.ts';
import {
  type CountedAnswer,
  decodeStanding,
  encodeStanding,
  LONGEST_STANDING,
  MOST_QUESTIONS,
  type Standing,
} from '../../../src/practice/progress/standing.ts';
import { markAnswer } from '../../../src/practice/questions/markAnswer.ts';
import type { Given, Question } from '../../../src/practice/questions/types.ts';
import { misconceptions } from '../contentFiles.ts';

const options = { system: 'in', level: 'own', misconceptions } as const;

/** The longest assignment: every template, and again from the beginning. */
const longest = Array.from({ length: MOST_QUESTIONS }, (_, i) =>
  makeQuestion(templates[i % templates.length]!.id, i, options),
);

/** Lengths as students type them. */
const typedLength = fc.oneof(
  fc.constantFrom('3/4', '1 1/2"', '2\' 3-1/2"', '½', '1½″', '≈ 31/64 in', '19 mm', '1,5 cm', '.5'),
  fc.integer({ min: 0, max: 99 }).map((whole) => `${whole} 3/64 in`),
  fc.double({ min: 0.001, max: 999, noNaN: true }).map((length) => `${length.toFixed(9)} mm`),
  // Blank after blank, and zeros: longer than is kept as it was typed.
  fc.integer({ min: 1, max: 40 }).map((zeros) => `${'0'.repeat(zeros)}12${' '.repeat(20)}mm`),
);

function givenTo(question: Question): fc.Arbitrary<Given> {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return fc.record({
        kind: fc.constant(question.kind),
        text: typedLength,
        unit: fc.constantFrom('in', 'mm'),
      });
    case 'order':
      return fc
        .shuffledSubarray(
          question.steps.map(({ id }) => id),
          { minLength: question.steps.length },
        )
        .map((steps) => ({ kind: 'order', steps }));
    default: {
      const { kind } = question;
      return fc
        .shuffledSubarray(
          question.choices.map(({ id }) => id),
          { minLength: 1 },
        )
        .map((choices) => ({ kind, choices: kind === 'one' ? choices.slice(0, 1) : choices }));
    }
  }
}

function standingOf(questions: readonly Question[]): fc.Arbitrary<Standing> {
  const answerTo = (question: Question): fc.Arbitrary<CountedAnswer | null> =>
    fc.option(
      fc.record({
        given: givenTo(question),
        after: fc.integer({ min: 0, max: 36 ** 5 - 1 }),
        tries: fc.integer({ min: 1, max: 1295 }),
      }),
    );
  return fc
    .record(
      {
        calc: fc.integer({ min: 1, max: 9999 }),
        bank: fc.integer({ min: 1, max: 9999 }),
        begun: fc.integer({ min: 0, max: 4e9 }),
        handedIn: fc.integer({ min: 1, max: 4e9 }),
        answers: fc.tuple(...questions.map(answerTo)),
      },
      { requiredKeys: ['calc', 'bank', 'begun', 'answers'] },
    )
    .map((standing) => standing as Standing);
}

describe('a standing for a learning system', () => {
  it('comes back as it was, and every answer is marked as before', () => {
    fc.assert(
      fc.property(standingOf(longest), (standing) => {
        const read = decodeStanding(encodeStanding(standing, longest), longest);
        if (!read.ok) throw new Error(read.reason);
        expect(read.outdated).toBe(0);
        const { answers, ...head } = read.standing;
        const { answers: before, ...headBefore } = standing;
        expect(head).toEqual(headBefore);
        for (const [i, answer] of answers.entries()) {
          const was = before[i];
          expect(answer && { ...answer, given: 0 }).toEqual(was && { ...was, given: 0 });
          if (!answer || !was) continue;
          expect(markAnswer(longest[i]!, answer.given).verdict).toBe(
            markAnswer(longest[i]!, was.given).verdict,
          );
          if ('choices' in was.given || 'steps' in was.given) {
            expect(answer.given).toEqual(was.given);
          }
        }
      }),
      { numRuns: 100 },
    );
  });

  it(`is never longer than ${LONGEST_STANDING} characters, all of them plain`, () => {
    expect(LONGEST_STANDING).toBeLessThan(4096);
    fc.assert(
      fc.property(standingOf(longest), (standing) => {
        const text = encodeStanding(standing, longest);
        expect(text.length).toBeLessThanOrEqual(LONGEST_STANDING);
        // Nothing that XML, JavaScript or a form escapes, and no blanks.
        expect(text).toMatch(/^[\da-zA-Z.,:;=/^_~-]*$/);
      }),
      { numRuns: 100 },
    );
  });

  it('reaches its bound with sixty of the longest lengths, and no further', () => {
    const typed = longest.find(({ kind }) => kind === 'length')!;
    const sixty = Array.from({ length: MOST_QUESTIONS }, () => ({
      ...typed,
      identity: `${typed.identity.split('@')[0]}@9999:7`,
    }));
    const text = `${'0'.repeat(35)}12 mm`;
    const given = { kind: 'length', text, unit: 'in' } as const;
    const answer = { given, after: 1e12, tries: 1e6 };
    const standing = { calc: 9999, bank: 9999, begun: 1e12, handedIn: 1e12 };
    const encoded = encodeStanding({ ...standing, answers: sixty.map(() => answer) }, sixty);
    expect(encoded.length).toBeLessThanOrEqual(LONGEST_STANDING);
    expect(encoded.length).toBeGreaterThan(LONGEST_STANDING - 10);
  });

  it('keeps a length as it was typed where it is short', () => {
    const i = longest.findIndex(({ kind }) => kind === 'length');
    const given = { kind: 'length', text: `1' 3-1/2"`, unit: 'in' } as const;
    const answers = longest.map((_, k) => (k === i ? { given, after: 5, tries: 1 } : null));
    const standing = { calc: 1, bank: 1, begun: 1, answers };
    const read = decodeStanding(encodeStanding(standing, longest), longest);
    expect(read).toMatchObject({ ok: true, standing });
  });

  it('leaves out an answer to a question that was changed since, and counts it', () => {
    const [first] = longest;
    const answers = longest.map((question, i) => {
      if (i > 0) return null;
      return { given: fc.sample(givenTo(question), 1)[0]!, after: 5, tries: 1 };
    });
    const text = encodeStanding({ calc: 1, bank: 1, begun: 1, answers }, longest);
    const changed = [
      { ...first!, identity: first!.identity.replace(/@\d+/, '@77') },
      ...longest.slice(1),
    ];
    const read = decodeStanding(text, changed);
    expect(read).toMatchObject({ ok: true, outdated: 1 });
    expect(read.ok && read.standing.answers[0]).toBeNull();
  });

  it('refuses what was cut off, changed, or is of something else', () => {
    const standing = { calc: 1, bank: 1, begun: 1, answers: longest.map(() => null) };
    const text = encodeStanding(standing, longest);
    for (let length = 0; length < text.length; length++) {
      expect(decodeStanding(text.slice(0, length), longest).ok).toBe(false);
    }
    expect(decodeStanding(text.replace(';', ':'), longest).ok).toBe(false);
    expect(decodeStanding(text, longest.slice(1))).toMatchObject({
      reason: expect.stringContaining('of another assignment'),
    });
    expect(decodeStanding('2:1:1:1:=abc', longest)).toMatchObject({
      reason: expect.stringContaining('newer edition'),
    });
  });

  it('never throws, whatever the learning system gives back', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        expect(decodeStanding(text, longest).ok).toBe(false);
      }),
    );
  });

  it('refuses to write what can’t be read again', () => {
    const standing = { calc: 1, bank: 1, begun: 1 };
    expect(() => encodeStanding({ ...standing, answers: [] }, longest)).toThrow(RangeError);
    const i = longest.findIndex(({ kind }) => kind === 'one');
    const strange = { given: { kind: 'one', choices: ['not there'] }, after: 1, tries: 1 } as const;
    const answers = longest.map((_, k) => (k === i ? strange : null));
    expect(() => encodeStanding({ ...standing, answers }, longest)).toThrow(/not there/);
  });
});
