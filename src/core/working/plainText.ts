import { formatReadable, spokenLength } from '../length/formatLength.ts';
import type { Sentence } from './sentence.ts';

/** A piece of a sentence in one unit, the unit's sign included. */
export function pieceText(piece: Sentence[number], unit: 'in' | 'mm'): string {
  if (typeof piece === 'string') return piece;
  return 'in' in piece ? piece[unit] : `${formatReadable(piece.mm, unit)} ${unit}`;
}

/**
 * A sentence as plain text, its lengths written in one unit.
 * @example plainText(say`The hole is ${mm(12.7)} deep.`, 'in') // 'The hole is 1/2 in deep.'
 */
export function plainText(sentence: Sentence, unit: 'in' | 'mm'): string {
  return sentence.map((piece) => pieceText(piece, unit)).join('');
}

/**
 * A sentence for a screen reader: as `plainText`, with the unit of each length in words.
 * @example spokenText(say`The hole is ${mm(12.7)} deep.`, 'in') // 'The hole is 1/2 inch deep.'
 */
export function spokenText(sentence: Sentence, unit: 'in' | 'mm'): string {
  return sentence
    .map((piece) =>
      typeof piece !== 'string' && !('in' in piece)
        ? spokenLength(piece.mm, unit)
        : pieceText(piece, unit),
    )
    .join('');
}
