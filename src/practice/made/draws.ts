import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';

/** A whole number of 32 bits for a text: FNV-1a, its bits mixed once more. */
function hash(text: string): number {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  }
  sum = Math.imul(sum ^ (sum >>> 16), 0x85ebca6b);
  sum = Math.imul(sum ^ (sum >>> 13), 0xc2b2ae35);
  return sum ^ (sum >>> 16);
}

/**
 * Draws for one question. Only whole numbers are ever drawn, so that the same key gives the same
 * question on every machine.
 */
export class Draws {
  readonly #source: RandomGenerator;

  /** @param key names what is drawn for; another key gives other draws */
  constructor(key: string) {
    const source = xoroshiro128plus(hash(key));
    // The jump comes first: straight from its seed the first draws would be poor.
    source.jump();
    this.#source = source;
  }

  /** A whole number from `from` to `to`, both included. */
  whole(from: number, to: number): number {
    return uniformInt(this.#source, from, to);
  }

  /** One of a list that is not empty. */
  pick<const Item>(list: readonly Item[]): Item {
    return list[this.whole(0, list.length - 1)]!;
  }

  /** A list in another order. */
  shuffled<Item>(list: readonly Item[]): readonly Item[] {
    const items = [...list];
    for (let last = items.length - 1; last > 0; last--) {
      const other = this.whole(0, last);
      [items[last], items[other]] = [items[other]!, items[last]!];
    }
    return items;
  }

  /** Some of a list, in the list's own order. */
  some<Item>(list: readonly Item[], count: number): readonly Item[] {
    const kept = new Set(this.shuffled(list.map((_, i) => i)).slice(0, count));
    return list.filter((_, i) => kept.has(i));
  }
}
