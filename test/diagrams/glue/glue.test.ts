import fc from 'fast-check';
import { render } from 'svelte/server';
import { describe, expect, it, test } from 'vitest';
import { glueRoom, mm } from '../../../src/core/index.ts';
import { labelBox } from '../../../src/diagrams/drafting/label.ts';
import { overlap } from '../../../src/diagrams/drafting/point.ts';
import { arrangeGlue } from '../../../src/diagrams/glue/arrange.ts';
import { describeGlue } from '../../../src/diagrams/glue/describe.ts';
import { type GlueHole, glueShapes } from '../../../src/diagrams/glue/geometry.ts';
import GlueDrawing from '../../../src/diagrams/glue/GlueDrawing.svelte';
import { arrangeVolumes } from '../../../src/diagrams/glue/volumes.ts';

const HOLE: GlueHole = {
  hole: mm(10),
  pin: mm(9.9),
  engagement: mm(12),
  allowance: mm(3),
  cone: mm(3),
  flutes: 0,
  fluteArea: 0,
  glue: 200,
  limit: mm(19),
};

const shapesOf = (change: Partial<GlueHole> = {}) => {
  const hole = { ...HOLE, ...change };
  return glueShapes(hole, glueRoom(hole));
};

const area = (diameter: number) => (Math.PI / 4) * diameter ** 2;

describe('where the glue stands, put in at the bottom', () => {
  it('fills the cone like the cube of its height', () => {
    const cone = (area(10) * 3) / 3;
    expect(shapesOf({ glue: 0 }).glueTop).toBeCloseTo(18, 9);
    expect(shapesOf({ glue: cone / 8 }).glueTop).toBeCloseTo(18 - 1.5, 9);
    expect(shapesOf({ glue: cone }).glueTop).toBeCloseTo(15, 9);
  });

  it('then the end gap, then the ring around the pin', () => {
    const below = area(10) * (1 + 1);
    expect(shapesOf({ glue: below }).glueTop).toBeCloseTo(15 - 1, 9);
    const home = area(10) * (1 + 3);
    expect(shapesOf({ glue: home }).glueTop).toBeCloseTo(12, 9);
    const half = home + (area(10) - area(9.9)) * 6;
    expect(shapesOf({ glue: half }).glueTop).toBeCloseTo(6, 9);
  });

  it('rises to the mouth where there is more than fits, and holds a plain pin off', () => {
    const plain = shapesOf({ glue: 600 });
    expect(plain.standsOff).toBeGreaterThan(1);
    expect(plain.pinEnd).toBeCloseTo(12 - plain.standsOff, 9);
    // What lies under the pin and around it is all of the glue.
    const held = area(10) * (1 + 15 - plain.pinEnd) + (area(10) - area(9.9)) * plain.pinEnd;
    expect(held).toBeCloseTo(600, 6);
    expect(plain.glueTop).toBeCloseTo(0, 6);
    expect(shapesOf({ glue: 600, flutes: 8, fluteArea: 0.3 })).toMatchObject({
      standsOff: 0,
      pinEnd: 12,
      glueTop: 0,
    });
  });

  it('shows the far face where it is near, and breaks the board off where it is not', () => {
    expect(shapesOf().far).toEqual({ y: 19, real: true });
    expect(shapesOf({ limit: mm(600) }).far).toEqual({ y: 24, real: false });
  });
});

describe('room and glue as volumes', () => {
  const barsOf = (change: Partial<GlueHole>) => {
    const hole = { ...HOLE, ...change };
    const room = glueRoom(hole);
    return { room, bars: arrangeVolumes(room, hole.glue, { middle: 150, top: 0 }) };
  };
  const heightOf = (d: string) => {
    const ys = [...d.matchAll(/,(-?[\d.]+)/g)].map(([, y]) => Number(y));
    return Math.max(...ys) - Math.min(...ys);
  };

  it('are drawn to one scale', () => {
    const { room, bars } = barsOf({ glue: 250 });
    const glue = heightOf(bars.strokes.find(({ pen }) => pen === 'glue')!.d);
    const whole = heightOf(bars.strokes.find(({ pen }) => pen === 'outline')!.d);
    expect(glue / whole).toBeCloseTo(250 / room.total, 2);
  });

  it('show what is over on top of the room, in words too', () => {
    const { room, bars } = barsOf({ glue: 450 });
    const over = heightOf(bars.strokes.find(({ pen }) => pen === 'phantom')!.d);
    const held = heightOf(bars.strokes.find(({ pen }) => pen === 'glue')!.d);
    expect(over / held).toBeCloseTo(room.over / room.total, 2);
    expect(bars.labels.map(({ text }) => text.in)).toContain('over');
  });
});

