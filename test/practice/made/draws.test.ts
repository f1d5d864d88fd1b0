import { describe, expect, it } from 'vitest';
import { Draws } from '../../../src/practice/made/draws.ts';

describe('Draws', () => {
  it('draws the same from the same key, on any machine', () => {
    const draws = new Draws('stop-for-a-board:7:0');
    const numbers = Array.from({ length: 8 }, () => draws.whole(0, 99));
    expect(numbers).toEqual([53, 60, 24, 32, 79, 88, 50, 64]);
  });

  it('draws whole numbers within the range, both ends included', () => {
    const draws = new Draws('range');
    const drawn = Array.from({ length: 400 }, () => draws.whole(-2, 3));
    expect([...new Set(drawn)].sort((a, b) => a - b)).toEqual([-2, -1, 0, 1, 2, 3]);
  });

  it('draws about as often one as another, from keys that differ by a digit', () => {
    const counts = [0, 0, 0, 0, 0];
    for (let seed = 0; seed < 5000; seed++) {
      const drawn = new Draws(`template:${seed}:0`).whole(0, 4);
      counts[drawn] = (counts[drawn] ?? 0) + 1;
    }
    // Five standard deviations of a fair draw.
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(5 * Math.sqrt(800));
  });

  it('mixes a list without losing or doubling, and leaves it as it was', () => {
    const list = ['a', 'b', 'c', 'd', 'e'];
    const mixed = new Draws('mix').shuffled(list);
    expect([...mixed].sort()).toEqual(list);
    expect(list).toEqual(['a', 'b', 'c', 'd', 'e']);
  });

  it('takes some of a list in its own order', () => {
    for (let key = 0; key < 50; key++) {
      const some = new Draws(`some:${key}`).some([1, 2, 3, 4, 5, 6], 3);
      expect(some).toHaveLength(3);
      expect([...some].sort()).toEqual(some);
    }
  });
});
