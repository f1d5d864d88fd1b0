import { type LengthUnit, formatWorking, mm } from '../core/index.ts';
import { type CheckRow, differenceOf } from './checkRow.ts';

/** A number as it is shown: the same for everyone, or in the reader's unit. */
export type Written = string | Readonly<Record<LengthUnit, string>>;

/** The numbers of a row as they are shown: the published one with its unit, which the others share. */
export interface WrittenRow {
  readonly published: Written;
  readonly computed: Written;
  /** With its sign. */
  readonly difference: Written;
}

/** Computed values show one decimal more than the published: enough to see how near they come. */
const MORE = 1;

/** Writes a row's numbers; a length in inches and in millimeters. */
export function written(row: CheckRow): WrittenRow {
  const { unit, published, computed } = row;
  const difference = differenceOf(row);
  if (unit === 'length') {
    return {
      published: inBoth((one) => rangeOf(published, (value) => length(value, one)) + ` ${one}`),
      computed: inBoth((one) => length(computed, one)),
      difference: inBoth((one) => signed(difference, (size) => length(size, one))),
    };
  }
  const fixed = (decimals: number) => (value: number) => value.toFixed(decimals);
  return {
    published: `${rangeOf(published, fixed(unit.decimals))} ${unit.name}`,
    computed: computed.toFixed(unit.decimals + MORE),
    difference: signed(difference, fixed(unit.decimals + MORE)),
  };
}

function inBoth(write: (unit: LengthUnit) => string): Written {
  return { in: write('in'), mm: write('mm') };
}

function length(value: number, unit: LengthUnit): string {
  return formatWorking(mm(value), unit);
}

function rangeOf(published: CheckRow['published'], write: (value: number) => string): string {
  if (typeof published === 'number') return write(published);
  return `${write(published.from)} to ${write(published.to)}`;
}

/** A difference with its sign; nothing at all is a plain 0. */
function signed(difference: number, write: (size: number) => string): string {
  const size = write(Math.abs(difference));
  if (Number(size) === 0) return '0';
  return `${difference < 0 ? '−' : '+'}${size}`;
}
