import { describe, expect, it } from 'vitest';
import { boardsAsSold, inches } from '../../../src/core/index.ts';

describe('boardsAsSold', () => {
  const softwood = boardsAsSold.find(({ name }) => /Softwood/.test(name))!;
  const widthOf = (nominal: number) =>
    softwood.sizes.find((each) => each.name === `1 × ${nominal}`)?.width;

  it('takes 3/4 in off softwood widths of 8 in and more, 1/2 in off narrower ones, as its rule says', () => {
    for (const nominal of [2, 3, 4, 6]) expect(widthOf(nominal)).toBe(inches(nominal - 1 / 2));
    for (const nominal of [8, 10, 12]) expect(widthOf(nominal)).toBe(inches(nominal - 3 / 4));
  });
});
