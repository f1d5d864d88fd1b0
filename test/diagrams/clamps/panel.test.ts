import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Mm, clamps, inches, mm } from '../../../src/core/index.ts';
import { spreadClamps } from '../../../src/core/strength/clamps.ts';
import {
  type ClampedPanel,
  arrangePanel,
  describePanel,
  glueLine,
} from '../../../src/diagrams/clamps/panel.ts';
import { labelFaults } from '../../support/labelFaults.ts';

function panel(length: Mm, boardWidth: Mm, caul: Mm, own?: number): ClampedPanel {
  const found = clamps({ length, thickness: inches(3 / 4), boardWidth, caul, pressure: 1 });
  const count = own ?? found.count;
  return { length, boardWidth, caul, found, count, spread: spreadClamps(found, length, count) };
}

const sizes = {
  length: fc.double({ min: 200, max: 1500, noNaN: true }).map(mm),
  width: fc.double({ min: 25, max: 250, noNaN: true }).map(mm),
  caul: fc.double({ min: 0, max: 100, noNaN: true }).map(mm),
};

describe('the glue line under its clamps', () => {
  test('with as many clamps as the rule asks for, none of it is bare', () => {
    fc.assert(
      fc.property(sizes.length, sizes.width, sizes.caul, (length, width, caul) => {
        expect(glueLine(panel(length, width, caul)).bare).toEqual([]);
      }),
    );
  });

  test('with fewer, what is bare and what is pressed make up its length', () => {
    fc.assert(
      fc.property(
        sizes.length,
        sizes.width,
        sizes.caul,
        fc.integer({ min: 1, max: 6 }),
        (length, width, caul, count) => {
          const { bare, reaches } = glueLine(panel(length, width, caul, count));
          const free = bare.reduce((sum, [from, to]) => sum + to - from, 0);
          const pressed = Math.min(length, count * (reaches[0]![1] - reaches[0]![0]));
          expect(free + pressed).toBeCloseTo(length, 6);
        },
      ),
    );
  });

  test('two clamps on the stand’s top leave it bare in the middle and at both ends', () => {
    const top = panel(inches(24), inches(4.625), inches(3 / 4), 2);
    const { bare } = glueLine(top);
    expect(bare.map(([from, to]) => (to - from) / 25.4)).toEqual([
      expect.closeTo(0.625, 9),
      expect.closeTo(1.25, 9),
      expect.closeTo(0.625, 9),
    ]);
    expect(top.spread.gap).toBeCloseTo(1.25 * 25.4, 9);
    const sheet = arrangePanel(top, 800, 'in');
    expect(sheet.strokes.filter(({ pen }) => pen === 'sign')).toHaveLength(3);
    expect(sheet.labels.filter(({ caution }) => caution)).toHaveLength(1);
  });

  test('spreads at 45°: as far to the side as through caul and board', () => {
    const sheet = arrangePanel(panel(inches(24), inches(4.625), inches(3 / 4)), 800, 'in');
    const cone = sheet.strokes.filter(({ hatch }) => hatch === 'even')[0]!;
    const [apex, one, other] = [...cone.d.matchAll(/([\d.]+),([\d.]+)/g)].map(([, x, y]) => ({
      x: Number(x),
      y: Number(y),
    }));
    const depth = Math.abs(one!.y - apex!.y);
    expect(Math.abs(one!.x - apex!.x)).toBeCloseTo(depth, 0);
    expect(Math.abs(other!.x - apex!.x)).toBeCloseTo(depth, 0);
  });

  test('every other clamp lies above the boards; the rest is hidden by them', () => {
    const five = panel(inches(48), inches(4), inches(1), 5);
    const strokes = arrangePanel(five, 800, 'in').strokes;
    expect(strokes.filter(({ pen }) => pen === 'hidden')).toHaveLength(2);
  });

  test.each([280, 340, 560, 860])('keeps its numbers apart and on the sheet at %i px', (width) => {
    for (const length of [8, 12, 24, 36, 60]) {
      for (const board of [1, 2.5, 4.625, 10]) {
        for (const caul of [0, 0.75, 4]) {
          for (const count of [undefined, 1, 2, 3]) {
            const one = panel(inches(length), inches(board), inches(caul), count);
            for (const unit of ['in', 'mm', 'both'] as const) {
              expect(
                labelFaults(arrangePanel(one, width, unit)),
                `${length} × ${board} in, caul ${caul}, ${count ?? 'all'}, ${unit}`,
              ).toEqual([]);
            }
          }
        }
      }
    }
  });

  test('is told in sentences with its numbers', () => {
    const text = describePanel(panel(inches(24), inches(4.625), inches(3 / 4), 2), 'in');
    expect(text).toContain('each presses 10 3/4 inches of');
    expect(text).toContain('1 1/4 inches of the glue line is bare');
  });
});
