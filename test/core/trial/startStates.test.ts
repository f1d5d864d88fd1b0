import { describe, expect, test } from 'vitest';
import { drill, dryFit, mm } from '../../../src/core/index.ts';
import { deviationsOf } from '../../../src/core/trial/deviations.ts';
import {
  decodeStart,
  encodeStart,
  startSetup,
  startStates,
  withoutStop,
} from '../../../src/core/trial/startStates.ts';

const CASES = startStates.flatMap((start) =>
  start.kinds.flatMap((kind) =>
    (['in', 'mm'] as const)
      .filter((system) => start.fixed === undefined || start.fixed.system === system)
      .map((system) => ({ start, kind, system, name: `${start.id}, ${kind}, ${system}` })),
  ),
);
const startOf = (id: string) => startStates.find((start) => start.id === id)!;

describe('a start state', () => {
  test.each(CASES.filter(({ start }) => start.id !== 'own'))(
    'names its own cause first: $name',
    ({ start, kind, system }) => {
      const { causes } = dryFit(drill(startSetup(start, kind, system)));
      expect(causes[0]?.code ?? null).toBe(start.cause);
    },
  );

  test.each(CASES.filter(({ start }) => start.cause !== null))(
    'closes without a fault once that cause is mended: $name',
    ({ start, kind, system }) => {
      const setup = startSetup(start, kind, system);
      const deviation = deviationsOf(setup).find(({ code }) => code === start.cause)!;
      const outcome = dryFit(drill(deviation.mend(setup)));
      expect(outcome.closes).toBe(true);
      expect(outcome.faults).toEqual([]);
    },
  );

  test.each(CASES)('is a job that can be made: $name', ({ start, kind, system }) => {
    expect(startSetup(start, kind, system).plan.ok).toBe(true);
  });

  test.each(CASES.filter(({ start }) => start.fixed === undefined))(
    'asks for depths that a rule can be set to: $name',
    ({ start, kind, system }) => {
      const { plan } = startSetup(start, kind, system);
      const division = system === 'in' ? 25.4 / 64 : 0.5;
      for (const { holeDepth } of [plan.a, plan.b]) {
        expect(holeDepth / division).toBeCloseTo(Math.round(holeDepth / division), 6);
      }
    },
  );
});

describe('what comes of a start', () => {
  test.each(startOf('sound').kinds)('sound: a %s joint closes and has no fault', (kind) => {
    const outcome = dryFit(drill(startSetup(startOf('sound'), kind, 'in')));
    expect(outcome.closes).toBe(true);
    expect(outcome.faults).toEqual([]);
  });

  test.each(startOf('own').kinds)('nothing set yet: a %s joint does not close', (kind) => {
    expect(dryFit(drill(startSetup(startOf('own'), kind, 'mm'))).closes).toBe(false);
  });

  test('10 mm does not go into 3/8 in; 3/8 in rattles in 10 mm; 8 mm and 5/16 in pass both ways', () => {
    const of = (id: string) => {
      const start = startOf(id);
      return dryFit(drill(startSetup(start, 'corner', start.fixed!.system)));
    };
    expect(of('10-mm-pin-3-8-bit').pins[0]!.fit.a.clearance).toBeCloseTo(9.525 - 9.9, 9);
    expect(of('10-mm-pin-3-8-bit').closes).toBe(false);
    expect(of('3-8-pin-10-mm-bit').pins[0]!.fit.a.clearance).toBeCloseTo(10 - 9.425, 9);
    expect(of('3-8-pin-10-mm-bit').faults.map(({ code }) => code)).toEqual(['loose', 'loose']);
    expect(of('8-mm-pin-5-16-bit').pins[0]!.fit.a.clearance).toBeCloseTo(7.9375 - 7.9, 9);
    expect(of('8-mm-pin-5-16-bit').closes).toBe(true);
    expect(of('5-16-pin-8-mm-bit').pins[0]!.fit.a.clearance).toBeCloseTo(8 - 7.8375, 9);
    expect(of('5-16-pin-8-mm-bit').closes).toBe(true);
  });

  test('boards of unequal length, measured from opposite ends, close that much out of place', () => {
    const outcome = dryFit(drill(startSetup(startOf('opposite-ends'), 'edge', 'in')));
    expect(outcome.fits).toBe(true);
    expect(outcome.faults).toMatchObject([{ code: 'off-place', size: expect.closeTo(25.4, 9) }]);
  });

  test('a board without a stop leaves the other board as it was', () => {
    const setup = startSetup(startOf('sound'), 'corner', 'in');
    const changed = withoutStop(setup, 'b');
    expect(changed.a).toBe(setup.a);
    expect('byEye' in changed.b.stop).toBe(true);
  });

  test('a kind in which it does not show is a program’s mistake', () => {
    expect(() => startSetup(startOf('same-stop'), 'leg', 'in')).toThrow(RangeError);
  });
});

describe('a link to a start', () => {
  test.each(CASES)('comes back as it was written: $name', ({ start, kind }) => {
    expect(decodeStart(`#${encodeStart(start, kind)}`)).toEqual({ ok: true, start, kind });
  });

  test('may say the unit that it is read in', () => {
    expect(decodeStart('#start=sound;show=mm')).toMatchObject({ ok: true });
  });

  test.each([
    '',
    '#',
    '#start=',
    '#start=nonsense',
    '#start=__proto__',
    '#start=sound;start=own',
    '#start=same-stop;kind=leg',
    '#start=sound;kind=chair',
    '#start=sound;x=1',
    '#start=<img src=x>',
    '#start=SOUND',
  ])('is refused in a sentence: %s', (link) => {
    const decoded = decodeStart(link);
    expect(decoded).toMatchObject({ ok: false });
    if (!decoded.ok) expect(decoded.reason).toMatch(/^This link can't be read: .+\. Choose .+\.$/);
  });

  test('takes someone’s own guide, point and pins as far as they were measured', () => {
    const tools = {
      guide: { bushing: mm(31), offset: mm(-0.4) },
      bit: { point: { kind: 'square' } },
      pin: { diameter: mm(8), measured: mm(7.92) },
    } as const;
    const { plan, pin } = startSetup(startOf('sound'), 'corner', 'mm', tools);
    expect(plan.spec.guide).toMatchObject({ bushing: 31, standoff: 2, offset: -0.4 });
    expect(plan.spec.bit.tip).toBe(0);
    expect(plan.a.stop).toBe(31 + 2 + plan.a.holeDepth);
    expect(pin).toEqual({ ...plan.pin, measured: 7.92 });
    const inch = startSetup(startOf('sound'), 'corner', 'in', tools);
    expect(inch.pin.measured).toBeUndefined();
  });
});
