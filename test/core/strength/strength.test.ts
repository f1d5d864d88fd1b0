import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, mm } from '../../../src/core/length/mm.ts';
import { caseCornerMoment } from '../../../src/core/strength/caseCornerMoment.ts';
import { clamps, spreadClamps } from '../../../src/core/strength/clamps.ts';
import { frameMoment } from '../../../src/core/strength/frameMoment.ts';
import { withdrawal } from '../../../src/core/strength/withdrawal.ts';

describe('withdrawal', () => {
  const sound = {
    diameter: mm(10),
    engagement: mm(25),
    memberShear: 13,
    dowelShear: 16,
    grain: 'end',
    thinGlue: false,
    clearance: mm(0),
    grooved: false,
  } as const;

  it('is the formula in newtons, millimeters and megapascals with 1.190 for its coefficient', () => {
    const { force } = withdrawal(sound);
    expect(force / (10 * 25 ** 0.89 * 29)).toBeCloseTo(1.19, 3);
  });

  it('takes each factor off: side grain, thin glue, clearance, grooves', () => {
    const { force } = withdrawal(sound);
    const share = (change: object): number => withdrawal({ ...sound, ...change }).force / force;
    expect(share({ grain: 'side' })).toBeCloseTo((0.95 * 13 + 16) / 29, 9);
    expect(share({ thinGlue: true })).toBeCloseTo(0.9, 9);
    expect(share({ clearance: mm(0.254) })).toBeCloseTo(1 - 0.171, 9);
    expect(share({ clearance: mm(3) })).toBe(0);
    expect(share({ grooved: true })).toBeCloseTo(0.9, 9);
  });

  it('says where the woods are too weak for the formula', () => {
    expect(withdrawal(sound).inStatedRange).toBe(true);
    expect(withdrawal({ ...sound, memberShear: 8 }).inStatedRange).toBe(false);
  });
});

describe('caseCornerMoment', () => {
  it('refuses sizes beyond those that were tested, a hair past either end', () => {
    const depth = inches(1 / 2);
    for (const diameter of [inches(1 / 4), inches(3 / 8)]) {
      expect(caseCornerMoment({ diameter, faceDepth: depth }).ok).toBe(true);
    }
    for (const diameter of [mm(6.34), mm(9.54)]) {
      expect(caseCornerMoment({ diameter, faceDepth: depth })).toMatchObject({ ok: false });
    }
    const diameter = inches(5 / 16);
    for (const faceDepth of [mm(6.34), mm(15.89)]) {
      expect(caseCornerMoment({ diameter, faceDepth })).toMatchObject({ ok: false });
    }
  });

  it('rises with the diameter and with the depth in the face', () => {
    const moment = (diameter: number, faceDepth: number): [number, number] => {
      const found = caseCornerMoment({ diameter: mm(diameter), faceDepth: mm(faceDepth) });
      if (!found.ok) throw new Error('refused');
      return [found.opening, found.closing];
    };
    const [opening, closing] = moment(8, 12);
    expect(moment(9, 12)[0]).toBeGreaterThan(opening);
    expect(moment(9, 12)[1]).toBeGreaterThan(closing);
    expect(moment(8, 13)[0]).toBeGreaterThan(opening);
    expect(moment(8, 13)[1]).toBeGreaterThan(closing);
  });
});

describe('frameMoment', () => {
  it('is the force at its lever arm, in newton-meters', () => {
    expect(frameMoment({ withdrawal: 3000, spacing: mm(40), edgeDistance: mm(15) })).toBe(142.5);
  });
  it('names what is out of range', () => {
    expect(() => frameMoment({ withdrawal: NaN, spacing: mm(40), edgeDistance: mm(15) })).toThrow(
      'withdrawal',
    );
    expect(() => frameMoment({ withdrawal: 1, spacing: mm(0), edgeDistance: mm(15) })).toThrow(
      'spacing',
    );
  });
});

describe('clamps', () => {
  const panel = {
    length: mm(900),
    thickness: mm(19),
    boardWidth: mm(90),
    caul: mm(20),
    pressure: 1,
  };

  it('leaves no gap between the reaches of two clamps', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 3000, noNaN: true }),
        fc.double({ min: 10, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (length, boardWidth, caul) => {
          const found = clamps({
            ...panel,
            length: mm(length),
            boardWidth: mm(boardWidth),
            caul: mm(caul),
          });
          expect(found.spacing).toBeLessThanOrEqual(found.reach + 1e-6);
          expect(found.fromEnd).toBeLessThanOrEqual(found.reach / 2 + 1e-6);
          expect(found.count).toBeGreaterThanOrEqual(2);
          expect((found.count - 1) * found.spacing + 2 * found.fromEnd).toBeCloseTo(length, 6);
          // One clamp less would leave a gap, or would be one alone.
          if (found.count > 2) {
            expect(length / (found.count - 1)).toBeGreaterThan(found.reach - 1e-6);
          }
        },
      ),
    );
  });

  it('spreads at 45°: 90 mm of board and 20 mm of caul reach 220 mm of glue line', () => {
    expect(clamps(panel)).toMatchObject({ reach: 220, count: 5, spacing: 180, fromEnd: 90 });
  });

  it('leaves bare glue line between clamps that are too few, and none at the number that it asks for', () => {
    const found = clamps(panel);
    expect(spreadClamps(found, panel.length, found.count)).toMatchObject({
      gap: 0,
      spacing: found.spacing,
      fromEnd: found.fromEnd,
      forcePerClamp: found.forcePerClamp,
    });
    expect(spreadClamps(found, panel.length, 3)).toMatchObject({ spacing: 300, gap: 80 });
    expect(() => spreadClamps(found, panel.length, 0)).toThrow('count');
  });

  it('asks for area times pressure, shared among the clamps', () => {
    const found = clamps(panel);
    expect(found.force).toBe(900 * 19);
    expect(found.forcePerClamp * found.count).toBeCloseTo(found.force, 9);
  });

  it('takes more clamps where one is to give no more than its maker says', () => {
    expect(clamps({ ...panel, mostPerClamp: 2000 })).toMatchObject({ count: 9, rule: 'force' });
    expect(clamps({ ...panel, mostPerClamp: 20_000 })).toMatchObject({ count: 5, rule: 'reach' });
    expect(clamps({ ...panel, boardWidth: mm(600) })).toMatchObject({
      count: 2,
      rule: 'at least two',
    });
  });

  it('names what is out of range', () => {
    expect(() => clamps({ ...panel, length: mm(0) })).toThrow('length');
    expect(() => clamps({ ...panel, pressure: NaN })).toThrow('pressure');
    expect(() => clamps({ ...panel, mostPerClamp: 0 })).toThrow('mostPerClamp');
  });
});
