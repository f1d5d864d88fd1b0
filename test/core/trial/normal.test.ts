import jstat from 'jstat';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, it } from 'vitest';
import { drawNormal } from '../../../src/core/trial/normal.ts';

const draws = 200_000;

function sample(seed: number): readonly number[] {
  const source = xoroshiro128plus(seed);
  source.jump();
  return Array.from({ length: draws }, () => drawNormal(source));
}

describe('drawNormal, against jStat’s normal distribution', () => {
  const sorted = [...sample(1)].sort((x, y) => x - y);

  it('follows its distribution everywhere (Kolmogorov–Smirnov, one in a million)', () => {
    const worst = Math.max(
      ...[...Array(1000).keys()].map((k) => {
        const at = Math.floor(((k + 0.5) * draws) / 1000);
        return Math.abs(jstat.normal.cdf(sorted[at] as number, 0, 1) - (at + 0.5) / draws);
      }),
    );
    expect(worst).toBeLessThan(2.7 / Math.sqrt(draws));
  });

  it.each([2, 3, 3.442619855899, 4])('has the tails beyond %d that it should', (beyond) => {
    const expected = 2 * draws * jstat.normal.cdf(-beyond, 0, 1);
    const found = sorted.filter((x) => Math.abs(x) > beyond).length;
    expect(Math.abs(found - expected)).toBeLessThan(5 * Math.sqrt(expected) + 1);
  });

  it('gives the same draws for a seed, and others for another', () => {
    expect(sample(7).slice(0, 50)).toEqual(sample(7).slice(0, 50));
    expect(sample(7).slice(0, 50)).not.toEqual(sample(8).slice(0, 50));
  });
});
