import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { planJoint } from '../../../src/core/index.ts';
import { inches, mm } from '../../../src/core/length/mm.ts';
import { parseLength } from '../../../src/core/length/parseLength.ts';
import { formatReading } from '../../../src/core/tools/formatReading.ts';
import { listOfLengths } from '../../../src/core/tools/listOfLengths.ts';
import { countFits, nearlyAll, summarize } from '../../../src/core/tools/readings.ts';
import {
  isUnmeasured,
  measuredTools,
  readingsOf,
  unmeasured,
} from '../../../src/core/tools/toolSet.ts';
import { turnOverOffset } from '../../../src/core/tools/turnOver.ts';
import { type BenchSetup, drill, soundSetup } from '../../../src/core/trial/drill.ts';
import { ordinaryJoint } from '../../support/joints.ts';

describe('turnOverOffset', () => {
  it('is half the distance, away from the face that the guide is on where the first hole lies farther', () => {
    expect(turnOverOffset(mm(1), 'first')).toBe(0.5);
    expect(turnOverOffset(mm(1), 'second')).toBe(-0.5);
    expect(turnOverOffset(mm(0), 'second')).toBe(0);
  });

  it('finds the offset that the drilled holes were given, whatever the board', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 12, max: 40, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (thickness, offset) => {
          const plan = planJoint(ordinaryJoint('edge', 'mm', mm(thickness)));
          fc.pre(plan.ok);
          const sound = soundSetup(plan);
          const acrossWith = (face: 'reference' | 'other'): number => {
            const setup: BenchSetup = {
              ...sound,
              guide: { ...sound.guide, offset: mm(offset) },
              a: { ...sound.a, face },
            };
            return drill(setup).pins[0]!.a.across;
          };
          const [first, second] = [acrossWith('reference'), acrossWith('other')];
          const farther = first > second ? 'first' : 'second';
          expect(turnOverOffset(mm(Math.abs(first - second)), farther)).toBeCloseTo(offset, 9);
        },
      ),
    );
  });

  it('refuses a distance that is none', () => {
    expect(() => turnOverOffset(mm(-1), 'first')).toThrow('apart');
    expect(() => turnOverOffset(mm(NaN), 'first')).toThrow('apart');
  });
});

describe('summarize', () => {
  it('gives mean, spread and ends of a handful', () => {
    const found = summarize([9.4, 9.5, 9.6].map(mm))!;
    expect(found).toMatchObject({ count: 3, least: 9.4, greatest: 9.6 });
    expect(found.mean).toBeCloseTo(9.5, 12);
    expect(found.spread).toBeCloseTo(0.1, 12);
  });

  it('says nothing of the spread of one reading, and nothing at all of none', () => {
    expect(summarize([mm(9.5)])).toEqual({
      count: 1,
      mean: 9.5,
      spread: null,
      least: 9.5,
      greatest: 9.5,
    });
    expect(summarize([])).toBeNull();
  });

  it('agrees with jStat’s mean and sample deviation, and is not moved by the order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 50, noNaN: true }), { minLength: 2, maxLength: 40 }),
        (values) => {
          const readings = values.map(mm);
          const found = summarize(readings)!;
          expect(found.mean).toBeCloseTo(jstat.mean(values), 9);
          expect(found.spread).toBeCloseTo(jstat.stdev(values, true), 9);
          expect(summarize([...readings].reverse())!.spread).toBeCloseTo(found.spread!, 9);
          expect(found.mean).toBeGreaterThanOrEqual(found.least - 1e-9);
          expect(found.mean).toBeLessThanOrEqual(found.greatest + 1e-9);
        },
      ),
    );
  });

  it('names a reading that can’t be one', () => {
    expect(() => summarize([mm(9.5), mm(0)])).toThrow('readings[1]');
    expect(() => summarize([mm(NaN)])).toThrow('readings[0]');
  });
});

describe('countFits', () => {
  it('sorts pins by the fit in the hole that the bit makes', () => {
    const pins = [9.7, 9.58, 9.5, 9.45, 9.3].map(mm);
    expect(countFits(pins, mm(9.6))).toEqual({
      'ease the pin': 1,
      starved: 1,
      good: 2,
      thick: 1,
    });
  });

  it('counts every pin once', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 9, max: 10, noNaN: true }).map(mm)),
        fc.double({ min: 9, max: 10, noNaN: true }).map(mm),
        (pins, hole) => {
          const total = Object.values(countFits(pins, hole)).reduce((sum, each) => sum + each, 0);
          expect(total).toBe(pins.length);
        },
      ),
    );
  });
});

