import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../../src/core/length/mm.ts';
import {
  coefficientsHold,
  dimensionalChange,
} from '../../../src/core/moisture/dimensionalChange.ts';
import { equilibriumMoisture, tableReach } from '../../../src/core/moisture/equilibriumMoisture.ts';
import { type SeasonedHole, holeAndPin } from '../../../src/core/moisture/holeAndPin.ts';
import { type Species, species, speciesNames } from '../../../src/core/moisture/species.ts';

function wood(name: string): Species {
  const found = species(name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
}

describe('equilibriumMoisture', () => {
  it('gives dry wood in dry air', () => {
    expect(equilibriumMoisture(20, 0)).toBe(0);
  });

  it('grows with humidity and, at one humidity, falls with warmth from 10 °C on', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 54, noNaN: true }),
        fc.double({ min: 0.05, max: 0.98, noNaN: true }),
        (celsius, humidity) => {
          const here = equilibriumMoisture(celsius, humidity);
          expect(equilibriumMoisture(celsius, humidity + 0.01)).toBeGreaterThan(here);
          expect(equilibriumMoisture(celsius + 1, humidity)).toBeLessThan(here);
        },
      ),
    );
  });

  it('is finite and not negative wherever it answers, and else throws a RangeError', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (celsius, humidity) => {
          try {
            const moisture = equilibriumMoisture(celsius, humidity);
            expect(moisture).toBeGreaterThanOrEqual(0);
            expect(moisture).toBeLessThan(100);
          } catch (error) {
            expect(error).toBeInstanceOf(RangeError);
          }
        },
      ),
    );
  });

  it.each([
    [-0.01, RangeError],
    [1.01, RangeError],
    [50, RangeError],
    [NaN, TypeError],
    [Infinity, TypeError],
  ])('refuses a humidity of %d and names it', (humidity, kind) => {
    expect(() => equilibriumMoisture(20, humidity)).toThrow(kind);
    expect(() => equilibriumMoisture(20, humidity)).toThrow('relativeHumidity');
  });

  it.each([
    [-1, 'within the table'],
    [55, 'within the table'],
    [-1.1, 'beyond the table'],
    [55.1, 'beyond the table'],
  ])('says of %d °C that it is %s', (celsius, reach) => {
    expect(tableReach(celsius)).toBe(reach);
  });
});

describe('dimensionalChange', () => {
  it('undoes itself when the moisture comes back', () => {
    const there = dimensionalChange({
      size: mm(300),
      coefficient: 0.003,
      fromMoisture: 6,
      toMoisture: 12,
    });
    const back = dimensionalChange({
      size: mm(300),
      coefficient: 0.003,
      fromMoisture: 12,
      toMoisture: 6,
    });
    expect(there).toBeCloseTo(5.4, 9);
    expect(there + back).toBe(0);
  });

  it.each(['size', 'coefficient', 'fromMoisture', 'toMoisture'] as const)(
    'names %s where it is not a number or is negative',
    (field) => {
      const sound = { size: mm(300), coefficient: 0.003, fromMoisture: 6, toMoisture: 12 };
      expect(() => dimensionalChange({ ...sound, [field]: NaN })).toThrow(TypeError);
      expect(() => dimensionalChange({ ...sound, [field]: -1 })).toThrow(RangeError);
      expect(() => dimensionalChange({ ...sound, [field]: -1 })).toThrow(field);
    },
  );

  it('says that its coefficients hold from 6 to 14 %', () => {
    expect(coefficientsHold(6, 14)).toBe(true);
    expect(coefficientsHold(5.9, 10)).toBe(false);
    expect(coefficientsHold(10, 14.1)).toBe(false);
  });
});

describe('species', () => {
  it('knows every name in its list, once, in order', () => {
    expect(new Set(speciesNames).size).toBe(speciesNames.length);
    expect([...speciesNames].sort((x, y) => (x.toLowerCase() < y.toLowerCase() ? -1 : 1))).toEqual(
      speciesNames,
    );
    for (const name of speciesNames) expect(species(name)?.name).toBe(name);
  });

  it('moves more along the rings than across them, in every wood', () => {
    for (const { radial, tangential } of speciesNames.map(wood)) {
      expect(tangential).toBeGreaterThan(0);
      if (radial !== null) expect(radial).toBeLessThan(tangential);
    }
  });

  it('gives no wood a shear without its specific gravity', () => {
    for (const { specificGravity, shear } of speciesNames.map(wood)) {
      expect(specificGravity === null).toBe(shear === null);
    }
  });

  it('does not know a wood that is not in the tables', () => {
    expect(species('balsa')).toBeUndefined();
    expect(species('constructor')).toBeUndefined();
  });
});

