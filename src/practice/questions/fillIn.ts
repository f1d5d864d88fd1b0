import { mm } from '../../core/length/mm.ts';
import { type Expression, evaluate } from '../../core/working/expression.ts';
import { formatQuantity } from '../../core/working/formatQuantity.ts';
import type { Sentence } from '../../core/working/sentence.ts';
import { type FormulaNumbers, readFormula, unitOf } from './formula.ts';

/**
 * A number as a piece of a sentence: a length is written in the reader's unit when it is shown,
 * anything else is written out here, for either reader where that makes a difference.
 */
export function pieceOf(formula: Expression): Sentence[number] {
  const value = evaluate(formula);
  const unit = unitOf(formula);
  if (unit === 'length') return { mm: mm(value) };
  const [inches, metric] = (['in', 'mm'] as const).map((reader) =>
    formatQuantity(value, unit, reader),
  ) as [string, string];
  return inches === metric ? inches : { in: inches, mm: metric };
}

/**
 * A text of content with its numbers put in: `B holds {b.engagement}.`
 * @param own what `{this}` stands for: the value of the answer that the text belongs to
 * @throws FormulaError
 */
export function fillIn(text: string, about: FormulaNumbers, own?: Expression): Sentence {
  return text
    .split(/(\{[^{}]*\})/)
    .filter((piece) => piece !== '')
    .map((piece) => {
      if (!piece.startsWith('{')) return piece;
      const inside = piece.slice(1, -1).trim();
      return pieceOf(inside === 'this' && own ? own : readFormula(inside, about));
    });
}
