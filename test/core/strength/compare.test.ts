import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, mm } from '../../../src/core/length/mm.ts';
import {
  type FramePins,
  type PulledPin,
  compareCorners,
  compareFrames,
  comparePull,
} from '../../../src/core/strength/compare.ts';
import { caseCornerMoment } from '../../../src/core/strength/caseCornerMoment.ts';
import { withdrawal } from '../../../src/core/strength/withdrawal.ts';

const pin: PulledPin = {
  diameter: mm(8),
  engagement: mm(25),
  clearance: mm(0.1),
  grain: 'end',
  memberShear: 13,
  dowelShear: 16,
  grooved: false,
};

const anyPin = fc.record({
  diameter: fc.double({ min: 3, max: 20, noNaN: true }).map(mm),
  engagement: fc.double({ min: 3, max: 80, noNaN: true }).map(mm),
  clearance: fc.double({ min: 0, max: 1, noNaN: true }).map(mm),
  grain: fc.constantFrom('end' as const, 'side' as const),
  memberShear: fc.double({ min: 5, max: 20, noNaN: true }),
  dowelShear: fc.double({ min: 5, max: 20, noNaN: true }),
  grooved: fc.boolean(),
});

describe('comparePull', () => {
  it('parts the ratio into factors that multiply to it', () => {
    fc.assert(
      fc.property(anyPin, anyPin, (first, second) => {
        const found = comparePull(first, second);
        if (!found.ok) throw new Error('refused');
        const forces = [first, second].map(
          (each) => withdrawal({ ...each, thinGlue: false }).force,
        ) as [number, number];
        const product = found.factors.reduce((all, { ratio }) => all * ratio, 1);
        expect(found.ratios['pull']).toBeCloseTo(forces[1] / forces[0], 9);
        expect(product / found.ratios['pull']!).toBeCloseTo(1, 9);
      }),
    );
  });

  it('doubles with the diameter, and less than doubles with the depth', () => {
    const ratio = (change: Partial<PulledPin>) => {
      const found = comparePull(pin, { ...pin, ...change });
      return found.ok ? found.ratios['pull'] : NaN;
    };
    expect(ratio({ diameter: mm(16) })).toBeCloseTo(2, 9);
    expect(ratio({ engagement: mm(50) })).toBeCloseTo(2 ** 0.89, 9);
    expect(ratio({})).toBe(1);
  });

  it('refuses a pin so loose that nothing holds it', () => {
    expect(comparePull(pin, { ...pin, clearance: mm(2) }).ok).toBe(false);
  });

  it('says when the woods are outside what the formula is stated for', () => {
    expect(comparePull(pin, { ...pin, memberShear: 8 })).toMatchObject({ inStatedRange: false });
    expect(comparePull(pin, pin)).toMatchObject({ inStatedRange: true });
  });
});

describe('compareCorners', () => {
  it('is the formula of the second over that of the first', () => {
    const thin = { diameter: inches(1 / 4), faceDepth: inches(3 / 8) };
    const thick = { diameter: inches(3 / 8), faceDepth: inches(1 / 2) };
    const [a, b] = [caseCornerMoment(thin), caseCornerMoment(thick)];
    if (!a.ok || !b.ok) throw new Error('refused');
    expect(compareCorners(thin, thick)).toMatchObject({
      ratios: { open: b.opening / a.opening, closed: b.closing / a.closing },
    });
  });

  it('refuses what was not tested, whichever of the two it is', () => {
    const tested = { diameter: inches(1 / 4), faceDepth: inches(3 / 8) };
    const deep = { ...tested, faceDepth: inches(1) };
    expect(compareCorners(tested, deep).ok).toBe(false);
    expect(compareCorners(deep, tested).ok).toBe(false);
  });
});

describe('compareFrames', () => {
  it('multiplies the pull by the lever', () => {
    const frame: FramePins = { ...pin, spacing: mm(30), edgeDistance: mm(10) };
    const wide = { ...frame, diameter: mm(10), spacing: mm(60) };
    expect(compareFrames(frame, wide)).toMatchObject({
      ratios: { bending: expect.closeTo((10 / 8) * (65 / 35), 9) as number },
      factors: expect.arrayContaining([
        { of: 'lever', ratio: expect.closeTo(65 / 35, 9) as number },
      ]) as unknown,
    });
  });
});
