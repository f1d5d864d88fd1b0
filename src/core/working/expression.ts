import type { WorkingUnit } from './types.ts';

/**
 * A formula that can be both worked out and written down. Lengths are millimeters; a constant
 * without a unit is a pure number.
 */
export type Expression =
  | { readonly op: 'constant'; readonly value: number; readonly unit: WorkingUnit }
  | {
      readonly op: 'quantity';
      readonly symbol: string;
      readonly value: number;
      readonly unit: WorkingUnit;
    }
  | {
      readonly op: 'sum' | 'difference' | 'product' | 'quotient' | 'least' | 'greatest';
      readonly of: readonly Expression[];
    }
  | {
      readonly op: 'root' | 'tangent' | 'roundUp' | 'size';
      readonly of: readonly [Expression];
    }
  | { readonly op: 'power'; readonly of: readonly [base: Expression, exponent: Expression] };

type Operand = Expression | number;

function expression(operand: Operand): Expression {
  return typeof operand === 'number' ? { op: 'constant', value: operand, unit: 'ratio' } : operand;
}

/** A named quantity: shown as `symbol`, or as its value where numbers are put in. */
export function quantity(symbol: string, value: number, unit: WorkingUnit = 'length'): Expression {
  return { op: 'quantity', symbol, value, unit };
}

/** A fixed length of a rule, in mm, shown as a length in either form. */
export function fixedLength(value: number): Expression {
  return { op: 'constant', value, unit: 'length' };
}

export function sum(...of: readonly Operand[]): Expression {
  return { op: 'sum', of: of.map(expression) };
}

/** The first operand less all the others. */
export function difference(...of: readonly Operand[]): Expression {
  return { op: 'difference', of: of.map(expression) };
}

export function product(...of: readonly Operand[]): Expression {
  return { op: 'product', of: of.map(expression) };
}

export function quotient(over: Operand, under: Operand): Expression {
  return { op: 'quotient', of: [expression(over), expression(under)] };
}

export function least(...of: readonly Operand[]): Expression {
  return { op: 'least', of: of.map(expression) };
}

export function greatest(...of: readonly Operand[]): Expression {
  return { op: 'greatest', of: of.map(expression) };
}

export function root(of: Operand): Expression {
  return { op: 'root', of: [expression(of)] };
}

/** A pure number raised to a fixed power. */
export function power(base: Operand, exponent: number): Expression {
  return { op: 'power', of: [expression(base), expression(exponent)] };
}

/** The tangent of an angle in degrees. */
export function tangent(of: Operand): Expression {
  return { op: 'tangent', of: [expression(of)] };
}

/** Rounded up to a whole number, but for a billionth of noise. */
export function roundUp(of: Operand): Expression {
  return { op: 'roundUp', of: [expression(of)] };
}

/** The size of a number without its sign. */
export function size(of: Operand): Expression {
  return { op: 'size', of: [expression(of)] };
}

/** The value of a formula. @example evaluate(sum(1, 2)) // 3 */
export function evaluate(formula: Expression): number {
  switch (formula.op) {
    case 'constant':
    case 'quantity':
      return formula.value;
    case 'root':
      return Math.sqrt(evaluate(formula.of[0]));
    case 'tangent':
      return Math.tan((evaluate(formula.of[0]) * Math.PI) / 180);
    case 'roundUp':
      return Math.ceil(evaluate(formula.of[0]) - 1e-9);
    case 'size':
      return Math.abs(evaluate(formula.of[0]));
    case 'power':
      return evaluate(formula.of[0]) ** evaluate(formula.of[1]);
  }
  const values = formula.of.map(evaluate);
  switch (formula.op) {
    case 'sum':
      return values.reduce((total, value) => total + value, 0);
    case 'difference':
      return values.slice(1).reduce((rest, value) => rest - value, values[0] ?? 0);
    case 'product':
      return values.reduce((total, value) => total * value, 1);
    case 'quotient':
      return (values[0] ?? 0) / (values[1] ?? 1);
    case 'least':
      return Math.min(...values);
    case 'greatest':
      return Math.max(...values);
  }
}
