import { describe, expect, it } from 'vitest';
import { equilibriumMoistureRows } from './rows/equilibriumMoisture.ts';
import { movementRows } from './rows/movement.ts';

describe('Wood Handbook, FPL-GTR-190, Table 4-2, the shared half of its cells (read)', () => {
  it('holds 114 cells', () => {
    expect(equilibriumMoistureRows).toHaveLength(114);
  });
  it.each(equilibriumMoistureRows)('$what: $published %', ({ published, tolerance, compute }) => {
    expect(Math.abs(compute() - published)).toBeLessThanOrEqual(tolerance);
  });
});

describe('Wood Handbook, FPL-GTR-190, Eq. 13-2 and Tables 4-3 and 13-5 (read)', () => {
  it.each(movementRows)('$what: $published', ({ published, tolerance, compute }) => {
    expect(Math.abs(compute() - published)).toBeLessThanOrEqual(tolerance);
  });
});
