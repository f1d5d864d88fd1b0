import fc from 'fast-check';
import { render } from 'svelte/server';
import { describe, expect, it, test } from 'vitest';
import { type Mm, fit, inches, mm } from '../../../src/core/index.ts';
import { labelBox } from '../../../src/diagrams/drafting/label.ts';
import { overlap } from '../../../src/diagrams/drafting/point.ts';
import { arrangeFit, timesLife } from '../../../src/diagrams/fit/arrange.ts';
import { bothUnits } from '../../../src/diagrams/fit/bothUnits.ts';
import { describeFit } from '../../../src/diagrams/fit/describe.ts';
import FitDrawing from '../../../src/diagrams/fit/FitDrawing.svelte';
import { DETAIL_RADIUS, fitShapes } from '../../../src/diagrams/fit/geometry.ts';
import { arrangeScale } from '../../../src/diagrams/fit/scale.ts';

const shapesOf = (hole: Mm, pin: Mm) => fitShapes(hole, pin, fit({ hole, pin }));
const sheetOf = (hole: Mm, pin: Mm, width: number, unit: 'in' | 'mm') =>
  arrangeFit(shapesOf(hole, pin), fit({ hole, pin }), width, unit);

/** Numbers of a path's points, two by two. */
function pointsOf(d: string) {
  return [...d.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));
}

describe('the detail of the wall', () => {
  it('leaves as much between pin and board as the glue line is thick', () => {
    const { detail } = shapesOf(mm(9.525), mm(9.325));
    const right = Math.max(...detail.pin.map(({ x }) => x));
    const wall = Math.min(...detail.board.filter(({ y }) => Math.abs(y) < 0.05).map(({ x }) => x));
    expect(right).toBeCloseTo(9.325 / 2, 3);
    expect(wall - right).toBeCloseTo(0.1, 3);
    expect(detail.clash).toEqual([]);
  });

  it('shows how far a pin would have to be inside the board', () => {
    const { detail } = shapesOf(mm(9.525), mm(9.9));
    expect(detail.gap).toEqual([]);
    const xs = detail.clash.map(({ x }) => x);
    expect(Math.max(...xs)).toBeCloseTo(9.9 / 2, 3);
  });

  it('stays inside its window', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 20, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (hole, more) => {
          const { detail, window } = shapesOf(mm(hole), mm(hole + more));
          for (const { x, y } of Object.values(detail).flat()) {
            const far = Math.hypot(x - window.center.x, y - window.center.y);
            expect(far).toBeLessThan(DETAIL_RADIUS + 1e-6);
          }
        },
      ),
    );
  });

  it('says how many times as large as life it is, for 96 px to the inch', () => {
    expect(timesLife(96 / 25.4)).toBe(1);
    expect(timesLife((90 * 96) / 25.4)).toBe(90);
  });
});

describe('the scale of clearances', () => {
  const scaleOf = (clearance: number, width = 540) => {
    const found = fit({ hole: mm(10 + clearance), pin: mm(10) });
    return arrangeScale(found, width, 0, 'mm');
  };
  const markerOf = (clearance: number) =>
    pointsOf(scaleOf(clearance).strokes.find(({ pen }) => pen === 'arrow')!.d)[0]!.x;

  it('puts the mark where the clearance is, and at the end what is off the scale', () => {
    // 500 px for 1 mm, from -0.4 at 20 px.
    expect(markerOf(0)).toBeCloseTo(220, 1);
    expect(markerOf(0.1)).toBeCloseTo(270, 1);
    expect(markerOf(-0.3)).toBeCloseTo(70, 1);
    expect(markerOf(3)).toBeCloseTo(520, 1);
    expect(JSON.stringify(scaleOf(3).labels)).toContain('off the scale');
  });

  it('draws the good band and the published ranges at their numbers', () => {
    const { strokes } = scaleOf(0.1);
    const band = pointsOf(strokes.find(({ pen }) => pen === 'glue')!.d).map(({ x }) => x);
    expect([Math.min(...band), Math.max(...band)]).toEqual([245, 320]);
    const published = strokes.filter(({ pen }) => pen === 'outline').map(({ d }) => pointsOf(d));
    // Hoadley, 2 to 8 thousandths; EN 205, 0.1 mm on both sides.
    expect(published[0]!.map(({ x }) => x)).toEqual([245.4, 321.6]);
    expect(published.at(-1)!.map(({ x }) => x)).toEqual([320, 320]);
  });
});

describe('the sheet', () => {
  const pairs: readonly (readonly [Mm, Mm])[] = [
    [inches(3 / 8), mm(9.425)],
    [inches(3 / 8), mm(9.9)],
    [mm(10), mm(9.425)],
    [inches(5 / 16), mm(7.9)],
    [mm(8), mm(8)],
    [mm(12), mm(10)],
  ];

  test.each([280, 286, 320, 480, 559, 560, 700, 860, 1100])(
    'at %d px no label stands on another or runs off',
    (width) => {
      for (const [hole, pin] of pairs) {
        for (const unit of ['in', 'mm'] as const) {
          const sheet = sheetOf(hole, pin, width, unit);
          const boxes = sheet.labels.map((label) => ({
            text: label.text.in,
            box: labelBox(label),
          }));
          for (const [i, { text, box }] of boxes.entries()) {
            const at = `${text} at ${width} px, ${hole} and ${pin}`;
            expect(box.left, at).toBeGreaterThanOrEqual(-1);
            expect(box.right, at).toBeLessThanOrEqual(width + 1);
            expect(box.bottom, at).toBeLessThanOrEqual(sheet.height);
            for (const other of boxes.slice(i + 1)) {
              expect(overlap(box, other.box), `${at} and ${other.text}`).toBe(false);
            }
          }
        }
      }
    },
  );

  it('draws whatever a learner enters', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        (hole, pin) => {
          const { strokes, height } = sheetOf(mm(hole), mm(pin), 360, 'in');
          expect(Number.isFinite(height)).toBe(true);
          for (const { d } of strokes) expect(d).not.toMatch(/NaN|Infinity/);
        },
      ),
    );
  });
});

describe('in words', () => {
  it('gives both units, the reader’s first', () => {
    expect(bothUnits(0.1, 'in')).toBe('3.9\u00a0thousandths (100\u00a0µm)');
    expect(bothUnits(0.1, 'mm')).toBe('100\u00a0µm (3.9\u00a0thousandths)');
  });

  it('says the values, the verdict and the trend, on an image with a name', () => {
    const found = fit({ hole: mm(9.525), pin: mm(9.9) });
    expect(describeFit(mm(9.525), mm(9.9), found, 'mm')).toMatch(
      /^Hole 9.53 millimeters, pin 9.9 millimeters\. The pin is the larger, by 375.µm .* Verdict: ease the pin\. A thinner pin moves/,
    );
    const { body } = render(FitDrawing, {
      props: { hole: mm(9.525), pin: mm(9.425), unit: 'in', width: 360 },
    });
    expect(body).toContain('role="img"');
    expect(body).toMatch(/<title[^>]*>A pin in its hole/);
    expect(body).not.toMatch(/\sstyle=/);
  });
});
