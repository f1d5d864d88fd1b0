import { describe, expect, it } from 'vitest';
import { type CheckRow, differenceOf, verdictOf } from '../../src/checks/checkRow.ts';
import { checkGroups } from '../../src/checks/index.ts';

/** 'Published 1.7 mm' in a title; a range by its two ends. */
function publishedIn({ published, unit }: CheckRow): string {
  const name = unit === 'length' ? 'mm' : unit.name;
  if (typeof published === 'number') return `${published} ${name}`;
  return `${published.from} to ${published.to} ${name}`;
}

// The Checks page shows these same rows.
for (const { title, rows } of checkGroups) {
  const judged = rows.filter((row) => verdictOf(row) !== 'shown');
  const sources = new Set(judged.map(({ source, standing }) => `${source} (${standing})`));
  for (const from of sources) {
    describe(`${title}: ${from}`, () => {
      for (const row of judged.filter((each) => `${each.source} (${each.standing})` === from)) {
        it(`${row.what}: ${publishedIn(row)}`, () => {
          expect(Math.abs(differenceOf(row))).toBeLessThanOrEqual(row.tolerance!);
        });
      }
    });
  }
}

const rows = checkGroups.flatMap((group) => group.rows);
const row: CheckRow = {
  what: 'a value',
  unit: 'length',
  published: 10,
  computed: 10.2,
  tolerance: 0.1,
  source: 'somewhere',
  standing: 'read',
};

describe('the rows of the checks', () => {
  it('hold the 114 shared cells of Table 4-2, 19 woods in two directions, and the worked example', () => {
    const from = (source: RegExp) => rows.filter((each) => source.test(each.source)).length;
    expect(from(/Table 4-2/)).toBe(114);
    expect(from(/Table 4-3/)).toBe(38);
    expect(from(/Eq\. 13-2/)).toBe(1);
  });

  it('each have a computed value, a source, and a name of their own within it', () => {
    for (const { what, computed, source } of rows) {
      expect(Number.isFinite(computed), what).toBe(true);
      expect(source.length).toBeGreaterThan(5);
    }
    const names = rows.map(({ what, source }) => `${what} (${source})`);
    expect(names.filter((name, k) => names.indexOf(name) !== k)).toEqual([]);
  });

  it('are judged where the value was read or follows from the shape, and nowhere else', () => {
    expect(verdictOf({ ...row, computed: 10.05 })).toBe('agrees');
    expect(verdictOf(row)).toBe('differs');
    expect(verdictOf({ ...row, computed: NaN })).toBe('differs');
    expect(verdictOf({ ...row, standing: 'geometry' })).toBe('differs');
    for (const standing of ['second-hand', 'common practice', 'from memory'] as const) {
      expect(verdictOf({ ...row, standing })).toBe('shown');
      expect(verdictOf({ ...row, standing, computed: 10 })).toBe('shown');
    }
  });

  it('do not judge the rules of the shop, which differ among themselves', () => {
    expect(verdictOf({ ...row, tolerance: null })).toBe('shown');
    const rules = checkGroups.find(({ id }) => id === 'shop-rules')!.rows;
    expect(rules.length).toBeGreaterThan(10);
    expect(rules.every((rule) => verdictOf(rule) === 'shown')).toBe(true);
  });

  it('measure the difference from the nearer end of a range, and none within it', () => {
    const published = { from: 9, to: 11 };
    expect(differenceOf({ ...row, published })).toBe(0);
    expect(differenceOf({ ...row, published, computed: 8.5 })).toBe(-0.5);
    expect(differenceOf({ ...row, published, computed: 12 })).toBe(1);
  });
});
