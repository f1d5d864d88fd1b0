import fc from 'fast-check';
import { render } from 'svelte/server';
import { describe, expect, it, test } from 'vitest';
import { inches, mm } from '../../../src/core/index.ts';
import { arrangeRule } from '../../../src/diagrams/rule/arrange.ts';
import { arrangeBoard } from '../../../src/diagrams/rule/arrangeBoard.ts';
import { buildUp } from '../../../src/diagrams/rule/buildUp.ts';
import { describeMeasuring, describeRule, onTheRule } from '../../../src/diagrams/rule/describe.ts';
import { type RuleDivision, finestStep } from '../../../src/diagrams/rule/division.ts';
import { type MarkedRule, stretchOf, ticksOf } from '../../../src/diagrams/rule/geometry.ts';
import {
  type Measuring,
  type Start,
  placesOf,
  readingOf,
} from '../../../src/diagrams/rule/measuring.ts';
import RuleDrawing from '../../../src/diagrams/rule/RuleDrawing.svelte';
import { labelFaults } from '../../support/labelFaults.ts';

const DIVISIONS: readonly RuleDivision[] = [
  { unit: 'in', denominator: 16 },
  { unit: 'in', denominator: 32 },
  { unit: 'in', denominator: 64 },
  { unit: 'mm', step: 1 },
  { unit: 'mm', step: 0.5 },
];
const STARTS: readonly Start[] = ['end', 'worn', 'hook', 'number'];
const in32 = DIVISIONS[1]!;
const in64 = DIVISIONS[2]!;
const halfMm = DIVISIONS[4]!;

const namesOf = (place: number, division: RuleDivision) =>
  buildUp(mm(place), division).parts.map(({ rank, count }) => `${count} ${rank.name}`);

describe('a reading, built up', () => {
  it('goes from the last number down the kinds of marks', () => {
    expect(namesOf(inches(2 + 23 / 32), in32)).toEqual([
      '1 half',
      '1 eighth',
      '1 sixteenth',
      '1 thirty-second',
    ]);
    expect(namesOf(47.5, halfMm)).toEqual(['1 5 mm mark', '2 millimeter', '1 half millimeter']);
  });

  it('takes the nearest mark and says how far off the place is', () => {
    const { mark, beyond, length } = buildUp(mm(19), in32);
    expect(mark).toBe(24);
    expect(length).toBeCloseTo(19.05, 9);
    expect(beyond).toBeCloseTo(-0.05, 9);
  });

  test('its parts add up to its length, and each begins where the last ended', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...DIVISIONS),
        fc.double({ min: 0, max: 600, noNaN: true }),
        (division, place) => {
          const { parts, number, length, beyond, past, mark } = buildUp(mm(place), division);
          const sum = parts.reduce<number>(
            (total, { rank, count }) => total + rank.apart * count,
            number,
          );
          expect(sum).toBeCloseTo(length, 6);
          expect(length + beyond).toBeCloseTo(place, 6);
          expect(Math.abs(beyond)).toBeLessThanOrEqual(finestStep(division) / 2 + 1e-9);
          expect(past).toBeLessThanOrEqual(mark);
          parts.slice(1).forEach((part, i) => expect(part.from).toBe(parts[i]!.to));
        },
      ),
    );
  });
});

const readingAt = (division: RuleDivision, line: number): MarkedRule => {
  const numbered = division.unit === 'in' ? 25.4 : 10;
  const whole = Math.max(1, Math.floor(line / numbered));
  return {
    division,
    from: mm((whole - 1) * numbered),
    to: mm((whole + 2) * numbered),
    line: mm(line),
  };
};

