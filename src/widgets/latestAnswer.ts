/** As much of a worker as is needed: it answers each message with one of its own. */
export type AnsweringWorker<Answer> = Pick<Worker, 'postMessage' | 'terminate'> & {
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
};

/**
 * Gets the answer to the latest question and drops all others: the worker is given one question
 * at a time, and of those that come up meanwhile only the last is asked. Where no worker can be
 * started, or it fails, the answer is worked out on the main thread.
 */
export class LatestAnswer<Question extends object, Answer> {
  readonly #deliver: (answer: Answer) => void;
  readonly #start: () => AnsweringWorker<Answer>;
  readonly #here: (question: Question, wanted: () => boolean) => Promise<Answer | null>;
  #worker: AnsweringWorker<Answer> | null | undefined;
  /** Asked of the worker, and not answered yet. */
  #asked: Question | null = null;
  /** The latest question, while nobody has its answer. */
  #wanted: Question | null = null;

  /**
   * @param deliver gets the answer to the latest question, once
   * @param start starts the worker; it may throw
   * @param here works an answer out on the main thread, in slices that leave the page alive; gives
   *   up, with null, once it isn't wanted any more
   */
  constructor(
    deliver: (answer: Answer) => void,
    start: () => AnsweringWorker<Answer>,
    here: (question: Question, wanted: () => boolean) => Promise<Answer | null>,
  ) {
    this.#deliver = deliver;
    this.#start = start;
    this.#here = here;
  }

  ask(question: Question): void {
    this.#wanted = question;
    if (this.#worker === undefined) this.#worker = this.#open();
    this.#next();
  }

  /** Forgets what was asked. */
  forget(): void {
    this.#wanted = null;
  }

  /** Forgets what was asked, and ends the worker. */
  close(): void {
    this.forget();
    this.#asked = null;
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #open(): AnsweringWorker<Answer> | null {
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
      void this.#workOut(this.#wanted);
    }
  }

  async #workOut(question: Question): Promise<void> {
    const wanted = () => this.#wanted === question;
    const answer = await this.#here(question, wanted);
    if (answer !== null && wanted()) this.#answer(answer);
  }

  #answer(answer: Answer): void {
    this.#wanted = null;
    this.#deliver(answer);
  }
}
