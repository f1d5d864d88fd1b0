import type { ClosingOdds } from '../../../core/trial/closingOdds.ts';
import { type AnsweringWorker, LatestAnswer } from '../../latestAnswer.ts';
import { MOST_PINS, type RowSettings } from './rowSettings.ts';

/** The odds for one pin, two pins and so on. */
export type AllOdds = readonly ClosingOdds[];

/** Starts the worker; its file lies beside this script, wherever the site is. */
function startWorker(): AnsweringWorker<AllOdds> {
  return new Worker(new URL('./odds.worker.ts', import.meta.url), { type: 'module' });
}

/** Tries the joints one number of pins at a time, with a pause between. */
async function inSlices(settings: RowSettings, wanted: () => boolean): Promise<AllOdds | null> {
  const { rowOdds } = await import('./rowOdds.ts');
  const odds: ClosingOdds[] = [];
  while (odds.length < MOST_PINS) {
    await new Promise((resume) => setTimeout(resume));
    if (!wanted()) return null;
    odds.push(rowOdds(settings, odds.length + 1));
  }
  return odds;
}

/** Gets the odds of the latest settings, off the main thread. */
export class LatestOdds extends LatestAnswer<RowSettings, AllOdds> {
  /** @param deliver gets the odds of the latest settings, once */
  constructor(deliver: (odds: AllOdds) => void, start = startWorker) {
    super(deliver, start, inSlices);
  }
}
