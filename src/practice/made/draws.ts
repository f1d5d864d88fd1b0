import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import type { JointKind } from '../../core/joint/types.ts';
import type { Limits } from '../questions/types.ts';
import { hash } from './hash.ts';

/**
 * Draws for one question. Only whole numbers are ever drawn, so that the same key gives the same
 * question on every machine.
 */
export class Draws {
  readonly #source: RandomGenerator;
  /** What a class has; nothing in it where a question is for any shop. */
  readonly limits: Limits;

  /** @param key names what is drawn for; another key gives other draws */
  constructor(key: string, limits: Limits = {}) {
    this.limits = limits;
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

  /** One of several joints: of those that the class makes, if it makes any of them. */
  joint<const Kind extends JointKind>(list: readonly Kind[]): Kind {
    const made = list.filter((kind) => this.limits.joints?.includes(kind) ?? true);
    return this.pick(made.length > 0 ? made : list);
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
