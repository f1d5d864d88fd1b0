import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csv } from '../../src/class/csv.ts';

describe('csv', () => {
  it('follows RFC 4180: CR LF at each line’s end, quotes doubled, a mark that says UTF-8', () => {
    expect(
      csv([
        ['Bench', 'Says'],
        ['1', 'a "b", c'],
        ['2', 'two\nlines'],
      ]),
    ).toBe('\uFEFFBench,Says\r\n1,"a ""b"", c"\r\n2,"two\nlines"\r\n');
  });

  it('makes a formula inert and leaves numbers alone', () => {
    const hostile = ['=1+1', '+cmd', '-2+3', '@SUM(A1)', '\t=1', '-7', '-0.5', '12'];
    const [row] = csvParseRows(csv([hostile]).slice(1));
    expect(row!.slice(0, 5).every((cell) => cell.startsWith("'"))).toBe(true);
    expect(row!.slice(5)).toEqual(['-7', '-0.5', '12']);
  });

  it('can be read back, whatever is in it', () => {
    const cells = fc.array(fc.array(fc.string(), { minLength: 2, maxLength: 4 }), { minLength: 1 });
    fc.assert(
      fc.property(cells, (rows) => {
        const width = rows[0]!.length;
        const even = rows.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? ''));
        const back = csvParseRows(csv(even).slice(1));
        expect(back).toHaveLength(even.length);
        back.forEach((row, i) =>
          row.forEach((cell, j) =>
            expect(cell.replace(/^'/, '')).toBe(even[i]![j]!.replace(/^'/, '')),
          ),
        );
      }),
    );
  });
});
