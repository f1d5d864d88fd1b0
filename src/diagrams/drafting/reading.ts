import { formatReadable, spokenLength } from '../../core/length/formatLength.ts';
import type { Mm } from '../../core/length/mm.ts';

/** What the reader sees lengths in. */
export type Unit = 'in' | 'mm';

/** A text of a drawing in either unit; the drawing is arranged so that both fit. */
export interface Reading {
  readonly in: string;
  readonly mm: string;
}

/** The same words in both units. */
export function words(text: string): Reading {
  return { in: text, mm: text };
}

/** A text with lengths in it, once in each unit. @example reading((length) => `Ø${length(pin.diameter)}`) */
export function reading(write: (length: (mm: number) => string) => string): Reading {
  const inUnit = (unit: Unit) =>
    write((mm) =>
      formatReadable(mm as Mm, unit)
        .replace('-', '−')
        .replace(' ', '\u00a0'),
    );
  return { in: inUnit('in'), mm: inUnit('mm') };
}

/**
 * Writes lengths as a description says them, the unit in words: '31/64 in in B' is hard to follow.
 * @example spoken('in')(pin.diameter) // '3/8 inch'
 */
export function spoken(unit: Unit): (length: number) => string {
  return (length) => spokenLength(length as Mm, unit);
}

/** A description in the unit that is shown, or in both, one after the other. */
export function shownText(unit: Unit | 'both', write: (unit: Unit) => string): string {
  return unit === 'both' ? `${write('in')} ${write('mm')}` : write(unit);
}

/** The text as it is shown: in one unit only, or in both. */
export function shownReading(text: Reading, unit: Unit | 'both'): Reading {
  return unit === 'both' ? text : words(text[unit]);
}

/** One length as it is shown. */
export function shownLength(length: number, unit: Unit | 'both'): Reading {
  return shownReading(
    reading((write) => write(length)),
    unit,
  );
}
