import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, planJoint } from '../../../src/core/index.ts';
import { canBeMade } from '../../../src/core/piece/orderOfWork.ts';
import { STRIP, arrangeSticks, checkBars } from '../../../src/diagrams/story-stick/arrangeStick.ts';
import { CLEAR, cutStick } from '../../../src/diagrams/story-stick/cutStick.ts';
import { drawnPart, papers } from '../../../src/diagrams/story-stick/papers.ts';
import { ordinaryJoint, sensibleSpec } from '../../support/joints.ts';

const paper = fc.constantFrom(papers.letter, papers.a4);

describe('a story stick', () => {
  it.each([
    { args: [200, [30, 170], 230, 220], stretches: [[0, 200]] },
    {
      args: [400, [38, 362], 230, 220],
      stretches: [
        [0, 230],
        [230, 400],
      ],
    },
    // A pin at the cut: the cut goes before it.
    {
      args: [400, [38, 232, 362], 230, 220],
      stretches: [
        [0, 226],
        [226, 400],
      ],
    },
    // Pins closer than the cut wants: it goes midway.
    {
      args: [300, [220, 228, 236], 230, 220],
      stretches: [
        [0, 214],
        [214, 300],
      ],
    },
  ] as const)('of $args is cut into $stretches', ({ args, stretches }) => {
    const [length, marks, first, next] = args;
    expect(cutStick(length, marks, first, next).map(({ from, to }) => [from, to])).toEqual(
      stretches,
    );
  });

  it('is cut without a gap, into what fits, clear of marks that leave room', () => {
    const marks = fc
      .array(fc.double({ min: 4, max: 1500, noNaN: true }), { minLength: 1, maxLength: 40 })
      .map((list) => list.sort((one, other) => one - other));
    fc.assert(
      fc.property(marks, fc.double({ min: 20, max: 2000, noNaN: true }), (places, length) => {
        const inside = places.filter((at) => at < length);
        const stretches = cutStick(length, inside.length ? inside : [length / 2], 234, 223);
        expect(stretches[0]!.from).toBe(0);
        expect(stretches.at(-1)!.to).toBe(length);
        stretches.forEach(({ from, to }, i) => {
          expect(to).toBeGreaterThan(from);
          expect(to - from).toBeLessThanOrEqual((i === 0 ? 234 : 223) + 1e-6);
          if (i > 0) expect(from).toBe(stretches[i - 1]!.to);
        });
        const cuts = stretches.slice(1).map(({ from }) => from);
        const gaps = inside.slice(1).map((at, i) => at - inside[i]!);
        if (Math.min(Infinity, ...gaps) >= 2 * CLEAR) {
          for (const cut of cuts) {
            const nearest = Math.min(...inside.map((at) => Math.abs(at - cut)));
            expect(nearest).toBeGreaterThanOrEqual(CLEAR - 1e-6);
          }
        }
      }),
      { numRuns: 500 },
    );
  });

  it('carries every pin once, at its place, on paper that holds it', () => {
    fc.assert(
      fc.property(sensibleSpec, paper, (spec, on) => {
        const plan = planJoint(spec);
        fc.pre(canBeMade(plan));
        const page = drawnPart(on);
        const sticks = arrangeSticks(plan, on);
        const rows = sticks.length === 1 ? [plan.positions] : [plan.positions, plan.secondRow];
        sticks.forEach((stick, i) => {
          const strips = stick.pages.flat();
          expect(strips).toHaveLength(stick.strips);
          const marks = strips.flatMap((strip) => strip.marks);
          expect(marks.map(({ pin }) => pin)).toEqual(rows[i]!.map((_, n) => n + 1));
          expect(marks.map(({ along }) => along)).toEqual(rows[i]);
          for (const strip of strips) {
            expect(strip.x + STRIP).toBeLessThan(page.width - 12);
            expect(strip.end).toBeLessThanOrEqual(page.height);
            for (const mark of strip.marks) {
              expect(mark.y - strip.start).toBeCloseTo(mark.along - strip.from, 9);
            }
          }
        });
      }),
      { numRuns: 300 },
    );
  });

  it('of a leg has a strip for each apron where their rows differ', () => {
    const leg = ordinaryJoint('leg', 'mm', mm(18));
    expect(arrangeSticks(planJoint(leg), papers.a4).map(({ row }) => row)).toEqual(['joint']);
    const staggered = planJoint({ ...leg, stagger: mm(20) });
    const sticks = arrangeSticks(staggered, papers.a4);
    expect(sticks.map(({ row }) => row)).toEqual(['first apron', 'second apron']);
    const first = sticks.map(({ pages }) => pages[0]![0]!.marks[0]!.along);
    expect(first[1]! - first[0]!).toBeCloseTo(20, 9);
  });

  it('has its check bars on the paper, in both systems and both ways', () => {
    for (const on of [papers.letter, papers.a4]) {
      const page = drawnPart(on);
      const bars = checkBars(on);
      expect(bars.map(({ length, upright }) => [length, upright])).toEqual([
        [100, false],
        [101.6, false],
        [100, true],
        [101.6, true],
      ]);
      for (const { x, y, length, upright } of bars) {
        expect(x + (upright ? 0 : length)).toBeLessThanOrEqual(page.width);
        expect(y + (upright ? length : 0)).toBeLessThanOrEqual(page.height);
      }
    }
  });
});
