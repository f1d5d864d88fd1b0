import { decodeSetup } from '../../../core/setup/setupLink.ts';
import { keep, readKept } from '../../keptHere.ts';

/** A setup that was kept on this machine under a name: one joint, or a piece. */
export interface KeptSetup {
  readonly name: string;
  /** As `encodeSetup` writes it. */
  readonly link: string;
}

/** Whether what storage holds is a kept setup: it may be another version's, or anyone's. */
export function isKeptSetup(each: unknown): each is KeptSetup {
  const { name, link } = (each ?? {}) as Partial<KeptSetup>;
  return typeof name === 'string' && typeof link === 'string' && decodeSetup(link).ok;
}

/** Setups kept on this machine, one of each name; the last kept comes first. */
export class KeptSetups {
  readonly #key: string;
  #all = $state.raw<readonly KeptSetup[]>([]);

  /** @param key where they are kept, such as 'kept-joints' */
  constructor(key: string) {
    this.#key = key;
  }

  get all(): readonly KeptSetup[] {
    return this.#all;
  }

  /** Reads what is kept; what can't be read is left out. */
  open(): void {
    const kept = readKept(this.#key);
    const sound = Array.isArray(kept) ? kept.filter(isKeptSetup) : [];
    this.#all = sound.filter(
      ({ name }, i) => sound.findIndex((other) => other.name === name) === i,
    );
  }

  /**
   * Keeps a setup, in the place of one of the same name.
   * @returns whether the browser kept it
   */
  add(setup: KeptSetup): boolean {
    return this.keepAll([setup, ...this.#all.filter(({ name }) => name !== setup.name)]);
  }

  /** Keeps a setup beside all others: where its name is taken, under another. */
  addBeside({ name, link }: KeptSetup): void {
    if (this.#all.some((each) => each.link === link)) return;
    const isTaken = (wanted: string) => this.#all.some((each) => each.name === wanted);
    let free = name;
    for (let i = 2; isTaken(free); i += 1) free = `${name} (${i})`;
    this.add({ name: free, link });
  }

  remove(name: string): void {
    this.keepAll(this.#all.filter((each) => each.name !== name));
  }

  /** Keeps these and no others. @returns whether the browser kept them */
  keepAll(all: readonly KeptSetup[]): boolean {
    const isKept = keep(this.#key, all);
    if (isKept) this.#all = all;
    return isKept;
  }
}
