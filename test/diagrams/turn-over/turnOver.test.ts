import { describe, expect, it } from 'vitest';
import { inches, mm } from '../../../src/core/index.ts';
import { turnOverOffset } from '../../../src/core/tools/turnOver.ts';
import { arrangeTurnOver } from '../../../src/diagrams/turn-over/arrange.ts';
import { describeTurnOver } from '../../../src/diagrams/turn-over/describe.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const apart = inches(1 / 16);
const away = turnOverOffset(apart, 'first');
const toward = turnOverOffset(apart, 'second');

/** Heights of the holes' middles on the sheet, hole 1 first. */
function heights(offset: typeof away): readonly number[] {
  return arrangeTurnOver(apart, offset, 420)
    .strokes.filter(({ pen }) => pen === 'hole')
    .map(({ d }) => Number(/^M[^,]+,([\d.]+)/.exec(d)?.[1]));
}

describe('the drawing of a turn-over test', () => {
  it('puts hole 1 below hole 2 where the guide drills away from its face, and above where toward it', () => {
    const [first, second] = heights(away);
    expect(first).toBeGreaterThan(second!);
    expect(heights(toward)).toEqual([second, first]);
    expect(new Set(heights(mm(0))).size).toBe(1);
  });

  it('writes the distance and its half, in either unit', () => {
    const texts = arrangeTurnOver(apart, away, 420).labels.map(({ text }) => text);
    expect(texts).toContainEqual({ in: '1/16', mm: '≈1.6' });
    expect(texts).toContainEqual({ in: '1/32', mm: '≈0.8' });
  });

  it('keeps its labels apart and on the sheet, measured or not', () => {
    for (const width of [300, 420, 560]) {
      for (const offset of [away, toward, mm(0), mm(-2.37)]) {
        expect(labelFaults(arrangeTurnOver(mm(2 * Math.abs(offset)), offset, width))).toEqual([]);
      }
      expect(labelFaults(arrangeTurnOver(null, null, width))).toEqual([]);
    }
  });

  it('says in words what it shows', () => {
    expect(describeTurnOver(apart, away, 'in')).toContain('1/32 inch off the middle: away from');
    expect(describeTurnOver(apart, toward, 'mm')).toContain(
      'about 0.8 millimeters off the middle: toward',
    );
    expect(describeTurnOver(mm(0), mm(0), 'in')).toContain('not off');
    expect(describeTurnOver(null, null, 'in')).toContain('half the distance');
  });
});
