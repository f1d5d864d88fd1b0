import Fraction from 'fraction.js';
import { type Mm, mm } from './mm.ts';

/** A unit that a length may be read or written in. */
export type LengthUnit = 'in' | 'mm';

/** What `parseLength` made of a text: a length, or a sentence to show beside the field. */
export type ParsedLength =
  { readonly ok: true; readonly mm: Mm } | { readonly ok: false; readonly reason: string };

type UnitName = 'in' | 'ft' | 'mm' | 'cm' | 'm';

const MM_PER_UNIT: Record<UnitName, Fraction> = {
  in: new Fraction('25.4'),
  ft: new Fraction('304.8'),
  mm: new Fraction(1),
  cm: new Fraction(10),
  m: new Fraction(1000),
};

const UNIT_SPELLINGS: Record<string, UnitName> = {
  '"': 'in',
  in: 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  mm: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  cm: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  m: 'm',
  meter: 'm',
  meters: 'm',
  metre: 'm',
  metres: 'm',
};

const VULGAR_FRACTIONS: Record<string, string> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅐': '1/7',
  '⅑': '1/9',
  '⅒': '1/10',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Longest length that is taken for a board: 100 m. */
const LONGEST_MM = 100_000;
/** No length worth reading needs more characters; a pasted page is refused before it is read. */
const LONGEST_TEXT = 80;

/**
 * The many ways to type a fraction, a quote, a minus or a blank, as one way, in plain characters.
 * It means the same length.
 * @example plainLength('1½″') // '1 1/2"'
 */
export function plainLength(text: string): string {
  return text
    .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${VULGAR_FRACTIONS[sign] ?? sign} `)
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[⁄∕]/g, '/')
    .replace(/[″“”„‟〃]|''|’’|′′/g, '"')
    .replace(/[′‘’‚‛`´]/g, "'")
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/\s*\/\s*/g, '/')
    .replace(/\s+/g, ' ')
    .trim();
}

type Token =
  | { readonly type: 'number'; readonly text: string }
  | { readonly type: 'fraction'; readonly over: string; readonly under: string }
  | { readonly type: 'unit'; readonly unit: UnitName; readonly text: string }
  | { readonly type: 'hyphen' };

