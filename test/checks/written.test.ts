import { describe, expect, it } from 'vitest';
import type { CheckRow } from '../../src/checks/checkRow.ts';
import { written } from '../../src/checks/written.ts';
import { inches } from '../../src/core/index.ts';

const row: CheckRow = {
  what: 'a value',
  unit: { name: '%', decimals: 1 },
  published: 14.4,
  computed: 14.4312,
  tolerance: 0.1,
  source: 'somewhere',
  standing: 'read',
};

describe('written', () => {
  it('shows the computed value one decimal finer than the published one', () => {
    expect(written(row)).toEqual({
      published: '14.4 %',
      computed: '14.43',
      difference: '+0.03',
    });
    expect(written({ ...row, computed: 14.39 }).difference).toBe('−0.01');
    expect(written({ ...row, computed: 14.4 }).difference).toBe('0');
  });

  it('shows a length in inches and in millimeters', () => {
    const length: CheckRow = {
      ...row,
      unit: 'length',
      published: inches(13 / 16),
      computed: inches(7 / 8),
    };
    expect(written(length)).toEqual({
      published: { in: '13/16 in', mm: '20.64 mm' },
      computed: { in: '7/8', mm: '22.23' },
      difference: { in: '+1/16', mm: '+1.59' },
    });
    expect(written({ ...length, computed: inches(13 / 16) }).difference).toEqual({
      in: '0',
      mm: '0',
    });
  });

  it('shows both ends of a range', () => {
    const range = { from: inches(3), to: inches(12) };
    expect(written({ ...row, unit: 'length', published: range }).published).toEqual({
      in: '3 to 12 in',
      mm: '76.2 to 304.8 mm',
    });
  });
});
