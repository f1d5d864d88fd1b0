import { render } from 'svelte/server';
import { describe, expect, it, test } from 'vitest';
import { inches, mm } from '../../../src/core/index.ts';
import { arrangeBehind } from '../../../src/diagrams/behind-the-board/arrange.ts';
import BehindDrawing from '../../../src/diagrams/behind-the-board/BehindDrawing.svelte';
import { describeBehind } from '../../../src/diagrams/behind-the-board/describe.ts';
import { type Drilled, behindShapes } from '../../../src/diagrams/behind-the-board/geometry.ts';
import { labelFaults } from '../../support/labelFaults.ts';

const drilled = (more: Partial<Drilled> = {}): Drilled => ({
  bushing: inches(1),
  standoff: mm(0),
  stop: inches(1.5),
  slip: mm(0),
  tip: mm(2.86),
  thickness: inches(3 / 4),
  behind: 'waste',
  waste: inches(3 / 4),
  diameter: inches(3 / 8),
  ...more,
});

describe('the bit in the board', () => {
  it('ends where stop, slip and point take it from the collar', () => {
    const { collar, mark, corner, point } = behindShapes(drilled({ slip: mm(3) }));
    expect(mark - collar).toBeCloseTo(3, 9);
    expect(corner - mark).toBeCloseTo(inches(1.5), 9);
    expect(point - corner).toBeCloseTo(2.86, 9);
    expect(corner).toBeCloseTo(inches(1 / 2) + 3, 9);
  });

  it('has a waste board, the bench or nothing but a hand under it', () => {
    const under = (behind: Drilled['behind']) => behindShapes(drilled({ behind }));
    expect(under('waste').waste).toEqual({ from: inches(3 / 4), to: inches(3 / 2) });
    expect(under('bench').waste).toBeNull();
    expect(under('bench').bench.from).toBe(inches(3 / 4));
    expect(under('hand').overBench).toBe(false);
  });
});

describe('the drawing', () => {
  const sheet = (more: Partial<Drilled>) =>
    arrangeBehind(behindShapes(drilled(more)), 320, { unit: 'in', set: [] });
  const warns = (more: Partial<Drilled>) => sheet(more).strokes.some(({ pen }) => pen === 'sign');

  it('draws a hand only where one is held there, and says what is wrong with it', () => {
    const words = (more: Partial<Drilled>) => sheet(more).labels.map(({ text }) => text.in);
    expect(words({ behind: 'hand' })).toContain('no hand here');
    expect(words({ behind: 'waste' })).not.toContain('no hand here');
  });

  it('warns where the point is in the bench or a hand, not in the waste board', () => {
    expect(warns({ slip: mm(8) })).toBe(false);
    expect(warns({ slip: mm(8), behind: 'bench' })).toBe(true);
    expect(warns({ slip: mm(8), behind: 'hand' })).toBe(true);
    expect(warns({ behind: 'hand' })).toBe(false);
  });

  test.each(['waste', 'bench', 'hand'] as const)('on %s: words stay apart', (behind) => {
    for (const thickness of [9.5, 12.7, 19.05, 25, 38]) {
      for (const slip of [0, 0.8, 3, 9]) {
        for (const stop of [25.4, 31, 38.1, 50, 63]) {
          for (const width of [280, 320, 480, 820]) {
            for (const unit of ['in', 'mm', 'both'] as const) {
              const more = {
                behind,
                thickness: mm(thickness),
                slip: mm(slip),
                stop: mm(stop),
              };
              const found = labelFaults(
                arrangeBehind(behindShapes(drilled(more)), width, { unit, set: [] }),
              );
              expect(found, JSON.stringify({ ...more, width, unit })).toEqual([]);
            }
          }
        }
      }
    }
  });

  it('says where the point ends', () => {
    const says = (more: Partial<Drilled>) => describeBehind(behindShapes(drilled(more)), 'mm');
    expect(says({})).toContain("The bit's point ends about 3.5 millimeters short of the far face.");
    expect(says({ slip: mm(8), behind: 'hand' })).toContain('in the hand');
    const { body } = render(BehindDrawing, { props: { drilled: drilled(), unit: 'both' } });
    expect(body).toContain('role="img"');
    expect(body).not.toMatch(/\sstyle=/);
  });
});
