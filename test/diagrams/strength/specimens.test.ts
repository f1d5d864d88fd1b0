import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/core/index.ts';
import {
  type Specimen,
  arrangeSpecimens,
  describeSpecimens,
  scaleFor,
} from '../../../src/diagrams/strength/specimens.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const pin: Specimen = {
  kind: 'pull',
  diameter: inches(3 / 8),
  depth: inches(1),
  grooved: false,
  grain: 'end',
};
const corner: Specimen = { ...pin, kind: 'corner', grain: 'none', depth: inches(1 / 2) };
const frame: Specimen = {
  kind: 'frame',
  diameter: inches(3 / 8),
  depth: inches(3 / 4),
  grooved: true,
  spacing: inches(1),
  edgeDistance: inches(1 / 2),
};

describe('two joints side by side', () => {
  test('share one scale, set by the larger', () => {
    const deep = { ...pin, depth: inches(2) };
    expect(scaleFor([pin, deep])).toBe(scaleFor([deep]));
    expect(scaleFor([pin, deep])).toBeLessThan(scaleFor([pin]));
  });

  test.each([
    [360, 'under'],
    [800, 'beside'],
  ])('their bars are as long as the ratio says: %i px wide, %s them', (width, where) => {
    const compared = [{ name: 'pull', ratio: 0.54 }];
    const sheet = arrangeSpecimens([pin, pin], compared, width, 'in');
    const start = sheet.labels.find(({ text }) => text.in === 'pull')!.x + 62;
    const bars = sheet.strokes
      .filter(({ pen, d }) => ['wood-b', 'pin'].includes(pen) && d.startsWith(`M${start},`))
      .map(({ d }) => Number(/L([\d.]+),/.exec(d)![1]) - start);
    expect(bars).toHaveLength(2);
    expect(bars[1]! / bars[0]!).toBeCloseTo(0.54, 2);
    // They use the room that there is.
    expect(start + bars[0]!).toBeGreaterThan(width - 90);
    const wood = arrangeSpecimens([pin, pin], [], width, 'in');
    if (where === 'beside') expect(sheet.height).toBe(wood.height);
    else expect(sheet.height).toBeGreaterThan(wood.height);
  });

  test('show ratios and no force', () => {
    const sheet = arrangeSpecimens([pin, pin], [{ name: 'pull', ratio: 1.25 }], 600, 'in');
    const texts = sheet.labels.map(({ text }) => text.in);
    expect(texts).toContain('1.25');
    expect(texts.join(' ')).not.toMatch(/\b(lb|N|psi|kN)\b/);
    expect(describeSpecimens([pin, pin], [{ name: 'pull', ratio: 1.25 }], 'in')).toMatch(
      /1\.25 times the first.*not a rating/,
    );
  });

  test.each([280, 340, 860])('keep their numbers apart and on the sheet at %i px', (width) => {
    const wide = { ...frame, spacing: inches(5), edgeDistance: inches(1 / 4) };
    const pairs: readonly (readonly [Specimen, Specimen])[] = [
      [pin, { ...pin, diameter: inches(1 / 2), depth: inches(2), grooved: true, grain: 'side' }],
      [pin, { ...pin, depth: inches(1 / 4) }],
      [corner, { ...corner, depth: inches(5 / 8) }],
      [frame, wide],
      [frame, { ...frame, edgeDistance: inches(2) }],
    ];
    for (const pair of pairs) {
      for (const unit of ['in', 'mm', 'both'] as const) {
        const compared = [0.04, 1, 9.87].map((ratio) => ({ name: 'bending, forced open', ratio }));
        const sheet = arrangeSpecimens(pair, compared, width, unit);
        expect(labelFaults(sheet), `${JSON.stringify(pair[1])}, ${unit}`).toEqual([]);
      }
    }
  });
});
