import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { plainText } from '../../../src/core/working/plainText.ts';
import { makeQuestion, templates } from '../../../src/practice/made/index.ts';
import { markAnswer } from '../../../src/practice/questions/markAnswer.ts';
import {
  LEVELS,
  type FaultQuestion,
  type Given,
  type OrderQuestion,
  type Question,
} from '../../../src/practice/questions/types.ts';
import { misconceptions } from '../contentFiles.ts';
import { rightAnswer } from './rightAnswer.ts';

function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null)
    Object.values(Object.freeze(value)).forEach(frozen);
  return value;
}

const questions: readonly Question[] = templates.flatMap(({ id }) =>
  LEVELS.flatMap((level) =>
    (['in', 'mm'] as const).map((system) =>
      frozen(makeQuestion(id, 20_261, { system, level, misconceptions })),
    ),
  ),
);

/** Texts as students type them, and as nobody would. */
const anyText = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc
    .tuple(fc.nat(40), fc.nat(64), fc.nat(64))
    .map(([whole, over, under]) => `${whole} ${over}/${under}`),
  fc
    .tuple(fc.double(), fc.constantFrom('', ' in', 'mm', '"', ' ft'))
    .map(([n, unit]) => `${n}${unit}`),
);

function anyAnswer(question: Question): fc.Arbitrary<Given> {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return fc.record({
        kind: fc.constant(question.kind),
        text: anyText,
        unit: fc.constantFrom('in', 'mm'),
      });
    case 'order':
      return fc.record({
        kind: fc.constant('order'),
        steps: fc.oneof(
          fc.array(fc.string()),
          fc.shuffledSubarray([...question.order]),
          fc.shuffledSubarray([...question.order], { minLength: question.order.length }),
        ),
      });
    default: {
      const ids = question.choices.map(({ id }) => id);
      return fc.record({
        kind: fc.constant(question.kind),
        choices: fc.array(fc.oneof(fc.string(), fc.constantFrom(...ids))),
      });
    }
  }
}

const anyPair = fc
  .constantFrom(...questions)
  .chain((question) => fc.tuple(fc.constant(question), anyAnswer(question)));

describe('marking', () => {
  it('takes any text and any ids, changes nothing, says something, and always the same', () => {
    fc.assert(
      fc.property(anyPair, ([question, given]) => {
        const marked = markAnswer(question, frozen(given));
        expect(['right', 'wrong', 'unreadable']).toContain(marked.verdict);
        expect(marked.remarks.length).toBeGreaterThan(0);
        for (const { says } of marked.remarks) {
          for (const unit of ['in', 'mm'] as const) {
            expect(plainText(says, unit)).not.toMatch(/^\s*$|NaN|undefined/);
          }
        }
        expect(markAnswer(question, given)).toEqual(marked);
      }),
      { numRuns: 3000 },
    );
  });

  it('takes the right answer of every template at every level, and explains it', () => {
    for (const question of questions) {
      const { verdict, remarks } = markAnswer(question, rightAnswer(question));
      expect(verdict, question.identity).toBe('right');
      expect(remarks[0]?.says.length).toBeGreaterThan(0);
    }
  });

  it('refuses an answer of another kind than the question', () => {
    const [rule, order, fault] = ['read-the-rule', 'order-at-the-bench', 'wrong-hole'].map((id) =>
      questions.find(({ identity }) => identity.startsWith(`${id}@`))!,
    );
    expect(() => markAnswer(rule!, { kind: 'length', text: '1', unit: 'in' })).toThrow(TypeError);
    expect(() => markAnswer(order!, { kind: 'one', choices: [] })).toThrow(TypeError);
    expect(() => markAnswer(fault!, { kind: 'several', choices: [] })).toThrow(TypeError);
  });
});

describe('an order', () => {
  const step = (id: string, ...after: string[]) => ({
    ...{ id, after, says: [`${id} it`], why: [`${id} waits for ${after.join()}`] },
    misconception: { id: `too-soon-${id}`, name: `${id} too soon` },
  });
  /** Glue waits for the dry fit and that for both boards, which may be drilled in either order. */
  const question: OrderQuestion = {
    ...{ identity: 'x/order@1', part: 'self-check', ask: ['In order?'], working: [], placed: 0 },
    kind: 'order',
    steps: [step('glue', 'fit'), step('a'), step('fit', 'a', 'b'), step('b')],
    order: ['a', 'b', 'fit', 'glue'],
  };
  const mark = (...steps: string[]) => markAnswer(question, { kind: 'order', steps });

  test.each([[['a', 'b', 'fit', 'glue']], [['b', 'a', 'fit', 'glue']]])(
    '%j is right: no step comes before one that it waits for',
    (steps) => expect(mark(...steps).verdict).toBe('right'),
  );

  it('names the first step out of place, how far it was right, and why it has to wait', () => {
    const { verdict, remarks } = mark('a', 'fit', 'b', 'glue');
    expect(verdict).toBe('wrong');
    expect(remarks.map(({ says }) => plainText(says, 'in'))).toEqual([
      'The first step can stand. The next one comes too soon: fit it',
      'fit waits for a,b',
    ]);
    expect(remarks[1]?.misconception?.id).toBe('too-soon-fit');
    expect(mark('a', 'b', 'glue', 'fit').remarks[0]?.says[0]).toMatch(/^The first 2 steps/);
    expect(mark('glue', 'a', 'b', 'fit').remarks[0]?.choice).toBe('glue');
  });

  test.each([
    ['nothing', []],
    ['a step left out', ['a', 'b', 'fit']],
    ['a step twice', ['a', 'b', 'fit', 'fit']],
    ['a step that there is not', ['a', 'b', 'fit', 'dance']],
  ])('%s does not count as an answer', (_, steps) => {
    expect(mark(...steps).verdict).toBe('unreadable');
  });
});

describe('a fault in a drawing', () => {
  const one = questions.find(({ kind }) => kind === 'fault') as FaultQuestion;
  const [wrong, sound] = [true, false].map((is) => one.choices.find(({ right }) => right === is)!);
  /** The same with two places at fault. */
  const two: FaultQuestion = {
    ...one,
    choices: [
      { ...wrong!, id: 'first' },
      { ...wrong!, id: 'second' },
      { ...sound!, id: 'sound' },
    ],
  };
  const mark = (...choices: string[]) => markAnswer(two, { kind: 'fault', choices });

  it('is found only where every place is pointed at, and no other', () => {
    expect(mark('second', 'first').verdict).toBe('right');
    expect(mark('first', 'second', 'sound').verdict).toBe('wrong');
  });

  it('says that there is more to find, and not where', () => {
    const { verdict, remarks } = mark('first');
    expect(verdict).toBe('wrong');
    expect(remarks.map(({ choice }) => choice)).toEqual([undefined]);
    expect(plainText(remarks[0]!.says, 'in')).toContain('still one place at fault');
  });

  it('explains a sound place that is pointed at, by the name of the mistake', () => {
    const { remarks } = mark('sound', 'first');
    expect(remarks.map(({ choice, misconception }) => [choice, misconception?.id])).toEqual([
      ['sound', 'blamed-the-sound-one'],
    ]);
  });

  it('does not count as an answer where nothing that there is was pointed at', () => {
    expect(mark().verdict).toBe('unreadable');
    expect(mark('nowhere').verdict).toBe('unreadable');
  });
});
