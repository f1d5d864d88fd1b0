import { describe, expect, it } from 'vitest';
import { inches, mm, planJoint, stockPins } from '../../../src/core/index.ts';
import { KINDS, ordinaryJoint } from '../../support/joints.ts';

const asInches = (length: number) => Math.round((length / 25.4) * 1e9) / 1e9;

// The joints that were worked by hand, number by number, are among the checks.
describe('the pin chosen from stock, worked by hand', () => {
  it('an 18 mm board in its edge: of the 8 mm pins the one nearest 40 mm', () => {
    const { considered } = planJoint(ordinaryJoint('edge', 'mm', mm(18)));
    const eights = considered.filter(({ pin }) => pin.diameter === 8);
    expect(eights.map(({ pin, verdict }) => [pin.length, verdict])).toEqual([
      [30, 'fits'],
      [35, 'fits'],
      [40, 'chosen'],
      [50, 'fits'],
    ]);
  });

  it('an 18 mm face: 8 mm pins fit in the lengths that the end can take', () => {
    const { considered, b } = planJoint(ordinaryJoint('corner', 'mm', mm(18)));
    const fitting = considered.filter(({ verdict }) => verdict !== 'rejected');
    expect(fitting.map(({ pin }) => [pin.diameter, pin.length])).toEqual([
      [8, 30],
      [8, 35],
      [8, 40],
      [8, 50],
    ]);
    // 18 less 1 left, 2.4035 of point and 3 free.
    expect(b.engagement).toBeCloseTo(18 - 1 - 4 / Math.tan((59 * Math.PI) / 180) - 3, 9);
  });
});

const hair = 1e-4;

describe('the shop table at every boundary (common practice, no source)', () => {
  it.each([
    [1 / 2, 0, [1 / 4]],
    [1 / 2, hair, [1 / 4]],
    [5 / 8, -hair, [1 / 4]],
    [5 / 8, 0, [1 / 4, 5 / 16]],
    [5 / 8, hair, [5 / 16]],
    [3 / 4, -hair, [5 / 16]],
    [3 / 4, 0, [5 / 16, 3 / 8]],
    [3 / 4, hair, [3 / 8]],
    [3 / 2, -hair, [3 / 8]],
    [3 / 2, 0, [3 / 8]],
  ] as const)('%d in and %d mm: %j', (nominal, off, allowed) => {
    const thickness = mm(inches(nominal) + off);
    const plan = planJoint(ordinaryJoint('edge', 'in', thickness));
    expect(plan.cautions.some(({ code }) => code === 'outside-table')).toBe(false);
    const within = plan.considered.filter(
      ({ reason }) => !(typeof reason[0] === 'string' && reason[0].startsWith('Too ')),
    );
    const diameters = [...new Set(within.map(({ pin }) => asInches(pin.diameter)))];
    expect(diameters).toEqual(allowed);
  });

  it('outside the table the ratio serves, with a caution', () => {
    const under = planJoint(ordinaryJoint('edge', 'in', mm(12.7 - hair)));
    // A third to a half of it: 1/4 in is a hair too thick, and nothing in stock is thinner.
    expect(under.cautions.map(({ code }) => code)).toEqual(['no-pin-fits', 'outside-table']);
    const over = planJoint(ordinaryJoint('edge', 'in', mm(38.1 + hair)));
    // 1/2 in is a hair too thin, and the thickest in stock.
    expect(asInches(over.pin!.diameter)).toBe(1 / 2);
    expect(over.cautions.map(({ code }) => code)).toEqual(['outside-table', 'under-size']);
  });

  it('a pin of the other system belongs to the nearest band', () => {
    const stock = stockPins('mm');
    const plan = planJoint({ ...ordinaryJoint('edge', 'in', inches(3 / 4)), stock });
    const usable = plan.considered.filter(({ verdict }) => verdict !== 'rejected');
    expect(new Set(usable.map(({ pin }) => pin.diameter))).toEqual(new Set([8, 10]));
  });

  it('the other rule takes a third to a half of the thickness (IS 3845:1966, second-hand)', () => {
    const plan = planJoint({
      ...ordinaryJoint('edge', 'mm', mm(24)),
      diameterRule: 'ratio',
    });
    const usable = plan.considered.filter(({ verdict }) => verdict !== 'rejected');
    expect(new Set(usable.map(({ pin }) => pin.diameter))).toEqual(new Set([8, 10, 12]));
    expect(plan.pin?.diameter).toBe(12);
  });
});

describe('ordinary stock in every joint', () => {
  const inchStock = [1 / 2, 5 / 8, 3 / 4, 13 / 16, 1, 5 / 4, 3 / 2].map(inches);
  const metricStock = [12, 15, 16, 18, 20, 22, 25, 30, 40].map(mm);
  const cases = KINDS.flatMap((kind) => [
    ...inchStock.map((thickness) => [kind, 'in', thickness] as const),
    ...metricStock.map((thickness) => [kind, 'mm', thickness] as const),
  ]);
  it.each(cases)('%s, %s system, %d mm: a sensible pin and no alarm', (kind, system, thickness) => {
    const plan = planJoint(ordinaryJoint(kind, system, thickness));
    expect(plan.cautions.filter(({ severity }) => severity !== 'note')).toEqual([]);
    const { diameter } = plan.pin!;
    expect(diameter).toBeGreaterThanOrEqual(thickness / 4 - 1e-9);
    expect(diameter).toBeLessThan(thickness * 0.55);
    expect(plan.positions.length).toBeGreaterThanOrEqual(2);
    expect(plan.a.engagement + plan.b.engagement).toBeCloseTo(plan.pin!.length, 9);
  });

  it('says with a note where a thin face gives less than the advice', () => {
    const { cautions } = planJoint(ordinaryJoint('corner', 'in', inches(3 / 4)));
    expect(cautions.map(({ code, severity }) => [code, severity])).toEqual([['shallow', 'note']]);
    expect(cautions[0]?.message).toContain('2 to 2.5 diameters');
  });
});
