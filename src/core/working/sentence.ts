import type { Mm } from '../length/mm.ts';

/** A length inside a sentence: it is written in the reader's unit when it is shown. */
export interface LengthInText {
  readonly mm: Mm;
}

/** A measure that is no ordinary length, written out for either reader: `3.9 thousandths` or `100 µm`. */
export interface MeasureInText {
  readonly in: string;
  readonly mm: string;
}

/**
 * A sentence whose lengths are not written out yet, so that one caution serves readers of
 * inches and of millimeters alike.
 */
export type Sentence = readonly (string | LengthInText | MeasureInText)[];

/**
 * Builds a `Sentence`; every `${number}` is a length in millimeters, every `${string}` is text.
 * @example say`The hole is ${mm(12.7)} deep.`
 */
export function say(text: TemplateStringsArray, ...values: readonly (number | string)[]): Sentence {
  return text
    .flatMap((piece, i) => {
      const value = values[i];
      if (value === undefined) return [piece];
      return [piece, typeof value === 'string' ? value : { mm: value as Mm }];
    })
    .filter((piece) => piece !== '');
}