describe('listOfLengths', () => {
  it.each([
    ['9.47 9.50 9.46', ['9.47', '9.50', '9.46']],
    ['9,47\n9,50\r\n9,46', ['9,47', '9,50', '9,46']],
    ['9.47\t9.50;9.46', ['9.47', '9.50', '9.46']],
    ['0.374, 0.373, 0.375', ['0.374', '0.373', '0.375']],
    ['1 1/2\n3/8 in', ['1 1/2', '3/8 in']],
    ['3/8 3/8', ['3/8', '3/8']],
    ['9.5 mm; about nine', ['9.5 mm', 'about nine']],
    ['9.5 nine 9.4', ['9.5', 'nine', '9.4']],
    ['1 1/2 in long', ['1 1/2 in long']],
    ['  \n\n ', []],
  ])('parts %j', (text, parts) => {
    expect(listOfLengths(text, 'mm')).toEqual(parts);
  });

  it('never throws, whatever is pasted, and never gives an endless list', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(listOfLengths(text, 'in').length).toBeLessThanOrEqual(200);
      }),
    );
    expect(listOfLengths('9.5 '.repeat(5000), 'mm')).toHaveLength(200);
  });
});

describe('formatReading', () => {
  it.each([
    [mm(9.47), 'mm', '9.47'],
    [mm(9.5), 'mm', '9.5'],
    [mm(9.525), 'mm', '≈9.53'],
    [mm(9.525), 'in', '3/8'],
    [inches(0.3735), 'in', '0.3735'],
    [mm(9.47), 'in', '≈0.3728'],
  ] as const)('%d mm in %s: %s', (length, unit, text) => {
    expect(formatReading(length, unit)).toBe(text);
  });

  it('is read again as the length that it came from, as near as calipers go', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.constantFrom('in' as const, 'mm' as const),
        (length, unit) => {
          const parsed = parseLength(formatReading(mm(length), unit).replace('≈', ''), unit);
          expect(parsed.ok && Math.abs(parsed.mm - length)).toBeLessThan(0.0051);
        },
      ),
    );
  });
});

describe('the readings of a joint’s pins', () => {
  const set = (readings: readonly number[], nominal?: number) => ({
    ...unmeasured('Mine'),
    pins: { readings: readings.map(mm), ...(nominal !== undefined && { nominal: mm(nominal) }) },
  });

  it.each([
    ['the pins of the joint', [9.4, 9.5], 9.525, true],
    ['of the other system, which may be taken for it', [9.9, 9.95], 10, true],
    ['without a name, but near enough', [9.2], undefined, true],
    ['of another size', [7.9, 8], 8, false],
    ['without a name, and too far off', [7.9, 8], undefined, false],
    ['none', [], 9.525, false],
  ] as const)('serve where they are %s', (_, readings, nominal, serve) => {
    const found = readingsOf(set(readings, nominal), { diameter: inches(3 / 8) });
    expect(found?.count ?? 0).toBe(serve ? readings.length : 0);
  });

  it('say between what nearly all pins lie: two spreads, and nothing of it from one reading', () => {
    const { least, most } = nearlyAll(summarize([9.4, 9.5, 9.6].map(mm))!);
    expect([least, most]).toEqual([expect.closeTo(9.3, 9), expect.closeTo(9.7, 9)]);
    expect(nearlyAll(summarize([mm(9.4)])!)).toEqual({ least: 9.4, most: 9.4 });
  });
});

describe('measuredTools', () => {
  it('leaves out what was not measured', () => {
    const none = unmeasured('Mine');
    expect(isUnmeasured(none)).toBe(true);
    expect(measuredTools(none)).toEqual({ guide: {}, bit: {}, pin: {} });
  });

  it('gives the planner the hole that the bit makes, and the trial run the mean of the pins', () => {
    const set = {
      ...unmeasured('Mine'),
      guide: { bushing: inches(1), offset: mm(-0.4) },
      bit: { hole: mm(9.6), point: { kind: 'brad', spur: mm(2.5) } as const },
      pins: { nominal: inches(3 / 8), readings: [9.4, 9.5, 9.6].map(mm) },
    };
    const tools = measuredTools(set);
    expect(isUnmeasured(set)).toBe(false);
    expect(tools.pin.measured).toBeCloseTo(9.5, 9);
    expect(tools.pin.diameter).toBe(inches(3 / 8));
    expect(tools.pinSpread).toBeCloseTo(0.1, 9);
    const plan = planJoint({
      ...ordinaryJoint('corner', 'in', inches(3 / 4)),
      guide: tools.guide,
      bit: tools.bit,
    });
    expect(plan.spec.guide).toMatchObject({ bushing: inches(1), offset: -0.4 });
    expect(plan.spec.bit).toMatchObject({ diameter: 9.6, tip: 2.5 });
  });
});
