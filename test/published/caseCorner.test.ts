import { describe, expect, it } from 'vitest';
import { caseCornerRows } from './rows/caseCorner.ts';

describe('Zhang and Eckelman 1993, case corner of particleboard (read in the abstract)', () => {
  it.each(caseCornerRows)('$what: $published $unit', ({ published, tolerance, compute }) => {
    expect(Math.abs(compute() - published)).toBeLessThanOrEqual(tolerance);
  });
});
