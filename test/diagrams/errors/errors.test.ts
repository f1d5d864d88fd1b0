import { render } from 'svelte/server';
import { describe, expect, it, test } from 'vitest';
import {
  type ClosingOdds,
  type DrilledRow,
  drilledRow,
  mm,
  wilson,
} from '../../../src/core/index.ts';
import type { Sheet, Stroke } from '../../../src/diagrams/drafting/ink.ts';
import { magnify } from '../../../src/diagrams/errors/magnify.ts';
import { arrangeOdds, describeOdds, ofHundred } from '../../../src/diagrams/errors/odds.ts';
import { arrangeRow, describeRow } from '../../../src/diagrams/errors/row.ts';
import SizedDrawing from '../../../src/diagrams/errors/SizedDrawing.svelte';
import {
  arrangeTogether,
  common,
  describeTogether,
} from '../../../src/diagrams/errors/together.ts';
import { labelFaults } from '../../support/labelFaults.ts';

function rowOf(pins: number, index: number, bias = 0): DrilledRow {
  return drilledRow(
    {
      positions: Array.from({ length: pins }, (_, j) => mm(38 + 79 * j)),
      radialPlay: mm(0.1),
      sigmaAlong: mm(0.05),
      sigmaAcross: mm(0.05),
      bias: { along: mm(0), across: mm(bias) },
      length: mm(76 + 79 * (pins - 1)),
      mayTurn: true,
      seed: 1,
    },
    index,
  );
}

/** Center and radius of a stroke that is a circle. */
function circleOf({ d }: Stroke): { x: number; y: number; radius: number } | null {
  const [, left, y, r] = /^M(-?[\d.]+),(-?[\d.]+)A([\d.]+),\3 0 1 1/.exec(d) ?? [];
  return left === undefined
    ? null
    : { x: Number(left) + Number(r), y: Number(y), radius: Number(r) };
}

function circles(sheet: Sheet, pens: readonly string[]) {
  return sheet.strokes.flatMap((stroke) => {
    const found = pens.includes(stroke.pen) ? circleOf(stroke) : null;
    return found ? [{ ...found, caution: stroke.caution === true }] : [];
  });
}

describe('the row of targets', () => {
  const spacing = 79;
  const [fitting, binding] = [true, false].map((fits) =>
    Array.from({ length: 60 }, (_, k) => rowOf(4, k)).find((row) => row.fits === fits)!,
  ) as [DrilledRow, DrilledRow];

  test.each([
    ['goes together', fitting],
    ['binds', binding],
  ])('is drawn to the scale that it says: a row that %s', (_, row) => {
    const sheet = arrangeRow({ row, spacing }, 640, 'in');
    const says = sheet.labels.map(({ text }) => text.in).find((text) => text.includes(': 1'))!;
    const scale = (Number(/(\d+) : 1/.exec(says)![1]) * 96) / 25.4;
    const plays = circles(sheet, ['hole']);
    const dots = circles(sheet, ['arrow']).slice(0, row.pins.length);
    expect(plays).toHaveLength(row.pins.length);
    row.pins.forEach(({ left, play, goesIn }, j) => {
      const center = plays[j]!;
      const dot = dots[j]!;
      expect(center.radius).toBeCloseTo(play * scale, 0.9);
      expect(dot.x - center.x).toBeCloseTo(left.along * scale, 0.5);
      expect(center.y - dot.y).toBeCloseTo(left.across * scale, 0.5);
      expect(dot.caution).toBe(!goesIn);
      const inside = Math.hypot(dot.x - center.x, dot.y - center.y) <= center.radius + 0.3;
      expect(inside).toBe(goesIn);
    });
  });

  it('names the pin that stops the row, in words', () => {
    const texts = (row: DrilledRow) =>
      arrangeRow({ row, spacing }, 640, 'in').labels.map(({ text }) => text.in);
    expect(texts(binding)).toContain(`${binding.stoppedBy! + 1} stops`);
    expect(texts(fitting).filter((text) => text.includes('stops'))).toEqual([]);
  });

  it('keeps the targets as large when all of B is far off', () => {
    const radius = (bias: number) =>
      circles(arrangeRow({ row: rowOf(4, 0, bias), spacing }, 640, 'in'), ['hole'])[0]!.radius;
    expect(radius(2)).toBe(radius(0.3));
  });

  it('says in its description which pins are outside', () => {
    const outside = binding.pins.flatMap(({ goesIn }, j) => (goesIn ? [] : [`${j + 1} outside`]));
    for (const words of outside) {
      expect(describeRow({ row: binding, spacing }, 'mm')).toContain(words);
    }
    expect(outside.length).toBeGreaterThan(0);
    expect(describeRow({ row: binding, spacing }, 'mm')).toContain(
      '79 millimeters from one to the next',
    );
  });
});

