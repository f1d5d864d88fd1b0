import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, mm, parseLength } from '../../../src/core/index.ts';

describe('parseLength', () => {
  it.each([
    ['3/4', 'in', 19.05],
    ['1 1/2', 'in', 38.1],
    ['1-1/2', 'in', 38.1],
    ['1½', 'in', 38.1],
    ['1 ½', 'in', 38.1],
    ['½', 'in', 12.7],
    ['⅞ in', 'mm', 22.225],
    ['3/4"', 'mm', 19.05],
    ['3/4”', 'mm', 19.05],
    ['3/4″', 'mm', 19.05],
    ["3/4''", 'mm', 19.05],
    ['0.75 in', 'mm', 19.05],
    ['.75in', 'mm', 19.05],
    ['0,75 in', 'mm', 19.05],
    ['19mm', 'in', 19],
    ['19 mm', 'in', 19],
    ['19 MM', 'in', 19],
    ['1,5 mm', 'in', 1.5],
    ['19', 'mm', 19],
    ['19.', 'mm', 19],
    ['2', 'in', 50.8],
    ['2 ft 3 1/2 in', 'mm', 698.5],
    ['2\' 3-1/2"', 'mm', 698.5],
    ['2’ 3½”', 'mm', 698.5],
    ['2\'-6"', 'mm', 762],
    ["2' 6", 'mm', 762],
    ['2 feet', 'in', 609.6],
    ['1 foot', 'in', 304.8],
    ['3 inches', 'mm', 76.2],
    ['1 inch', 'mm', 25.4],
    ['3/4 in.', 'mm', 19.05],
    ['2.5 cm', 'in', 25],
    ['1 m', 'in', 1000],
    ['1 m 20 cm', 'in', 1200],
    ['12 millimetres', 'in', 12],
    ['12 millimeters', 'in', 12],
    ['3 / 4', 'in', 19.05],
    ['3⁄4', 'in', 19.05],
    ['  3/4  ', 'in', 19.05],
    ['3/2', 'in', 38.1],
    ['1/2 mm', 'in', 0.5],
    ['0', 'mm', 0],
    ['19 mm', 'mm', 19],
  ] as const)('reads %j in %s as %d mm', (text, unit, length) => {
    expect(parseLength(text, unit)).toEqual({ ok: true, mm: length });
  });

  it.each([
    ['', /nothing is typed/i],
    ['   ', /nothing is typed/i],
    ['abc', /not a length/],
    ['three', /not a length/],
    ['constructor', /not a length/],
    ['in', /no number/],
    ['3/0', /divides by zero/],
    ['1 3/00', /divides by zero/],
    ['-3/4', /negative/],
    ['−3', /negative/],
    ['3 in mm', /two units/],
    ['3 in 4 mm', /two units/],
    ['6" 2\'', /two units/],
    ['19 mm"', /two units/],
    ['3/4/2', /left over/],
    ['3/4 rubbish', /left over/],
    ['3/4 <b>', /left over/],
    ['1e3', /left over/],
    ['1 2', /more than one number/],
    ['1 1/2 1/2', /more than one number/],
    ['1.2.3', /more than one number/],
    ['1.5 1/2', /decimal and a fraction/],
    ['1-', /dash/],
    ['3-4', /more than one number|dash/],
    ['19,050 mm', /two ways/],
    ['101 m', /over 100 m/],
    ['9'.repeat(60), /over 100 m/],
    ['9'.repeat(5000), /too long/],
  ])('refuses %j with a sentence', (text, sentence) => {
    const parsed = parseLength(text, 'in');
    expect(parsed.ok).toBe(false);
    if (parsed.ok) return;
    expect(parsed.reason).toMatch(sentence);
    expect(parsed.reason).toMatch(/[.!]$/);
  });

  it('never throws and never gives a senseless length, whatever is typed', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom(...'0123456789/ .,-\'"½¼inmftc⁄′″ '.split('')) }),
    );
    fc.assert(
      fc.property(text, fc.constantFrom('in' as const, 'mm' as const), (typed, unit) => {
        const parsed = parseLength(typed, unit);
        if (parsed.ok) return parsed.mm >= 0 && parsed.mm <= 100_000;
        return parsed.reason.length > 10;
      }),
      { numRuns: 5000 },
    );
  });

  it('reads back every length that formatLength writes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 6400 }),
        fc.constantFrom(16 as const, 32 as const, 64 as const),
        (parts, denominator) => {
          const length = mm(Math.round((parts / denominator) * 25.4e6) / 1e6);
          const text = formatLength(length, { unit: 'in', denominator });
          const parsed = parseLength(text, 'in');
          return parsed.ok && Math.abs(parsed.mm - length) < 1e-6;
        },
      ),
    );
  });
});
