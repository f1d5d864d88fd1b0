import type { DryFit } from '../../../core/trial/dryFit.ts';
import { type Ending, endingsOf } from '../../../diagrams/trial/says.ts';

/** What a reader can expect of a joint, as they would say it and as it is told afterwards. */
export const guesses: readonly {
  readonly ending: Ending;
  readonly label: string;
  readonly told: string;
}[] = [
  { ending: 'closes', label: 'It closes', told: 'it closes, and its boards line up' },
  { ending: 'open', label: 'It stays open', told: 'it stays open' },
  { ending: 'refuses', label: 'It won’t go together', told: 'it won’t go together' },
  { ending: 'step', label: 'The boards don’t line up', told: 'its boards don’t line up' },
  { ending: 'through', label: 'A point comes through', told: 'a point comes through' },
];

function told(ending: Ending): string {
  return guesses.find((guess) => guess.ending === ending)?.told ?? '';
}

/** How an expectation compared with what came of it, in a sentence. */
export function compare(guess: Ending, outcome: DryFit): string {
  const endings = endingsOf(outcome);
  const others = endings.filter((ending) => ending !== guess).map(told);
  if (!endings.includes(guess))
    return `You expected that ${told(guess)}. In fact ${others.join(', and ')}.`;
  return others.length === 0
    ? `Just as you expected: ${told(guess)}.`
    : `You expected that ${told(guess)}, and it is so. Besides, ${others.join(', and ')}.`;
}
