import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diameterOfPin, fit } from '../../../src/core/fit/fit.ts';
import { glueRoom } from '../../../src/core/fit/glueRoom.ts';
import { mm } from '../../../src/core/length/mm.ts';

describe('fit', () => {
  it.each([
    [-0.01, 'ease the pin'],
    [0, 'starved'],
    [0.049, 'starved'],
    [0.05, 'good'],
    [0.1, 'good'],
    [0.2, 'good'],
    [0.201, 'thick'],
  ])('calls a clearance of %d mm %s', (clearance, verdict) => {
    const found = fit({ hole: mm(10 + clearance), pin: mm(10) });
    expect(found.verdict).toBe(verdict);
    expect(found.clearance).toBeCloseTo(clearance, 9);
    expect(found.glueLine).toBeCloseTo(clearance / 2, 9);
  });

  it('takes an unmeasured pin 0.1 mm under its name, and a measured one as it is', () => {
    expect(diameterOfPin({ diameter: mm(8) })).toBeCloseTo(7.9, 9);
    expect(diameterOfPin({ diameter: mm(8), measured: mm(8.05) })).toBe(8.05);
  });

  it('lets 8 mm and 5/16 in pass for each other, and 10 mm and 3/8 in not', () => {
    const verdict = (pin: number, hole: number): string =>
      fit({ hole: mm(hole), pin: diameterOfPin({ diameter: mm(pin) }) }).verdict;
    expect(verdict(8, 7.9375)).not.toBe('ease the pin');
    expect(verdict(7.9375, 8)).toBe('good');
    expect(verdict(10, 9.525)).toBe('ease the pin');
    expect(verdict(9.525, 10)).toBe('thick');
  });

  it('names what is not a diameter', () => {
    expect(() => fit({ hole: mm(NaN), pin: mm(8) })).toThrow('hole');
    expect(() => fit({ hole: mm(8), pin: mm(0) })).toThrow('pin');
  });
});

describe('glueRoom', () => {
  const plain = {
    hole: mm(10),
    pin: mm(9.9),
    engagement: mm(20),
    allowance: mm(3),
    cone: mm(3),
    flutes: 0,
    fluteArea: 0,
    glue: 0,
  };

  it('adds the ring, the end and the cone of a twist bit', () => {
    const room = glueRoom(plain);
    expect(room.around).toBeCloseTo((Math.PI / 4) * (100 - 98.01) * 20, 9);
    expect(room.atEnd).toBeCloseTo((Math.PI / 4) * 100 * 3, 9);
    expect(room.inCone).toBeCloseTo((Math.PI / 12) * 100 * 3, 9);
    expect(room.inFlutes).toBe(0);
    expect(room.total).toBeCloseTo(room.around + room.atEnd + room.inCone, 9);
  });

  it('traps what is too much around a plain pin, and lets it out along flutes', () => {
    const glue = glueRoom(plain).total + 50;
    expect(glueRoom({ ...plain, glue })).toMatchObject({
      verdict: 'trapped',
      over: expect.closeTo(50, 9) as number,
    });
    const fluted = { ...plain, flutes: 10, fluteArea: 0.1 };
    expect(glueRoom({ ...fluted, glue })).toMatchObject({ verdict: 'squeezes out' });
    expect(glueRoom({ ...fluted, glue }).over).toBeCloseTo(50 - 10 * 0.1 * 20, 9);
    expect(glueRoom({ ...plain, glue: 100 }).verdict).toBe('room');
  });

  it('holds the joint open until there is room for all the glue', () => {
    const glue = glueRoom(plain).total + 300;
    const { standsOff } = glueRoom({ ...plain, glue });
    const opened = {
      ...plain,
      glue,
      engagement: mm(plain.engagement - standsOff),
      allowance: mm(plain.allowance + standsOff),
    };
    expect(glueRoom(opened).total).toBeCloseTo(glue, 6);
    expect(glueRoom({ ...plain, glue: glue + 5000 }).standsOff).toBe(20);
    expect(glueRoom({ ...plain, glue, flutes: 10, fluteArea: 0.1 }).standsOff).toBe(0);
    expect(glueRoom(plain).standsOff).toBe(0);
  });

  it('is finite and never negative, and its parts add up, for any sensible hole', () => {
    const length = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 20, noNaN: true }),
        fc.double({ min: 3, max: 20, noNaN: true }),
        length,
        length,
        length,
        fc.nat(24),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 5000, noNaN: true }),
        (hole, pin, engagement, allowance, cone, flutes, fluteArea, glue) => {
          const room = glueRoom({
            hole: mm(hole),
            pin: mm(pin),
            engagement: mm(engagement),
            allowance: mm(allowance),
            cone: mm(cone),
            flutes,
            fluteArea,
            glue,
          });
          const parts = [room.around, room.inFlutes, room.atEnd, room.inCone];
          for (const part of parts) expect(part).toBeGreaterThanOrEqual(0);
          expect(room.total).toBeCloseTo(
            parts.reduce((sum, part) => sum + part, 0),
            6,
          );
          expect(room.over > 0).toBe(glue > room.total);
          expect(room.standsOff > 0).toBe(room.verdict === 'trapped' && engagement > 0);
        },
      ),
    );
  });

  it('names what is out of range', () => {
    expect(() => glueRoom({ ...plain, flutes: 1.5 })).toThrow('flutes');
    expect(() => glueRoom({ ...plain, glue: -1 })).toThrow('glue');
    expect(() => glueRoom({ ...plain, cone: mm(Infinity) })).toThrow(TypeError);
  });
});