/** One piece of a length at a time; what doesn't fit comes last, in `rest`. */
const TOKEN =
  /^\s*(?:(?<over>\d+)\/(?<under>\d+)|(?<number>\d+(?:[.,]\d*)?|[.,]\d+)|(?<unit>"|'|[a-z]+\.?)|(?<hyphen>-))(?<rest>.*)$/u;

function refused(reason: string): ParsedLength {
  return { ok: false, reason };
}

function tokens(text: string): Token[] | { readonly stoppedAt: string } {
  const found: Token[] = [];
  let rest = text;
  while (rest.trim() !== '') {
    const groups = TOKEN.exec(rest)?.groups;
    if (!groups) return { stoppedAt: rest.trim() };
    if (groups['over'] !== undefined && groups['under'] !== undefined) {
      found.push({ type: 'fraction', over: groups['over'], under: groups['under'] });
    } else if (groups['number'] !== undefined) {
      found.push({ type: 'number', text: groups['number'] });
    } else if (groups['unit'] !== undefined) {
      const word = groups['unit'].replace(/\.$/, '');
      const unit = Object.hasOwn(UNIT_SPELLINGS, word) ? UNIT_SPELLINGS[word] : undefined;
      if (!unit) return { stoppedAt: rest.trim() };
      found.push({ type: 'unit', unit, text: groups['unit'] });
    } else {
      found.push({ type: 'hyphen' });
    }
    rest = groups['rest'] ?? '';
  }
  return found;
}

/** One quantity with its unit, if it was given one. */
interface Part {
  readonly value: Fraction;
  readonly unit: UnitName | undefined;
}

const HOW_TO_TYPE = 'Type a length such as 3/4, 1 1/2, 0.75 in or 19 mm.';

/** Reads quantities such as `3 1/2 in` off the tokens, or says in a sentence why it can't. */
function parts(list: readonly Token[], shown: string): Part[] | string {
  const found: Part[] = [];
  let i = 0;
  while (i < list.length) {
    let token = list[i];
    // A hyphen between feet and inches (2'-6") joins them; anywhere else it is out of place.
    if (token?.type === 'hyphen' && found.at(-1)?.unit === 'ft') token = list[++i];
    let value: Fraction;
    if (token?.type === 'number') {
      const whole = token.text;
      if (/^[1-9]\d{0,2},\d{3}$/.test(whole)) {
        const [left, right] = whole.split(',');
        return `“${whole}” can be read two ways. Type ${left}${right} or ${left}.${right}.`;
      }
      value = new Fraction(`0${whole.replace(',', '.').replace(/\.$/, '')}`);
      i += 1;
      // 1 1/2 and 1-1/2: a whole number and a fraction make one quantity.
      const joined = list[i]?.type === 'hyphen' ? i + 1 : i;
      const next = list[joined];
      if (next?.type === 'fraction') {
        if (/[.,]/.test(whole)) {
          return `“${shown}” mixes a decimal and a fraction. Type 1.5 or 1 1/2.`;
        }
        if (isZero(next.under)) return zeroDenominator(next);
        value = value.add(new Fraction(`${next.over}/${next.under}`));
        i = joined + 1;
      }
    } else if (token?.type === 'fraction') {
      if (isZero(token.under)) return zeroDenominator(token);
      value = new Fraction(`${token.over}/${token.under}`);
      i += 1;
    } else if (token?.type === 'unit') {
      return found.length === 0
        ? `“${shown}” has a unit but no number. ${HOW_TO_TYPE}`
        : `“${shown}” has two units for one number. Keep one of them.`;
    } else {
      return `“${shown}” has a dash where a number should be. ${HOW_TO_TYPE}`;
    }
    const after = list[i];
    if (after?.type === 'unit') {
      found.push({ value, unit: after.unit });
      i += 1;
    } else {
      found.push({ value, unit: undefined });
    }
  }
  return found;
}

function isZero(digits: string): boolean {
  return /^0+$/.test(digits);
}

function zeroDenominator(fraction: { over: string; under: string }): string {
  return `${fraction.over}/${fraction.under} divides by zero. Check the number under the line.`;
}

/** Which units may follow which in one length: 2 ft 3 in, 1 m 20 cm 5 mm. */
const NEXT_SMALLER: Record<UnitName, readonly UnitName[]> = {
  ft: ['in'],
  in: [],
  m: ['cm', 'mm'],
  cm: ['mm'],
  mm: [],
};

/**
 * Reads a length as people type it: `3/4`, `1-1/2`, `1½`, `0.75 in`, `19mm`, `1,5 mm`,
 * `2' 3-1/2"`. Never throws, whatever the text.
 *
 * @param text what was typed
 * @param unit the unit meant where the text names none
 * @returns the exact length in mm (0 to 100 m), or a sentence that says what to type instead
 * @example parseLength('1 1/2', 'in') // { ok: true, mm: 38.1 }
 */
export function parseLength(text: string, unit: LengthUnit): ParsedLength {
  if (text.trim() === '') return refused(`Nothing is typed here. ${HOW_TO_TYPE}`);
  if (text.length > LONGEST_TEXT) return refused(`That is too long for a length. ${HOW_TO_TYPE}`);
  const typed = plainLength(text);
  const shown = text.trim();
  if (/^-/.test(typed)) {
    return refused(`A length can't be negative. Type it without the minus sign.`);
  }
  const list = tokens(typed);
  if (!Array.isArray(list)) {
    return list.stoppedAt === typed
      ? refused(`“${shown}” is not a length. ${HOW_TO_TYPE}`)
      : refused(`“${list.stoppedAt}” is left over in “${shown}”. ${HOW_TO_TYPE}`);
  }
  const found = parts(list, shown);
  if (typeof found === 'string') return refused(found);

  let total = new Fraction(0);
  let before: UnitName | undefined;
  for (const [i, part] of found.entries()) {
    // A bare number after feet is inches (2' 3); alone, it is in the assumed unit.
    const own = part.unit ?? (i === 0 ? unit : before === 'ft' ? 'in' : undefined);
    if (own === undefined || (i > 0 && part.unit === undefined && before !== 'ft')) {
      return refused(`“${shown}” has more than one number. ${HOW_TO_TYPE}`);
    }
    if (i > 0 && found[i - 1]?.unit === undefined) {
      return refused(`“${shown}” has more than one number. ${HOW_TO_TYPE}`);
    }
    if (before !== undefined && !NEXT_SMALLER[before].includes(own)) {
      return refused(`“${shown}” has two units that don't go together. Keep one of them.`);
    }
    total = total.add(part.value.mul(MM_PER_UNIT[own]));
    before = own;
  }
  if (total.compare(LONGEST_MM) > 0) {
    return refused(`“${shown}” is over 100 m. Check the number and its unit.`);
  }
  return { ok: true, mm: mm(total.valueOf()) };
}
