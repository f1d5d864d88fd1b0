import { describe, expect, it } from 'vitest';
import {
  inches,
  ingredients,
  mm,
  plainText,
  planJoint,
  sources,
  stepMathML,
  toMathML,
} from '../../../src/core/index.ts';
import {
  difference,
  evaluate,
  greatest,
  least,
  product,
  quantity,
  quotient,
  root,
  roundUp,
  size,
  sum,
  tangent,
} from '../../../src/core/working/expression.ts';
import { say } from '../../../src/core/working/sentence.ts';
import { KINDS, ordinaryJoint } from '../../support/joints.ts';

describe('a formula', () => {
  it.each([
    [sum(1, 2, 3), 6],
    [difference(10, 2, 3), 5],
    [product(2, 3, 4), 24],
    [quotient(1, 4), 0.25],
    [least(3, 1, 2), 1],
    [greatest(3, 1, 2), 3],
    [root(16), 4],
    [tangent(45), 1],
    [roundUp(2.0000000001), 2],
    [roundUp(2.1), 3],
    [size(-3), 3],
  ])('is worked out', (formula, value) => {
    expect(evaluate(formula)).toBeCloseTo(value, 9);
  });

  const symbols = { show: 'symbols', unit: 'in' } as const;
  const values = { show: 'values', unit: 'in' } as const;

  it('is written in symbols and with its numbers', () => {
    const formula = difference(quantity('t_B', inches(3 / 4)), quantity('c', inches(1 / 8)));
    expect(toMathML(formula, symbols)).toBe(
      '<math><mrow><msub><mi>t</mi><mi>B</mi></msub><mo>−</mo><mi>c</mi></mrow></math>',
    );
    expect(toMathML(formula, values)).toBe(
      '<math><mrow><mfrac><mn>3</mn><mn>4</mn></mfrac><mo>−</mo>' +
        '<mfrac><mn>1</mn><mn>8</mn></mfrac></mrow></math>',
    );
    expect(toMathML(formula, { show: 'values', unit: 'mm' })).toBe(
      '<math><mrow><mn>19.05</mn><mo>−</mo><mn>3.17</mn></mrow></math>',
    );
  });

  it('keeps brackets where a reader would otherwise reckon something else', () => {
    const inner = sum(quantity('a', 1), quantity('b', 2));
    expect(toMathML(product(2, inner), symbols)).toContain('<mo>(</mo>');
    expect(toMathML(difference(quantity('c', 9), inner), symbols)).toContain('<mo>(</mo>');
    expect(toMathML(difference(inner, quantity('c', 9)), symbols)).not.toContain('<mo>(</mo>');
    expect(toMathML(sum(1, quantity('x', -2)), values)).toContain('<mo>(</mo>');
  });

  it('divides a fraction with a sign, since two bars would look alike', () => {
    const half = quotient(quantity('t_A', inches(3 / 4)), 2);
    expect(toMathML(half, symbols)).toContain('<mfrac><msub><mi>t</mi><mi>A</mi></msub>');
    expect(toMathML(half, values)).toBe(
      '<math><mrow><mfrac><mn>3</mn><mn>4</mn></mfrac><mo>÷</mo><mn>2</mn></mrow></math>',
    );
    expect(toMathML(half, { show: 'values', unit: 'mm' })).toContain('<mfrac><mn>19.05</mn>');
    const twice = product(2, quantity('a', 3));
    expect(toMathML(quotient(quantity('D', inches(3 / 8)), twice), values)).toMatch(
      /<mo>÷<\/mo><mrow><mo>\(<\/mo>.*<mo>\)<\/mo><\/mrow>/,
    );
  });

  it('writes nothing that a page could take for markup', () => {
    expect(toMathML(quantity('<script>', 1), symbols)).not.toContain('<script>');
  });
});

describe('the working of a plan', () => {
  it('has one line a step, each with a source, and results that its formula gives', () => {
    for (const kind of KINDS) {
      const { working } = planJoint(ordinaryJoint(kind, 'in', inches(3 / 4)));
      expect(new Set(working.map(({ id }) => id)).size).toBe(working.length);
      for (const step of working) {
        expect(evaluate(step.formula)).toBe(step.result);
        expect(sources[step.source].standing).not.toBe('');
        for (const unit of ['in', 'mm'] as const) {
          for (const line of stepMathML(step, unit)) {
            expect(line).toMatch(/^<math>.*<\/math>$/);
            expect(line).not.toMatch(/NaN|undefined|Infinity/);
          }
        }
      }
    }
  });

  it('reckons everything before it is used', () => {
    for (const kind of KINDS) {
      const { working } = planJoint(ordinaryJoint(kind, 'mm', mm(18)));
      for (const step of working) {
        const late = ingredients(step, working).flatMap((part) => {
          if ('step' in part) return [];
          const same = working.find(
            ({ symbol, result, id }) =>
              symbol === part.given.symbol && result === part.given.value && id !== step.id,
          );
          return same ? [same.id] : [];
        });
        expect(late, `${kind}: ${step.id}`).toEqual([]);
      }
    }
  });

  it('leads from a number down to what was set', () => {
    const { working } = planJoint(ordinaryJoint('corner', 'in', inches(3 / 4)));
    const stop = working.find(({ id }) => id === 'b.stop')!;
    const parts = ingredients(stop, working);
    expect(parts.map((part) => ('step' in part ? part.step.id : part.given.symbol))).toEqual([
      'bushing',
      'standoff',
      'b.holeDepth',
    ]);
    const most = working.find(({ id }) => id === 'b.most')!;
    expect(ingredients(most, working).map((part) => ('step' in part ? part.step.id : ''))).toEqual([
      'b.limit',
      'leave',
      'tip',
      'allowance',
    ]);
  });
});

describe('a sentence of the calculator', () => {
  it('is written in either unit', () => {
    const sentence = say`The hole is ${inches(1 / 2)} deep, ${'no more'}.`;
    expect(plainText(sentence, 'in')).toBe('The hole is 1/2 in deep, no more.');
    expect(plainText(sentence, 'mm')).toBe('The hole is 12.7 mm deep, no more.');
  });
});
