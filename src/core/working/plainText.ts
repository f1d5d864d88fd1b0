import { formatReadable } from '../length/formatLength.ts';
import type { Sentence } from './sentence.ts';

/**
 * A sentence as plain text, its lengths written in one unit.
 * @example plainText(say`The hole is ${mm(12.7)} deep.`, 'in') // 'The hole is 1/2 in deep.'
 */
export function plainText(sentence: Sentence, unit: 'in' | 'mm'): string {
  return sentence
    .map((piece) =>
      typeof piece === 'string' ? piece : `${formatReadable(piece.mm, unit)} ${unit}`,
    )
    .join('');
}
