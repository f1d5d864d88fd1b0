import { formatLength } from '../../core/length/formatLength.ts';
import { type Mm, mm } from '../../core/length/mm.ts';
import { type ReadingPart, type RuleReading, buildUp } from './buildUp.ts';
import type { RuleDivision } from './division.ts';
import type { MarkedRule } from './geometry.ts';
import { type Measuring, type Start, placesOf } from './measuring.ts';

/** A length in the rule's own unit and as fine as its marks, without the unit. */
export function onTheRule(length: Mm, division: RuleDivision): string {
  return division.unit === 'in'
    ? formatLength(length, { unit: 'in', denominator: division.denominator })
    : formatLength(length, { unit: 'mm', step: division.step });
}

/** The same with its unit in words. */
function spokenOnTheRule(length: Mm, division: RuleDivision): string {
  const unit = division.unit === 'in' ? 'inch' : 'millimeter';
  const one = length <= (division.unit === 'in' ? 25.4 : 1) + 1e-6;
  return `${onTheRule(length, division)} ${unit}${one ? '' : division.unit === 'in' ? 'es' : 's'}`;
}

/** What the finest marks of a rule are. */
export function divisionText(division: RuleDivision): string {
  return division.unit === 'in'
    ? `a rule in inches with ${division.denominator} marks to the inch`
    : `a rule in millimeters with a mark at each ${division.step === 1 ? 'millimeter' : 'half millimeter'}`;
}

function stepText({ rank, count }: ReadingPart): string {
  return count === 1 ? `one ${rank.name}` : `${count} marks of one ${rank.name} each`;
}

/** The marks from the last number to the line, as the eye finds them; the longest first. */
function wayText(reading: RuleReading, division: RuleDivision): string {
  const from = onTheRule(reading.number, division);
  const between =
    reading.beyond > 1e-6
      ? ' It stands a little past that mark.'
      : reading.beyond < -1e-6
        ? ' It stands a little short of that mark.'
        : '';
  return reading.parts.length === 0
    ? `The line meets the ${from}.${between}`
    : `The line stands past the ${from}: by ${reading.parts.map(stepText).join(', then ')}.${between}`;
}

/**
 * The drawing in sentences: which marks the line stands past, so that whoever can't see it has
 * the same to work out.
 * @param tells whether what it reads is said too
 */
export function describeRule(rule: MarkedRule, tells: boolean): string {
  const { division, line } = rule;
  const reading = buildUp(line, division);
  const reads = tells ? ` It reads ${spokenOnTheRule(reading.length, division)}.` : '';
  const kind = divisionText(division);
  return `${kind[0]!.toUpperCase()}${kind.slice(1)}. ${wayText(reading, division)}${reads}`;
}

const STARTS: Record<Start, (off: string) => string> = {
  end: () => "The board starts at the rule's end.",
  worn: (off) => `The rule's end is worn: it begins at ${off}, and the board starts there.`,
  hook: (off) => `The board starts at a hook that stands off the rule's end by ${off}.`,
  number: (off) => `The board starts at the number ${off}.`,
};

/** A board on a rule in sentences: where it starts, where it ends and what the rule shows there. */
export function describeMeasuring(measuring: Measuring): string {
  const { division, length, start } = measuring;
  const places = placesOf(measuring);
  const off = onTheRule(mm(Math.abs(places.start)), division);
  const rule = { division, from: places.steel, to: places.line, line: places.line };
  return `${describeRule(rule, true)} ${STARTS[start](off)} It is ${spokenOnTheRule(length, division)} long. A longer board ends farther along the rule.`;
}