describe('the sheet', () => {
  const holes: readonly Partial<GlueHole>[] = [
    {},
    { glue: 0 },
    { glue: 30 },
    { glue: 800 },
    { glue: 800, flutes: 10, fluteArea: 0.3 },
    { allowance: mm(0), engagement: mm(15), glue: 250 },
    { allowance: mm(6.35), engagement: mm(8.65), glue: 500 },
    { hole: mm(6), pin: mm(6.1), cone: mm(1.8), limit: mm(600), glue: 120 },
  ];

  test.each([280, 286, 320, 480, 620, 759, 760, 864, 1100])(
    'at %d px no label stands on another or runs off',
    (width) => {
      for (const change of holes) {
        const hole = { ...HOLE, ...change };
        const room = glueRoom(hole);
        const sheet = arrangeGlue(glueShapes(hole, room), room, hole.glue, width, 'both', true);
        const boxes = sheet.labels.map((label) => ({ text: label.text.in, box: labelBox(label) }));
        for (const [i, { text, box }] of boxes.entries()) {
          const at = `${text} at ${width} px, ${JSON.stringify(change)}`;
          expect(box.left, at).toBeGreaterThanOrEqual(-1);
          expect(box.right, at).toBeLessThanOrEqual(width + 1);
          expect(box.bottom, at).toBeLessThanOrEqual(sheet.height);
          for (const other of boxes.slice(i + 1)) {
            expect(overlap(box, other.box), `${at} and ${other.text}`).toBe(false);
          }
        }
      }
    },
  );

  it('draws any sensible hole', () => {
    const size = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 20, noNaN: true }),
        fc.double({ min: 3, max: 20, noNaN: true }),
        size,
        size,
        size,
        fc.nat(24),
        fc.double({ min: 0, max: 5000, noNaN: true }),
        (hole, pin, engagement, allowance, cone, flutes, glue) => {
          const drawn: GlueHole = {
            ...{
              hole: mm(hole),
              pin: mm(pin),
              engagement: mm(engagement),
              allowance: mm(allowance),
            },
            ...{ cone: mm(cone), flutes, fluteArea: 0.3, glue, limit: mm(100) },
          };
          const room = glueRoom(drawn);
          const sheet = arrangeGlue(glueShapes(drawn, room), room, glue, 360, 'both', false);
          expect(Number.isFinite(sheet.height)).toBe(true);
          for (const { d } of sheet.strokes) expect(d).not.toMatch(/NaN|Infinity/);
        },
      ),
    );
  });
});

describe('in words', () => {
  it('says room by part, glue, outcome and trend', () => {
    const hole = { ...HOLE, glue: 600 };
    expect(describeGlue(hole, glueRoom(hole), 'mm')).toMatch(
      /^A pin in its hole with .* millimeters of pin in the hole.* Room for 0\.33 ml of glue: point 0\.08 ml, end gap 0\.24 ml, around 0\.02 ml\. Glue put in: 0\.6 ml\. 0\.27 ml more .* stands off by (about )?3\.5 millimeters\./,
    );
  });

  it('is an image with a name, without styles, in both units on the server', () => {
    const { body } = render(GlueDrawing, {
      props: { hole: { ...HOLE, glue: 400 }, unit: 'both', width: 360 },
    });
    expect(body).toContain('role="img"');
    expect(body).toMatch(/<title[^>]*>Room for glue in a hole/);
    expect(body).not.toMatch(/\sstyle=/);
  });
});