describe('the circles laid on one another', () => {
  it('have a part in common just where the row goes together', () => {
    const seen = new Set<boolean>();
    for (let index = 0; index < 80; index++) {
      const row = rowOf(3, index);
      // A row that only just fits or binds is lost in the corners of the drawn circles.
      if (Math.abs(row.miss) < 1e-3) continue;
      seen.add(row.fits);
      const area = arrangeTogether(row, 340).strokes.filter(({ pen }) => pen === 'pin');
      expect(area.length > 0, String(index)).toBe(row.fits);
    }
    expect(seen).toEqual(new Set([true, false]));
  });

  it('can overlap two by two and have no spot in common', () => {
    const centers = [0, 1, 2].map((k) => ({
      x: Math.cos((k * 2 * Math.PI) / 3),
      y: Math.sin((k * 2 * Math.PI) / 3),
    }));
    const radii = [0.95, 0.95, 0.95];
    expect(common(centers, radii)).toEqual([]);
    for (const pair of [
      [0, 1],
      [1, 2],
      [0, 2],
    ]) {
      const of = <T>(all: readonly T[]) => pair.map((k) => all[k]!);
      expect(common(of(centers), of(radii)).length).toBeGreaterThan(2);
    }
  });

  it('are drawn to scale, as far apart as the pins disagree', () => {
    const row = rowOf(3, 0);
    const sheet = arrangeTogether(row, 340);
    const scale = (Number(/(\d+) : 1/.exec(sheet.labels.at(-1)!.text.in)![1]) * 96) / 25.4;
    const drawn = circles(sheet, ['outline', 'phantom']);
    row.pins.forEach(({ left, play }, j) => {
      expect(drawn[j]!.x).toBeCloseTo(170 + left.along * scale, 0.5);
      expect(drawn[j]!.y).toBeCloseTo(170 - left.across * scale, 0.5);
      expect(drawn[j]!.radius).toBeCloseTo(play * scale, 0.9);
    });
  });

  it('say whether they have a part in common', () => {
    const rows = Array.from({ length: 40 }, (_, k) => rowOf(3, k));
    expect(describeTogether(rows.find(({ fits }) => fits)!)).toContain('have a part in common');
    expect(describeTogether(rows.find(({ fits }) => !fits)!)).toMatch(
      /no part in common.*circles? of pin \d/,
    );
  });
});

describe('the plot of odds', () => {
  const all = Array.from({ length: 10 }, (_, i): ClosingOdds => ({
    ...wilson(1000 - 90 * i, 1000),
    flushable: wilson(900 - 90 * i, 1000),
    flush: wilson(500 - 40 * i, 1000),
  }));
  const sheet = arrangeOdds(all, 3, 640);
  const tickAt = (text: string) =>
    sheet.labels.find(({ text: { in: one }, anchor }) => one === text && anchor === 'end')!.y;
  const [zero, hundred] = [tickAt('0'), tickAt('100')];

  it('puts each dot and both ends of its bar where the axis says', () => {
    const dots = circles(sheet, ['arrow']);
    all.forEach(({ probability, low, high }, i) => {
      const y = (share: number) => zero + (hundred - zero) * share;
      expect(dots[i]!.y).toBeCloseTo(y(probability), 0.9);
      const bar = sheet.strokes.find(
        ({ pen, d }) => pen === 'thin' && d.startsWith(`M${Math.round(dots[i]!.x * 10) / 10},`),
      )!;
      const [from, to] = [...bar.d.matchAll(/,(-?[\d.]+)/g)].map(([, value]) => Number(value));
      expect(from).toBeCloseTo(y(low), 0.9);
      expect(to).toBeCloseTo(y(high), 0.9);
    });
  });

  it("shows the reader's number of pins in the accent", () => {
    expect(sheet.labels.filter(({ set }) => set).map(({ text }) => text.in)).toEqual(['3']);
  });

  it('counts in tries, and never rounds to sure what is not', () => {
    expect([0, 0.004, 0.005, 0.82, 0.994, 0.995, 0.999, 1].map(ofHundred)).toEqual([
      '0',
      'under 1',
      '1',
      '82',
      '99',
      'over 99',
      'over 99',
      '100',
    ]);
    expect(describeOdds(all, 3)).toContain(
      'Of 100 joints with 3 pins, 82 go together, with 95 % confidence 79 to 84',
    );
  });
});

describe('magnify', () => {
  it.each([
    [0.25, 50, 40],
    [0.12, 60, 120],
    [5, 20, 2],
    [0, 50, 1000],
  ])('draws %d mm in %d px at %d : 1', (extent, room, times) => {
    const found = magnify(extent, room);
    expect(found.times).toBe(times);
    expect(found.scale).toBeCloseTo((times * 96) / 25.4, 9);
  });
});

describe('all three', () => {
  const all = Array.from({ length: 10 }, (_, i): ClosingOdds => {
    const odds = wilson(1000 - 90 * i, 1000);
    return { ...odds, flush: odds, flushable: odds };
  });

  it.each([280, 360, 640, 870])('keep their words apart and on the sheet, %d px wide', (width) => {
    for (let pins = 1; pins <= 10; pins++) {
      for (let index = 0; index < 12; index++) {
        const row = rowOf(pins, index, index % 3);
        const sheets = [
          arrangeRow({ row, spacing: 79.375 }, width, 'both'),
          arrangeTogether(row, width),
          arrangeOdds(all, pins, width),
        ];
        for (const sheet of sheets) {
          expect(labelFaults(sheet), `${pins} pins, row ${index}`).toEqual([]);
        }
      }
    }
  });

  it('are named images without a style attribute', () => {
    const row = rowOf(3, 0);
    const { body } = render(SizedDrawing, {
      props: {
        arrange: (width: number) => arrangeRow({ row, spacing: 79 }, width, 'both'),
        title: 'Targets',
        description: 'One for each pin.',
        unit: 'both',
      },
    });
    expect(body).toContain('role="img"');
    expect(body).toMatch(/<title[^>]*>Targets<\/title>.*<desc[^>]*>One for each pin\.<\/desc>/s);
    expect(body).not.toMatch(/\sstyle=/);
  });
});
