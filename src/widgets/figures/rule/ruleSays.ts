import { formatLength, isRounded } from '../../../core/length/formatLength.ts';
import { type Mm, mm } from '../../../core/length/mm.ts';
import { type RuleReading, buildUp } from '../../../diagrams/rule/buildUp.ts';
import { onTheRule } from '../../../diagrams/rule/describe.ts';
import { type RuleDivision, finestStep, markRanks } from '../../../diagrams/rule/division.ts';
import { type Measuring, placesOf, readingOf } from '../../../diagrams/rule/measuring.ts';

/** A small length with its sign left off, in thousandths of an inch or hundredths of a millimeter. */
function small(length: number, unit: 'in' | 'mm'): string {
  const size = Math.abs(length);
  return unit === 'in' ? `${(size / 25.4).toFixed(3)} in` : `${size.toFixed(2)} mm`;
}

/** A reading as a sum: the last number, then each kind of mark. @example '2 + 1/2 + 1/8' */
export function sumOf(reading: RuleReading, division: RuleDivision): string {
  const parts = reading.parts.map(({ rank, count }) => onTheRule(mm(rank.apart * count), division));
  const number = reading.number > 0 ? [onTheRule(reading.number, division)] : [];
  return [...number, ...parts].join(' + ') || '0';
}

/** Marks past the last number, of how many. @example '23 of 32' */
export function marksOf(reading: RuleReading, division: RuleDivision): string {
  return `${reading.past} of ${markRanks(division)[0]!.every}`;
}

/** The nearest mark to a length, and how far that is off. */
function nearest(length: Mm, division: RuleDivision): string {
  const { length: mark, beyond } = buildUp(length, division);
  const shown = `${onTheRule(mark, division)} ${division.unit}`;
  return Math.abs(beyond) < 1e-6
    ? `${shown}, exactly`
    : `${shown}, ${small(beyond, division.unit)} too ${beyond > 0 ? 'little' : 'much'}`;
}

/** A length on the other system's rule, with the error of rounding it there. */
export function inTheOther(length: Mm, unit: 'in' | 'mm'): string {
  return nearest(
    length,
    unit === 'in' ? { unit: 'mm', step: 0.5 } : { unit: 'in', denominator: 64 },
  );
}

/** Half of a length that lies on a mark, exactly: an odd 64th becomes a 128th. */
export function halfOf(length: Mm, division: RuleDivision): string {
  const { mark, length: onMark } = buildUp(length, division);
  const half = mm(onMark / 2);
  if (division.unit === 'mm') return `${Number(half.toFixed(2))} mm`;
  if (!isRounded(half, { unit: 'in', denominator: 64 })) {
    return `${formatLength(half, { unit: 'in', denominator: 64 })} in`;
  }
  const under = division.denominator * 2;
  const whole = Math.floor(mark / under);
  return `${whole === 0 ? '' : `${whole} `}${mark % under}/${under} in: between two marks of any rule`;
}

/** How much too much or too little the rule shows for where the board starts. */
export function errorOf(measuring: Measuring): string {
  const { start } = placesOf(measuring);
  if (start === 0) return 'none';
  const off = `${onTheRule(mm(Math.abs(start)), finest(measuring.division))} ${measuring.division.unit}`;
  return `${off} too ${start > 0 ? 'much' : 'little'}`;
}

/** Fine enough for what wear takes off. */
function finest(division: RuleDivision): RuleDivision {
  return division.unit === 'in' ? { unit: 'in', denominator: 64 } : { unit: 'mm', step: 0.5 };
}

const WHY: Record<Exclude<Measuring['start'], 'end'>, string> = {
  worn: 'The end of the rule is worn away, and a worn rule shows too much.',
  hook: 'The hook stands off the end, so the rule shows too little.',
  number: 'It was laid at the first number on purpose. Take that number off.',
};

/** What the rule shows, how it builds up, and what the board really measures. */
export function ruleSentence(measuring: Measuring): string {
  // A mixed number keeps to one line.
  return sentenceOf(measuring).replace(/(\d) (\d+\/\d+)/g, '$1\u00a0$2');
}

function sentenceOf(measuring: Measuring): string {
  const { division, length, start } = measuring;
  const { unit } = division;
  const reading = readingOf(measuring);
  const shown = `${onTheRule(reading.length, division)} ${unit}`;
  const sum = sumOf(reading, division);
  const built = reading.parts.length > 1 || (reading.parts.length > 0 && reading.number > 0);
  const kind = reading.rank.name;
  const mark = built ? `${shown}: ${sum}. The last mark is a ${kind}.` : `${shown}, a ${kind}.`;
  const between =
    Math.abs(reading.beyond) > finestStep(division) / 1000
      ? ` The board ends a little ${reading.beyond > 0 ? 'past' : 'short of'} that mark, by ${small(reading.beyond, unit)}; a finer rule would show it.`
      : '';
  if (start === 'end') return `The rule shows ${mark}${between}`;
  const real = `${onTheRule(length, finest(division))} ${unit}`;
  return `The rule shows ${mark}${between} But the board is ${real} long. ${WHY[start]}`;
}
