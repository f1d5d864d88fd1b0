import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  formatLength,
  formatReadable,
  formatWorking,
  inches,
  isRounded,
  mm,
  spokenLength,
} from '../../../src/core/index.ts';

describe('formatLength', () => {
  it.each([
    [34.925, { unit: 'in', denominator: 16 }, '1 3/8'],
    [19.05, { unit: 'in', denominator: 64 }, '3/4'],
    [0.75 * 25.4, { unit: 'in', denominator: 64 }, '3/4'],
    [50.8, { unit: 'in', denominator: 16 }, '2'],
    [0, { unit: 'in', denominator: 16 }, '0'],
    [-3.175, { unit: 'in', denominator: 16 }, '-1/8'],
    [-0.01, { unit: 'in', denominator: 16 }, '0'],
    [34.925, { unit: 'mm', step: 0.1 }, '34.9'],
    [34.925, { unit: 'mm', step: 0.5 }, '35'],
    [34.925, { unit: 'mm', step: 1 }, '35'],
    [-0.01, { unit: 'mm', step: 0.5 }, '0'],
    [38, { unit: 'mm', step: 0.1 }, '38'],
  ] as const)('writes %d mm as %j: %s', (length, format, text) => {
    expect(formatLength(mm(length), format)).toBe(text);
  });

  it('rounds a tie to the even step', () => {
    const sixteenths = { unit: 'in', denominator: 16 } as const;
    expect(formatLength(inches(1 / 32), sixteenths)).toBe('0');
    expect(formatLength(inches(3 / 32), sixteenths)).toBe('1/8');
    expect(formatLength(mm(0.5), { unit: 'mm', step: 1 })).toBe('0');
    expect(formatLength(mm(1.5), { unit: 'mm', step: 1 })).toBe('2');
    expect(formatLength(mm(0.25), { unit: 'mm', step: 0.1 })).toBe('0.2');
    expect(formatLength(mm(0.35), { unit: 'mm', step: 0.1 })).toBe('0.4');
  });

  it('agrees with a library of exact fractions (fraction.js)', () => {
    const digits = fc.integer({ min: -3_000_000, max: 3_000_000 });
    fc.assert(
      fc.property(
        digits,
        fc.constantFrom(16, 32, 64),
        fc.integer({ min: 0, max: 128 }),
        (...at) => {
          const [thousandths, denominator, parts] = at;
          const length = thousandths / 1000;
          const count = new Fraction(thousandths, 1000).div('25.4').mul(denominator);
          const written = formatLength(mm(length), { unit: 'in', denominator });
          const read = written.split(' ').reduce((sum, part) => sum.add(part), new Fraction(0));
          const [whole = '', over] = written.split(' ');
          const value = over && whole.startsWith('-') ? new Fraction(whole).sub(over) : read;
          expect(value.mul(denominator).sub(count).abs().compare('1/2')).toBeLessThanOrEqual(0);
          // What is a whole number of divisions is written as just that.
          const exactly = new Fraction(parts, denominator);
          expect(formatLength(inches(exactly.valueOf()), { unit: 'in', denominator })).toBe(
            exactly.toFraction(true),
          );
        },
      ),
    );
  });

  it('is never off by more than half a step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3000, noNaN: true }), (length) => {
        const written = Number(formatLength(mm(length), { unit: 'mm', step: 0.1 }));
        return Math.abs(written - length) <= 0.05 + 1e-9;
      }),
    );
  });

  it('throws for a number that is no length, which only a program can pass', () => {
    expect(() => formatLength(mm(NaN), { unit: 'mm', step: 1 })).toThrow(TypeError);
    expect(() => formatLength(mm(Infinity), { unit: 'mm', step: 1 })).toThrow(/finite/);
  });
});

describe('lengths for reading', () => {
  it('marks a rounded length and leaves an exact one unmarked', () => {
    expect(formatReadable(mm(12.7), 'in')).toBe('1/2');
    expect(formatReadable(mm(12.21), 'in')).toBe('≈31/64');
    expect(formatReadable(mm(12.21), 'mm')).toBe('≈12.2');
    expect(isRounded(mm(12.7), { unit: 'in', denominator: 16 })).toBe(false);
    expect(isRounded(mm(12), { unit: 'in', denominator: 64 })).toBe(true);
  });

  it('writes a length finer where a 64th would hide it', () => {
    expect(formatReadable(mm(0.2), 'in')).toBe('≈0.008');
    expect(formatReadable(mm(0.04), 'mm')).toBe('≈0.04');
  });

  it('keeps thousandths in a working unless the length is a 64th', () => {
    expect(formatWorking(mm(2.8616), 'in')).toBe('0.113');
    expect(formatWorking(inches(1 / 8), 'in')).toBe('1/8');
    expect(formatWorking(mm(2.8616), 'mm')).toBe('2.86');
  });

  it('speaks a length in words', () => {
    expect(spokenLength(inches(1 / 2), 'in')).toBe('1/2 inch');
    expect(spokenLength(inches(1.5), 'in')).toBe('1 1/2 inches');
    expect(spokenLength(mm(0), 'in')).toBe('0 inches');
    expect(spokenLength(mm(1), 'mm')).toBe('1 millimeter');
    expect(spokenLength(mm(12.21), 'mm')).toBe('about 12.2 millimeters');
  });
});