describe('holeAndPin', () => {
  const maple = wood('maple, sugar (hard)');
  const oak = wood('white oak, commercial');
  const hole: SeasonedHole = {
    diameter: mm(10),
    wood: oak,
    surface: 'face',
    sawn: 'flat',
    moisture: 8,
  };
  const pin = { diameter: mm(9.9), wood: maple, moisture: 8 };

  it('leaves hole and pin as they were while the moisture stays', () => {
    const same = holeAndPin(hole, pin, 8);
    expect(same).toMatchObject({ ok: true });
    if (!same.ok) return;
    expect(same.clearance.least).toBeCloseTo(0.1, 9);
    expect(same.clearance.greatest).toBeCloseTo(0.1, 9);
  });

  it('keeps a hole in a face as wide along the grain, and moves it along the rings across', () => {
    const damp = holeAndPin(hole, pin, 12);
    if (!damp.ok) throw new Error(damp.reason);
    expect(damp.hole).toEqual([
      { direction: 'along the grain', width: 10 },
      { direction: 'along the rings', width: expect.closeTo(10 * (1 + 0.00365 * 4), 9) },
    ]);
    expect(damp.pin.map(({ width }) => width)).toEqual([
      expect.closeTo(9.9 * (1 + 0.00165 * 4), 9),
      expect.closeTo(9.9 * (1 + 0.00353 * 4), 9),
    ]);
    expect(damp.clearance.least).toBeCloseTo(10 - 9.9 * (1 + 0.00353 * 4), 9);
  });

  it('moves a flat-sawn edge and a quarter-sawn face across the rings', () => {
    for (const part of [
      { surface: 'edge', sawn: 'flat' },
      { surface: 'face', sawn: 'quarter' },
    ] as const) {
      const damp = holeAndPin({ ...hole, ...part }, pin, 12);
      if (!damp.ok) throw new Error(damp.reason);
      expect(damp.hole[1].direction).toBe('across the rings');
      expect(damp.hole[1].width).toBeCloseTo(10 * (1 + 0.0018 * 4), 9);
    }
  });

  it('moves a hole in an end both ways', () => {
    const damp = holeAndPin({ ...hole, surface: 'end' }, pin, 12);
    if (!damp.ok) throw new Error(damp.reason);
    expect(damp.hole.map(({ direction }) => direction)).toEqual([
      'across the rings',
      'along the rings',
    ]);
  });

  it('bounds the clearance of every turn of the pin', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('face' as const, 'edge' as const, 'end' as const),
        fc.double({ min: 4, max: 20, noNaN: true }),
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        (surface, moisture, turn) => {
          const season = holeAndPin({ ...hole, surface }, pin, moisture);
          if (!season.ok) throw new Error(season.reason);
          // Width of the pin, an ellipse, at right angles to each other as it is turned.
          const [p0, p1] = [season.pin[0].width, season.pin[1].width];
          const wide = Math.hypot(p0 * Math.cos(turn), p1 * Math.sin(turn));
          const deep = Math.hypot(p0 * Math.sin(turn), p1 * Math.cos(turn));
          for (const clearance of [season.hole[0].width - wide, season.hole[1].width - deep]) {
            expect(clearance).toBeGreaterThanOrEqual(season.clearance.least - 1e-9);
            expect(clearance).toBeLessThanOrEqual(season.clearance.greatest + 1e-9);
          }
        },
      ),
    );
  });

  it('refuses, by name, a wood whose movement across the rings was not found', () => {
    const fir = wood('Douglas-fir');
    expect(holeAndPin({ ...hole, wood: fir, surface: 'end' }, pin, 12)).toMatchObject({
      ok: false,
      reason: expect.stringContaining('Douglas-fir') as string,
    });
    expect(holeAndPin({ ...hole, wood: fir }, pin, 12).ok).toBe(true);
    expect(holeAndPin(hole, { ...pin, wood: fir }, 12).ok).toBe(false);
  });
});
