import type { ClosingOdds } from '../../../core/trial/closingOdds.ts';
import type { DrilledRow } from '../../../core/trial/drilledRow.ts';
import { lessThan } from '../../../core/length/mm.ts';
import { type Sentence } from '../../../core/working/sentence.ts';
import { fine } from '../../../diagrams/moisture/fine.ts';
import { ofHundred } from '../../../diagrams/errors/odds.ts';

/** A small length with its unit: thousandths of an inch, or hundredths of a millimeter. */
export function small(length: number): { readonly in: string; readonly mm: string } {
  const text = fine(length);
  return { in: `${text.in}\u00a0in`, mm: `${text.mm}\u00a0mm` };
}

function list(numbers: readonly number[], word: string): string {
  const all = numbers.map((j) => String(j + 1));
  return all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} ${word} ${all.at(-1)}`;
}

/** What became of the row that was drilled: whether it goes together, what stops it, how it stands. */
export function rowSentence(row: DrilledRow, flushWithin: number): Sentence {
  const count = row.pins.length;
  const { start, end } = row.step;
  const proud = Math.max(Math.abs(start), Math.abs(end));
  if (!row.fits) {
    const before = row.stoppedBy!;
    const went =
      before === 1 ? 'Pin 1 went in' : `Pins ${list([...Array(before).keys()], 'and')} went in`;
    const cure =
      row.spoilers.length > 0
        ? ` Leave out pin ${list(row.spoilers, 'or')} and the others go in.`
        : ' No single pin is to blame: leaving one out does not help.';
    return [
      before === 0
        ? 'This row binds: a pin without play goes into no hole that is off.'
        : `This row binds. ${went}; pin ${before + 1} does not agree with ${before === 1 ? 'it' : 'them'}.`,
      ' However the boards are shifted, the worst pin is too far off by ',
      small(row.miss),
      `.${before === 0 || count < 3 ? '' : cure}`,
    ];
  }
  const flush = !lessThan(flushWithin, proud);
  return [
    `This row goes together: ${count === 1 ? 'one pin always finds its hole' : `one shift of the boards suits all ${count} pins`}. The faces then stand `,
    small(Math.abs(start)),
    ' off each other at one end and ',
    small(Math.abs(end)),
    ` at the other: ${flush ? 'flush' : 'not flush'} within `,
    small(flushWithin),
    '.',
  ];
}

/** The odds of such a row, as a learner counts them. */
export function oddsSentence(all: readonly ClosingOdds[], pins: number): string {
  const { probability, low, high, flushable } = all[pins - 1]!;
  const range =
    ofHundred(low) === ofHundred(high) ? '' : ` (${ofHundred(low)} to ${ofHundred(high)})`;
  return ` Of 100 rows drilled like it, ${ofHundred(probability)} go together${range} and ${ofHundred(flushable.probability)} can be pushed flush.`;
}
