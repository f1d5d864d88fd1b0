import { describe, expect, it, test } from 'vitest';
import { formatQuantity } from '../../../src/core/working/formatQuantity.ts';
import type { WorkingUnit } from '../../../src/core/working/types.ts';

describe('a number with its unit', () => {
  test.each<[number, WorkingUnit, string, string]>([
    [19.05, 'length', '3/4 in', '≈19 mm'],
    [9.425, 'caliper', '0.371 in', '9.43 mm'],
    [9.525, 'caliper', '3/8 in', '9.53 mm'],
    [9.525, 'inches', '3/8 in', '3/8 in'],
    [9.5, 'millimeters', '9.5 mm', '9.5 mm'],
    [0.1, 'fine', '3.9 thousandths', '100 µm'],
    [-0.375, 'fine', '−14.8 thousandths', '−375 µm'],
    [0.5, 'area', '0.00078 in²', '0.5 mm²'],
    [312.4, 'volume', '0.31 ml', '0.31 ml'],
    [1000, 'force', '225 lb', '1000 N'],
    [17_100, 'force', '3844 lb', '17,100 N'],
    [15, 'moment', '133 lb·in', '15 N·m'],
    [1, 'pressure', '145 psi', '1 MPa'],
    [20, 'temperature', '68 °F', '20 °C'],
    [-5, 'temperature', '23 °F', '−5 °C'],
    [118, 'degrees', '118°', '118°'],
    [9.16, 'percent', '9.2 %', '9.2 %'],
    [0.634, 'probability', '63 %', '63 %'],
    [0.9996, 'probability', 'over 99 %', 'over 99 %'],
    [0.002, 'probability', 'under 1 %', 'under 1 %'],
    [1, 'probability', '100 %', '100 %'],
    [0, 'probability', '0 %', '0 %'],
    [5, 'count', '5', '5'],
    [1 / 3, 'ratio', '0.33', '0.33'],
  ])('%d as %s', (value, unit, inInches, metric) => {
    expect(formatQuantity(value, unit, 'in')).toBe(inInches);
    expect(formatQuantity(value, unit, 'mm')).toBe(metric);
  });

  it('has no sign where it rounds to nothing', () => {
    expect(formatQuantity(-0.0001, 'fine', 'mm')).toBe('0 µm');
  });
});
