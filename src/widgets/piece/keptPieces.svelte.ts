import { decodeSetup } from '../../core/setup/setupLink.ts';
import { keep, readKept } from '../keptHere.ts';

/** A piece that was kept on this machine under a name. */
export interface KeptPiece {
  readonly name: string;
  /** As `linkOf` writes it. */
  readonly link: string;
}

const KEY = 'kept-pieces';

function isKept(each: unknown): each is KeptPiece {
  const { name, link } = (each ?? {}) as Partial<KeptPiece>;
  return typeof name === 'string' && typeof link === 'string' && decodeSetup(link).ok;
}

/** Pieces kept on this machine, one of each name; the last kept comes first. */
export class KeptPieces {
  #all = $state.raw<readonly KeptPiece[]>([]);

  get all(): readonly KeptPiece[] {
    return this.#all;
  }

  /** Reads what is kept; what can't be read is left out. */
  open(): void {
    const kept = readKept(KEY);
    this.#all = Array.isArray(kept) ? kept.filter(isKept) : [];
  }

  /**
   * Keeps a piece, in the place of one of the same name.
   * @returns whether the browser kept it
   */
  add(piece: KeptPiece): boolean {
    return this.#keep([piece, ...this.#all.filter(({ name }) => name !== piece.name)]);
  }

  /** Keeps a piece beside all others: where its name is taken, under another. */
  addBeside({ name, link }: KeptPiece): void {
    if (this.#all.some((each) => each.link === link)) return;
    const isTaken = (wanted: string) => this.#all.some((each) => each.name === wanted);
    let free = name;
    for (let i = 2; isTaken(free); i += 1) free = `${name} (${i})`;
    this.add({ name: free, link });
  }

  remove(name: string): void {
    this.#keep(this.#all.filter((each) => each.name !== name));
  }

  #keep(all: readonly KeptPiece[]): boolean {
    this.#all = all;
    return keep(KEY, all);
  }
}
