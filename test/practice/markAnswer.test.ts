import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { inches } from '../../src/core/length/mm.ts';
import { markAnswer } from '../../src/practice/questions/markAnswer.ts';
import type { Given, LengthQuestion } from '../../src/practice/questions/types.ts';
import { questionCalled, questions } from './contentFiles.ts';

/** The stop for a hole of 39/64 in through a bushing of 1 in: 1.606 in. */
const stop = questionCalled('stop-for-b') as LengthQuestion;

function length(text: string, unit: 'in' | 'mm' = 'in'): Given {
  return { kind: 'length', text, unit };
}

function misconceptionsOf(question: Parameters<typeof markAnswer>[0], given: Given) {
  return markAnswer(question, given).remarks.map(({ misconception }) => misconception?.id);
}

describe('a length is marked by what it means, not by how it is written', () => {
  test.each([
    ['1 39/64', 'in', 'right', undefined],
    ['1-39/64 in', 'in', 'right', undefined],
    ['1.606', 'in', 'right', undefined],
    ['≈1 39/64 in', 'in', 'right', undefined],
    ['40.8', 'mm', 'right', undefined],
    ['40,8 mm', 'in', 'right', undefined],
    ['41', 'mm', 'right', undefined],
    ['1 5/8', 'in', 'wrong', undefined],
    ['40.8', 'in', 'wrong', 'wrong-unit'],
    ['1.606 mm', 'in', 'wrong', 'wrong-unit'],
    ['1 39/64', 'mm', 'wrong', 'wrong-unit'],
    ['39/64', 'in', 'wrong', 'forgot-the-bushing'],
    ['15.4 mm', 'in', 'wrong', 'forgot-the-bushing'],
    ['1 23/32', 'in', 'wrong', 'stop-from-the-point'],
    ['1 31/64', 'in', 'wrong', 'forgot-the-free-depth'],
    ['7', 'in', 'wrong', undefined],
    ['', 'in', 'unreadable', undefined],
    ['about two', 'in', 'unreadable', undefined],
    ['1/0', 'in', 'unreadable', undefined],
    ['-1', 'in', 'unreadable', undefined],
  ] as const)('%s typed among %s is %s, %s', (text, unit, verdict, misconception) => {
    const marked = markAnswer(stop, length(text, unit));
    expect(marked.verdict).toBe(verdict);
    expect(marked.remarks[0]?.misconception?.id).toBe(misconception);
    expect(marked.remarks.length).toBeGreaterThan(0);
  });

  it('is right as far as the tolerance goes, and no farther', () => {
    for (const sign of [-1, 1]) {
      const near = (part: number) => `${stop.right + sign * stop.tolerance * part} mm`;
      expect(markAnswer(stop, length(near(0.999))).verdict).toBe('right');
      expect(markAnswer(stop, length(near(1.001))).verdict).toBe('wrong');
    }
  });

  it('says which way an unexplained length is off, and where to begin', () => {
    const { remarks } = markAnswer(stop, length('7 in'));
    expect(remarks[0]?.says).toEqual([{ mm: inches(7) }, ' is too much.']);
    expect(remarks[1]?.says).toEqual(stop.hint);
  });
});

describe('choices', () => {
  const pin = questionCalled('longer-pin');
  const hold = questionCalled('more-hold-in-b');
  const one = (...choices: string[]): Given => ({ kind: 'one', choices });
  const several = (...choices: string[]): Given => ({ kind: 'several', choices });

  it('one of several: the chosen one explains itself, and the right one is not given away', () => {
    const marked = markAnswer(pin, one('half-each'));
    expect(marked.verdict).toBe('wrong');
    expect(marked.remarks.map(({ choice }) => choice)).toEqual(['half-each']);
    expect(misconceptionsOf(pin, one('b-takes-it'))).toEqual(['longer-pin-holds-more']);
    expect(markAnswer(pin, one('a-takes-it')).verdict).toBe('right');
  });

  it('several of several: right only where every choice is judged well', () => {
    expect(markAnswer(hold, several('shorter-point', 'thicker-b')).verdict).toBe('right');
    expect(markAnswer(hold, several('thicker-b', 'shorter-point')).verdict).toBe('right');
    expect(misconceptionsOf(hold, several('shorter-point'))).toEqual(['wrong-board']);
    expect(misconceptionsOf(hold, several('shorter-point', 'thicker-b', 'longer-pin'))).toEqual([
      'longer-pin-holds-more',
    ]);
  });

  it('nothing chosen is no attempt', () => {
    expect(markAnswer(pin, one()).verdict).toBe('unreadable');
    expect(markAnswer(hold, several()).verdict).toBe('unreadable');
  });
});

describe('every question of the content folder', () => {
  test.each(questions.map((question) => [question.identity, question] as const))(
    '%s: its own right answer is right, and each wrong one is known',
    (_, question) => {
      if (question.kind === 'length' || question.kind === 'rule') {
        const { kind } = question;
        const typed = (text: string): Given => ({ kind, text, unit: 'mm' });
        expect(markAnswer(question, typed(`${question.right} mm`)).verdict).toBe('right');
        for (const { length: wrong, misconception, why } of question.mistakes) {
          const marked = markAnswer(question, typed(`${wrong} mm`));
          expect(marked.verdict).toBe('wrong');
          expect(marked.remarks).toEqual([{ says: why, misconception }]);
        }
        return;
      }
      if (question.kind === 'order') {
        const { order } = question;
        expect(markAnswer(question, { kind: 'order', steps: order }).verdict).toBe('right');
        const reversed = { kind: 'order', steps: order.toReversed() } as const;
        expect(markAnswer(question, reversed).verdict).toBe('wrong');
        return;
      }
      const right = question.choices.filter((choice) => choice.right).map(({ id }) => id);
      expect(markAnswer(question, { kind: question.kind, choices: right }).verdict).toBe('right');
      for (const { id, misconception } of question.choices.filter((choice) => !choice.right)) {
        const choices = question.kind === 'one' ? [id] : [...right, id];
        const marked = markAnswer(question, { kind: question.kind, choices });
        expect(marked.verdict).toBe('wrong');
        expect(marked.remarks.map((remark) => remark.misconception)).toEqual([misconception]);
      }
    },
  );

  it('whatever is typed, marking answers with a verdict and something to say, every time alike', () => {
    const typed = fc.oneof(
      fc.string(),
      fc
        .tuple(fc.double({ min: 0, max: 200, noNaN: true }), fc.constantFrom('', ' in', ' mm'))
        .map(([number, unit]) => `${number}${unit}`),
    );
    const lengths = questions.filter((question) => question.kind === 'length');
    expect(lengths.length).toBeGreaterThan(3);
    fc.assert(
      fc.property(
        fc.constantFrom(...lengths),
        typed,
        fc.constantFrom('in', 'mm'),
        (question, text, unit) => {
          const marked = markAnswer(question, length(text, unit));
          expect(['right', 'wrong', 'unreadable']).toContain(marked.verdict);
          expect(marked.remarks.length).toBeGreaterThan(0);
          for (const { says } of marked.remarks) expect(says.length).toBeGreaterThan(0);
          expect(markAnswer(question, length(text, unit))).toEqual(marked);
        },
      ),
    );
  });

  it('refuses an answer of another kind: that is a fault of the program', () => {
    expect(() => markAnswer(stop, { kind: 'one', choices: ['a'] })).toThrow(TypeError);
    expect(() => markAnswer(questionCalled('longer-pin'), length('1'))).toThrow(TypeError);
  });
});
