import { keep, readKept } from '../../keptHere.ts';

const KEY = 'piece-ticks';

/** What was ticked off in a drill list, kept on this machine: a phone falls asleep at the bench. */
export class Ticks {
  #done = $state.raw<readonly string[]>([]);

  /** How many are ticked off. */
  get count(): number {
    return this.#done.length;
  }

  open(): void {
    const kept = readKept(KEY);
    this.#done = Array.isArray(kept) ? kept.filter((each) => typeof each === 'string') : [];
  }

  has(what: string): boolean {
    return this.#done.includes(what);
  }

  set(what: string, done: boolean): void {
    const others = this.#done.filter((each) => each !== what);
    this.#keep(done ? [...others, what] : others);
  }

  clear(): void {
    this.#keep([]);
  }

  #keep(done: readonly string[]): void {
    this.#done = done;
    keep(KEY, done);
  }
}