describe('the stretch that is drawn', () => {
  it('is all of it where the marks can be told apart', () => {
    const { first, last } = stretchOf(readingAt(in64, inches(2.5)), 900);
    expect([first, last]).toEqual([64, 256]);
  });

  it('on a phone keeps the numbers on either side of the line', () => {
    const { first, last, pitch } = stretchOf(readingAt(in64, inches(2 + 63 / 64)), 250);
    expect(first).toBeLessThanOrEqual(128);
    expect(last).toBeGreaterThanOrEqual(192);
    expect(pitch).toBeGreaterThanOrEqual(3);
    const numbers = ticksOf(in64, first, last).flatMap(({ number }) => number ?? []);
    expect(numbers).toEqual(['2', '3']);
  });

  it('gives longer marks to larger parts', () => {
    const ticks = ticksOf(in64, 64, 256);
    const tall = (count: number) => ticks.find((tick) => tick.count === count)!.tall;
    const heights = [128, 160, 144, 136, 132, 130, 129].map(tall);
    expect(heights).toEqual([...heights].sort((a, b) => b - a));
    expect(new Set(heights).size).toBe(7);
  });
});

test.each(DIVISIONS)('$unit $denominator$step: drawn at every width, numbers apart', (division) => {
  const step = finestStep(division);
  for (const width of [280, 320, 480, 640, 960]) {
    for (let mark = 0; mark < 150; mark += 7) {
      const sheet = arrangeRule(readingAt(division, mark * step), width);
      expect(labelFaults(sheet), `${mark} at ${width} px`).toEqual([]);
    }
  }
});

describe('in words', () => {
  const rule = readingAt(in32, inches(2 + 23 / 32));

  it('names the marks that the line stands past, not what it reads', () => {
    const says = describeRule(rule, false);
    expect(says).toBe(
      'A rule in inches with 32 marks to the inch. The line stands past the 2: by one half, then one eighth, then one sixteenth, then one thirty-second.',
    );
    const { body } = render(RuleDrawing, { props: { rule, width: 320 } });
    expect(body).toContain(says);
    expect(body).not.toContain('23/32');
  });

  it('tells the reading in a lesson', () => {
    const { body } = render(RuleDrawing, { props: { rule, width: 320, tells: true } });
    expect(body).toContain('It reads 2 23/32 inches.');
  });

  it('reads between marks', () => {
    expect(describeRule(readingAt(halfMm, 25.1), true)).toContain('a little past that mark');
    expect(onTheRule(mm(25.1), halfMm)).toBe('25');
  });
});

describe('a board on a rule', () => {
  const lay = (start: Start, length: number, division: RuleDivision = in32): Measuring => ({
    division,
    start,
    length: mm(length),
  });

  it('reads too much from a worn end, too little from a hook that stands off', () => {
    const shows = (start: Start) => readingOf(lay(start, inches(2))).length - inches(2);
    expect(shows('end')).toBeCloseTo(0, 9);
    expect(shows('worn')).toBeCloseTo(inches(1 / 32), 6);
    expect(shows('hook')).toBeCloseTo(-inches(1 / 32), 6);
    expect(shows('number')).toBeCloseTo(inches(1), 9);
  });

  it('has its middle halfway between where it starts and where it ends', () => {
    for (const start of STARTS) {
      const { start: from, middle, line } = placesOf(lay(start, 47, halfMm));
      expect(middle - from).toBeCloseTo(23.5, 9);
      expect(line - middle).toBeCloseTo(23.5, 9);
    }
  });

  test.each(DIVISIONS)('$unit $denominator$step: words apart at every width', (division) => {
    for (const width of [280, 320, 480, 640, 820]) {
      for (const start of STARTS) {
        for (const length of [1, 3, 6.35, 18.25, 25, 47.5, 69.05, 101.6, 140]) {
          const found = labelFaults(arrangeBoard(lay(start, length, division), width));
          expect(found, `${length} mm from ${start} at ${width} px`).toEqual([]);
        }
      }
    }
  });

  it('says in words where the board starts and what the rule shows', () => {
    expect(describeMeasuring(lay('worn', inches(1 / 2)))).toContain(
      "It reads 17/32 inch. The rule's end is worn: it begins at 1/32, and the board starts there. It is 1/2 inch long.",
    );
  });
});
