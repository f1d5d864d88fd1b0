import { describe, expect, it } from 'vitest';
import { boardsAsSold, inches } from '../../src/core/index.ts';

const group = (name: RegExp) => boardsAsSold.find((each) => name.test(each.name))!;

describe('hardwood surfaced two sides, quarters to inches (read, three tables agree)', () => {
  it.each([
    ['1/2', 5 / 16],
    ['5/8', 7 / 16],
    ['3/4', 9 / 16],
    ['4/4', 13 / 16],
    ['5/4', 1 + 1 / 16],
    ['6/4', 1 + 5 / 16],
    ['8/4', 1 + 3 / 4],
    ['12/4', 2 + 3 / 4],
    ['16/4', 3 + 3 / 4],
  ])('%s is %d in thick', (name, thickness) => {
    const size = group(/Hardwood/).sizes.find((each) => each.name === name);
    expect(size?.thickness).toBe(inches(thickness));
  });
});

describe('softwood boards, dry and dressed, American Softwood Lumber Standard, NIST PS 20', () => {
  const softwood = (name: string) => group(/Softwood/).sizes.find((each) => each.name === name);

  it('a 1 × 6 is 3/4 × 5 1/2 in (read at a grading agency’s page)', () => {
    expect(softwood('1 × 6')).toMatchObject({ thickness: inches(3 / 4), width: inches(5.5) });
  });
  it('the 2-inch board is 1 1/2 in thick (read in a history of the standard)', () => {
    expect(softwood('2 × 4')?.thickness).toBe(inches(3 / 2));
  });
  it('widths of 8 in and more lose 3/4 in, narrower ones 1/2 in (from memory)', () => {
    for (const nominal of [2, 3, 4, 6]) {
      expect(softwood(`1 × ${nominal}`)?.width).toBe(inches(nominal - 1 / 2));
    }
    for (const nominal of [8, 10, 12]) {
      expect(softwood(`1 × ${nominal}`)?.width).toBe(inches(nominal - 3 / 4));
    }
  });
});
