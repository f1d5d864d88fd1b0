import { csvFormatRow } from 'd3-dsv';

/** What a spreadsheet takes for the beginning of a formula, blanks before it and wide signs included. */
const FORMULA = /^[\t\r\n]|^\s*[=+\-@＝＋－＠]/;

/**
 * Rows as a file of comma-separated values (RFC 4180): lines end with CR LF, and a byte order mark
 * tells spreadsheets that it is UTF-8. A cell that a spreadsheet would run as a formula gets an
 * apostrophe in front; a plain number, negative ones too, stays a number.
 */
export function csv(rows: readonly (readonly string[])[]): string {
  const lines = rows.map((row) => csvFormatRow(row.map(inert)));
  return `\uFEFF${lines.map((line) => `${line}\r\n`).join('')}`;
}

function inert(cell: string): string {
  const isNumber = /^-\d+(\.\d+)?$/.test(cell);
  return FORMULA.test(cell) && !isNumber ? `'${cell}` : cell;
}
