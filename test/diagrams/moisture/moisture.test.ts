import { describe, expect, test } from 'vitest';
import {
  type HoleAndPin,
  equilibriumMoisture,
  holeAndPin,
  inches,
  mm,
  publishedMoisture,
  species,
} from '../../../src/core/index.ts';
import {
  arrangeCurve,
  curveAt,
  describeCurve,
  placeOn,
} from '../../../src/diagrams/moisture/curve.ts';
import { fine, spokenFine } from '../../../src/diagrams/moisture/fine.ts';
import {
  type Magnified,
  type Season,
  arrangeHoles,
  describeHoles,
  magnifiedShapes,
} from '../../../src/diagrams/moisture/holes.ts';
import { celsius, fahrenheit, temperature } from '../../../src/diagrams/moisture/temperature.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const maple = species('maple, sugar (hard)')!;
const birch = species('birch, paper')!;
const D = inches(3 / 8);

function season(surface: 'face' | 'end', sawn: 'flat' | 'quarter', to: number): Season {
  const found: HoleAndPin = holeAndPin(
    { diameter: D, wood: maple, surface, sawn, moisture: 7 },
    { diameter: mm(D - 0.1), wood: birch, moisture: 7 },
    to,
  );
  if (!found.ok) throw new Error(found.reason);
  return found;
}

function pair(to: number, sawn: 'flat' | 'quarter' = 'flat'): readonly Magnified[] {
  return [
    { letter: 'A', surface: 'end', sawn, season: season('end', sawn, to) },
    { letter: 'B', surface: 'face', sawn, season: season('face', sawn, to) },
  ];
}

describe('the curve from air to wood', () => {
  test('goes through every cell of the published table, to a tenth of a percent', () => {
    for (const [row, cells] of Object.entries(publishedMoisture)) {
      const curve = new Map(curveAt(celsius(Number(row))));
      for (const [humidity, moisture] of cells) {
        expect(curve.get(humidity), `${row} °F, ${humidity} %`).toBeCloseTo(moisture, 0);
        expect(Math.abs(curve.get(humidity)! - moisture)).toBeLessThan(0.1);
      }
    }
  });

  test('puts humidity across and moisture up', () => {
    const place = placeOn({ left: 40, right: 240, top: 100, bottom: 350 });
    expect(place(0, 0)).toEqual({ x: 40, y: 350 });
    expect(place(50, 12.5)).toEqual({ x: 140, y: 225 });
    expect(place(100, 25)).toEqual({ x: 240, y: 100 });
  });

  test('says what wood comes to, and draws it in the accent', () => {
    const sheet = arrangeCurve({ celsius: 20, humidity: 0.65 }, 300, 'in');
    const [shown] = sheet.labels.filter(({ set }) => set);
    expect(shown?.text.in).toBe(`Wood comes to ${equilibriumMoisture(20, 0.65).toFixed(1)} %`);
    expect(describeCurve({ celsius: 20, humidity: 0.65 }, 'in')).toContain('68\u00a0°F');
    expect(describeCurve({ celsius: 20, humidity: 0.65 }, 'mm')).toContain('20\u00a0°C');
  });

  test.each([280, 420])('keeps its words apart and on the sheet at %i px', (width) => {
    for (const degrees of [-18, 0, 20, 40, 65]) {
      for (const humidity of [0.05, 0.4, 0.65, 0.95]) {
        const air = { celsius: degrees, humidity };
        expect(labelFaults(arrangeCurve(air, width, 'both')), JSON.stringify(air)).toEqual([]);
      }
    }
  });
});

describe('hole and pin, magnified', () => {
  test('the grain of a face lies level: that width of its hole never changes', () => {
    for (const to of [4, 7, 12, 20]) {
      for (const sawn of ['flat', 'quarter'] as const) {
        const [, face] = pair(to, sawn);
        expect(magnifiedShapes(face!).hole.level).toBe(D);
      }
    }
  });

  test('the rings of a flat-sawn end lie level, and those of a quarter-sawn one stand', () => {
    const flat = magnifiedShapes(pair(12, 'flat')[0]!).hole;
    const quarter = magnifiedShapes(pair(12, 'quarter')[0]!).hole;
    expect(flat.level).toBeCloseTo(D * (1 + maple.tangential * 5), 9);
    expect(flat.upright).toBeCloseTo(D * (1 + maple.radial! * 5), 9);
    expect(quarter).toEqual({ level: flat.upright, upright: flat.level });
  });

  test('the pin is drawn where it has least room: the numbers beside it are what is drawn', () => {
    for (const to of [4, 7, 9, 12, 20]) {
      for (const one of pair(to)) {
        const { hole, tight, turned } = magnifiedShapes(one);
        const room = (pin: typeof hole) =>
          Math.min(hole.level - pin.level, hole.upright - pin.upright);
        expect(room(tight)).toBeCloseTo(one.season.clearance.least, 9);
        expect(room(tight)).toBeLessThanOrEqual(room(turned) + 1e-12);
      }
    }
  });

  test('a tight pin is said in words and drawn as a caution', () => {
    const damp = arrangeHoles(pair(14), D, 600, 'in');
    const words = (sheet: typeof damp) =>
      sheet.labels.filter(({ caution }) => caution).map(({ text }) => text.in);
    expect(words(damp)).toContain('tight, if turned that way');
    expect(words(arrangeHoles(pair(7), D, 600, 'in'))).toEqual([]);
  });

  test.each([280, 600])('keeps its numbers apart and on the sheet at %i px', (width) => {
    for (const to of [2, 5, 7, 12, 18, 24]) {
      for (const sawn of ['flat', 'quarter'] as const) {
        for (const unit of ['in', 'mm', 'both'] as const) {
          expect(labelFaults(arrangeHoles(pair(to, sawn), D, width, unit)), `${to} %`).toEqual([]);
        }
      }
    }
  });

  test('is told in sentences with its numbers', () => {
    const text = describeHoles(pair(12), 'mm');
    expect(text).toContain(spokenFine(season('face', 'flat', 12).clearance.least, 'mm'));
    expect(text).toContain('along the grain');
  });
});

test('temperatures turn into each other', () => {
  for (const degrees of [-40, 0, 20, 37.5])
    expect(celsius(fahrenheit(degrees))).toBeCloseTo(degrees, 9);
  expect(temperature(-18)).toEqual({ in: '0\u00a0°F', mm: '−18\u00a0°C' });
});

test('a small length has a true minus, and none where it rounds to nothing', () => {
  expect(fine(-0.0381)).toEqual({ in: '−0.002', mm: '−0.04' });
  expect(fine(-0.0001)).toEqual({ in: '0.000', mm: '0.00' });
  expect(spokenFine(-0.0381, 'in')).toBe('minus 0.002 inch');
});
