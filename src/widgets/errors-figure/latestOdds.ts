import type { ClosingOdds } from '../../core/trial/closingOdds.ts';
import { MOST_PINS, type RowSettings } from './rowSettings.ts';

/** The odds for one pin, two pins and so on. */
export type AllOdds = readonly ClosingOdds[];

/** As much of a worker as is needed: it answers each message with one of its own. */
export type OddsWorker = Pick<Worker, 'postMessage' | 'terminate'> & {
  onmessage: ((event: MessageEvent<AllOdds>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
};

/** Starts the worker; its file lies beside this script, wherever the site is. */
export function startWorker(): OddsWorker {
  return new Worker(new URL('./odds.worker.ts', import.meta.url), { type: 'module' });
}

/**
 * Gets the odds of the latest settings and drops all others: the worker is given one question at
 * a time, and of those that come up meanwhile only the last is asked. Where no worker can be
 * started, or it fails, the joints are tried on the main thread, one number of pins at a time
 * with a pause between, so that the page stays alive.
 */
export class LatestOdds {
  readonly #deliver: (odds: AllOdds) => void;
  readonly #start: () => OddsWorker;
  #worker: OddsWorker | null | undefined;
  /** Asked of the worker, and not answered yet. */
  #asked: RowSettings | null = null;
  /** The latest settings whose odds nobody has yet. */
  #wanted: RowSettings | null = null;

  /** @param deliver gets the odds of the latest settings, once */
  constructor(deliver: (odds: AllOdds) => void, start: () => OddsWorker = startWorker) {
    this.#deliver = deliver;
    this.#start = start;
  }

  ask(settings: RowSettings): void {
    this.#wanted = settings;
    if (this.#worker === undefined) this.#worker = this.#open();
    this.#next();
  }

  /** Forgets what was asked, and ends the worker. */
  close(): void {
    this.#wanted = null;
    this.#asked = null;
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #open(): OddsWorker | null {
    try {
      const worker = this.#start();
      worker.onmessage = ({ data }) => {
        const stale = this.#asked !== this.#wanted;
        this.#asked = null;
        if (stale) this.#next();
        else if (this.#wanted !== null) this.#answer(data);
      };
      worker.onerror = () => {
        worker.terminate();
        this.#worker = null;
        this.#asked = null;
        this.#next();
      };
      return worker;
    } catch {
      return null;
    }
  }

  #next(): void {
    if (this.#wanted === null || this.#asked !== null) return;
    if (this.#worker) {
      this.#asked = this.#wanted;
      this.#worker.postMessage(this.#wanted);
    } else {
      void this.#slice(this.#wanted);
    }
  }

  async #slice(settings: RowSettings): Promise<void> {
    const { rowOdds } = await import('./rowOdds.ts');
    const odds: ClosingOdds[] = [];
    while (odds.length < MOST_PINS) {
      await new Promise((resume) => setTimeout(resume));
      if (this.#wanted !== settings) return;
      odds.push(rowOdds(settings, odds.length + 1));
    }
    if (this.#wanted === settings) this.#answer(odds);
  }

  #answer(odds: AllOdds): void {
    this.#wanted = null;
    this.#deliver(odds);
  }
}
