import type { LengthUnit } from '../length/parseLength.ts';
import { formatWorking } from '../length/formatLength.ts';
import { mm } from '../length/mm.ts';
import type { Expression } from './expression.ts';
import { formatQuantity, inUnit } from './formatQuantity.ts';
import { isMeasured, lengthUnit } from './lengthUnit.ts';
import type { WorkingStep, WorkingUnit } from './types.ts';

/** How a formula is written: in its symbols, or with the numbers put in, in the reader's unit. */
export interface MathStyle {
  readonly show: 'symbols' | 'values';
  readonly unit: LengthUnit;
}

function escaped(text: string): string {
  return text.replace(/[<&>"]/g, (sign) => `&#${sign.codePointAt(0)};`);
}

function word(text: string): string {
  return /^\S+$/.test(text) ? `<mi>${escaped(text)}</mi>` : `<mtext>${escaped(text)}</mtext>`;
}

function operator(sign: string): string {
  return `<mo>${sign}</mo>`;
}

function row(...items: readonly string[]): string {
  return `<mrow>${items.join('')}</mrow>`;
}

function bracketed(inner: string): string {
  return row(operator('('), inner, operator(')'));
}

/** A symbol such as 'e_B': what follows the underscore stands below the line. */
function symbolMathML(symbol: string): string {
  const [main = '', below] = symbol.split('_');
  return below === undefined ? word(main) : `<msub>${word(main)}${word(below)}</msub>`;
}

/** The digits of a number in the reader's unit. */
function sizeText(value: number, unit: WorkingUnit, reader: LengthUnit): string {
  if (isMeasured(unit)) return formatWorking(mm(value), lengthUnit(unit, reader));
  const { value: shown, decimals } = inUnit(value, unit, reader);
  return String(Number(shown.toFixed(decimals)));
}

/** A number as a learner writes it: 1 1/2 as a fraction, a negative one with a true minus. */
function numberMathML(value: number, unit: WorkingUnit, reader: LengthUnit): string {
  const text = sizeText(Math.abs(value), unit, reader);
  const [, whole, over, under] = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text) ?? [];
  const fraction = `<mfrac><mn>${over}</mn><mn>${under}</mn></mfrac>`;
  const size =
    over === undefined
      ? `<mn>${text}</mn>`
      : whole === undefined
        ? fraction
        : row(`<mn>${whole}</mn>`, fraction);
  const degrees = unit === 'degrees' ? row(size, operator('°')) : size;
  return value < 0 && !/^0(\.0+)?$/.test(text) ? row(operator('−'), degrees) : degrees;
}

const SIGNS = { sum: '+', difference: '−', product: '×' } as const;
const NAMES = { least: 'smaller of', greatest: 'greater of' } as const;

/** An operand, in brackets where the operation around it would tear it apart. */
function operand(formula: Expression, style: MathStyle, around: Expression['op']): string {
  const inner = expressionMathML(formula, style);
  const loose = formula.op === 'sum' || formula.op === 'difference';
  const negative =
    style.show === 'values' &&
    formula.op === 'quantity' &&
    formula.value < 0 &&
    around !== 'quotient';
  return negative || (loose && (around === 'product' || around === 'difference'))
    ? bracketed(inner)
    : inner;
}

/**
 * A quotient as a fraction. Where one of its numbers is a fraction itself, two bars would look
 * alike, so it is written with a sign: 3/4 ÷ 2.
 */
function quotientMathML(of: readonly Expression[], style: MathStyle): string {
  const given = ({ op }: Expression) => op === 'constant' || op === 'quantity';
  const broken = of.some(
    (each) => given(each) && expressionMathML(each, style).includes('<mfrac>'),
  );
  if (!broken) {
    return `<mfrac>${of.map((each) => operand(each, style, 'quotient')).join('')}</mfrac>`;
  }
  const parts = of.map((each, i) =>
    i === 0 || given(each)
      ? operand(each, style, 'product')
      : bracketed(expressionMathML(each, style)),
  );
  return row(parts.join(operator('÷')));
}

function expressionMathML(formula: Expression, style: MathStyle): string {
  switch (formula.op) {
    case 'constant':
      return numberMathML(formula.value, formula.unit, style.unit);
    case 'quantity':
      return style.show === 'symbols'
        ? symbolMathML(formula.symbol)
        : numberMathML(formula.value, formula.unit, style.unit);
    case 'sum':
    case 'difference':
    case 'product': {
      const sign = operator(SIGNS[formula.op]);
      return row(
        ...formula.of.flatMap((each, i) => {
          // The first of a difference is never torn apart by what is taken from it.
          const around = formula.op === 'difference' && i === 0 ? 'sum' : formula.op;
          const inner = operand(each, style, around);
          return i === 0 ? [inner] : [sign, inner];
        }),
      );
    }
    case 'quotient':
      return quotientMathML(formula.of, style);
    case 'least':
    case 'greatest':
      return row(
        `<mtext>${NAMES[formula.op]}</mtext>`,
        bracketed(formula.of.map((each) => expressionMathML(each, style)).join(operator(';'))),
      );
    case 'root':
      return `<msqrt>${expressionMathML(formula.of[0], style)}</msqrt>`;
    case 'power':
      return `<msup>${bracketed(expressionMathML(formula.of[0], style))}${expressionMathML(formula.of[1], style)}</msup>`;
    case 'tangent':
      return row('<mi>tan</mi>', bracketed(expressionMathML(formula.of[0], style)));
    case 'roundUp':
      return row(operator('⌈'), expressionMathML(formula.of[0], style), operator('⌉'));
    case 'size':
      return row(operator('|'), expressionMathML(formula.of[0], style), operator('|'));
  }
}

/** The sign that stands after a result; degrees have theirs on the number. */
function signOf(unit: WorkingUnit, reader: LengthUnit): string {
  if (isMeasured(unit)) return lengthUnit(unit, reader);
  return unit === 'degrees' ? '' : inUnit(0, unit, reader).sign;
}

/** A result with its unit, as MathML inside `<math>`; a volume also in milliliters. */
function resultMathML(step: WorkingStep, unit: LengthUnit): string {
  const sign = signOf(step.unit, unit);
  const value = numberMathML(step.result, step.unit, unit);
  const shown = sign === '' ? value : row(value, measureSign(sign));
  if (step.unit !== 'volume') return shown;
  return row(shown, operator('='), measure(formatQuantity(step.result, 'volume', unit)));
}

function measureSign(sign: string): string {
  return `<mspace width="0.25em"/><mtext>${sign}</mtext>`;
}

/** A number with its sign, as `formatQuantity` writes it. */
function measure(text: string): string {
  const [value = '', sign = ''] = text.split(' ');
  return row(`<mn>${value}</mn>`, measureSign(sign));
}

/**
 * A formula as a MathML element, in symbols or with its numbers put in.
 * @example toMathML(step.formula, { show: 'symbols', unit: 'in' })
 */
export function toMathML(formula: Expression, style: MathStyle): string {
  return `<math>${expressionMathML(formula, style)}</math>`;
}

/** True where a step says no more than its value: a setting, or a number of a rule. */
function isGiven(formula: Expression): boolean {
  return formula.op === 'constant' || formula.op === 'quantity';
}

/**
 * The lines of one step, each a MathML element: the formula in symbols, the same with the numbers
 * put in, and the result with its unit in the reader's. A given value is one line.
 */
export function stepMathML(step: WorkingStep, unit: LengthUnit): readonly string[] {
  const left = symbolMathML(step.symbol);
  const equals = operator('=');
  const result = resultMathML(step, unit);
  if (isGiven(step.formula)) {
    const inSymbols =
      step.formula.op === 'quantity' && step.formula.symbol !== step.symbol
        ? row(symbolMathML(step.formula.symbol), equals)
        : '';
    return [`<math>${row(left, equals, inSymbols, result)}</math>`];
  }
  return [
    `<math>${row(left, equals, expressionMathML(step.formula, { show: 'symbols', unit }))}</math>`,
    `<math>${row(equals, expressionMathML(step.formula, { show: 'values', unit }))}</math>`,
    `<math>${row(equals, result)}</math>`,
  ];
}
