import { mm } from '../../core/length/mm.ts';
import { type Expression, evaluate } from '../../core/working/expression.ts';
import type { Sentence } from '../../core/working/sentence.ts';
import { type FormulaPlans, readFormula, unitOf } from './formula.ts';

/** A number as a piece of a sentence: a length is written in the reader's unit when shown. */
export function pieceOf(formula: Expression): Sentence[number] {
  const value = evaluate(formula);
  switch (unitOf(formula)) {
    case 'length':
      return { mm: mm(value) };
    case 'degrees':
      return `${Number(value.toFixed(1))}°`;
    case 'percent':
      return `${value.toFixed(1)} %`;
    case 'count':
    case 'ratio':
      return String(Number(value.toFixed(2)));
  }
}

/**
 * A text of content with its numbers put in: `B holds {b.engagement}.`
 * @param own what `{this}` stands for: the value of the answer that the text belongs to
 * @throws FormulaError
 */
export function fillIn(text: string, plans: FormulaPlans, own?: Expression): Sentence {
  return text
    .split(/(\{[^{}]*\})/)
    .filter((piece) => piece !== '')
    .map((piece) => {
      if (!piece.startsWith('{')) return piece;
      const inside = piece.slice(1, -1).trim();
      return pieceOf(inside === 'this' && own ? own : readFormula(inside, plans));
    });
}
