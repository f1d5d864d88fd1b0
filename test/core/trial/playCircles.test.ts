import { packEnclose } from 'd3-hierarchy';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PlayCircles } from '../../../src/core/trial/playCircles.ts';

interface Row {
  readonly positions: readonly number[];
  readonly along: readonly number[];
  readonly across: readonly number[];
  readonly play: readonly number[];
}

/** A row of one to nine pins with holes off by about a tenth. */
const row = (equalPlay: boolean): fc.Arbitrary<Row> =>
  fc
    .array(
      fc.record({
        pitch: fc.double({ min: 12, max: 150, noNaN: true }),
        along: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        across: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        play: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.3, noNaN: true })),
      }),
      { minLength: 1, maxLength: 9 },
    )
    .map((pins) => ({
      positions: pins.map((_, j) =>
        pins.slice(0, j + 1).reduce((total, { pitch }) => total + pitch, 0),
      ),
      along: pins.map(({ along }) => along),
      across: pins.map(({ across }) => across),
      play: pins.map(({ play }) => (equalPlay ? 0.1 : play)),
    }));

function settle({ positions, along, across, play }: Row, mayTurn: boolean): PlayCircles {
  const circles = new PlayCircles(positions, play, mayTurn);
  circles.settle(along, across);
  return circles;
}

/** The greatest miss of a row at one shift and turn, written out anew. */
function missAt(row: Row, along: number, across: number, turn: number): number {
  return Math.max(
    ...row.positions.map(
      (x, j) =>
        Math.hypot(
          (row.along[j] as number) - along,
          (row.across[j] as number) - across - turn * x,
        ) - (row.play[j] as number),
    ),
  );
}

/** The least miss by brute force: every compass step that helps, then half the stride. */
function searched(row: Row, mayTurn: boolean): number {
  const span = (row.positions.at(-1) as number) - (row.positions[0] as number);
  const middle = (row.positions[0] as number) + span / 2;
  let [x, y, turn] = [0, 0, 0];
  let best = missAt(row, x, y, turn);
  for (let stride = 0.5; stride > 1e-8; stride /= 1.5) {
    for (let improved = true, rounds = 0; improved && rounds < 40; rounds++) {
      improved = false;
      for (let k = 0; k < 26; k++) {
        const dx = Math.cos((k * 2 * Math.PI) / 13) * stride;
        const dy = Math.sin((k * 2 * Math.PI) / 13) * stride;
        const spin = mayTurn && span > 0 ? ((Math.floor(k / 13) * 2 - 1) * stride * 2) / span : 0;
        for (const [sx, sy, st] of [
          [dx, dy, 0],
          [dx, dy, spin],
          [0, 0, spin],
        ] as const) {
          const miss = missAt(row, x + sx, y + sy - st * middle, turn + st);
          if (miss < best - 1e-13) {
            best = miss;
            x += sx;
            y += sy - st * middle;
            turn += st;
            improved = true;
          }
        }
      }
    }
  }
  return best;
}

describe('PlayCircles', () => {
  it('reports the miss that its own shift and turn give', () => {
    fc.assert(
      fc.property(row(false), fc.boolean(), (pins, mayTurn) => {
        const { along, across, turn, miss } = settle(pins, mayTurn);
        expect(missAt(pins, along, across, turn)).toBeCloseTo(miss, 8);
        if (!mayTurn) expect(turn).toBe(0);
      }),
      { numRuns: 1000 },
    );
  });

  it('finds a miss that a brute search never betters', () => {
    fc.assert(
      fc.property(row(false), fc.boolean(), (pins, mayTurn) => {
        const { miss } = settle(pins, mayTurn);
        expect(miss).toBeLessThanOrEqual(searched(pins, mayTurn) + 1e-6);
      }),
      { numRuns: 150 },
    );
  });

  it('agrees with the smallest enclosing circle of d3-hierarchy where plays are equal and nothing turns', () => {
    fc.assert(
      fc.property(row(true), (pins) => {
        const circle = packEnclose(
          pins.along.map((x, j) => ({ x, y: pins.across[j] as number, r: 0 })),
        );
        const { along, across, miss } = settle(pins, false);
        expect(miss + 0.1).toBeCloseTo(circle.r, 5);
        expect(along).toBeCloseTo(circle.x, 4);
        expect(across).toBeCloseTo(circle.y, 4);
      }),
      { numRuns: 2000 },
    );
  });

  it('agrees with it too where plays differ: less play is a larger circle to enclose', () => {
    fc.assert(
      fc.property(row(false), (pins) => {
        const circle = packEnclose(
          pins.along.map((x, j) => ({
            x,
            y: pins.across[j] as number,
            r: 1 - (pins.play[j] as number),
          })),
        );
        expect(settle(pins, false).miss + 1).toBeCloseTo(circle.r, 5);
      }),
      { numRuns: 2000 },
    );
  });

  it('never does worse for being free to turn', () => {
    fc.assert(
      fc.property(row(false), (pins) => {
        expect(settle(pins, true).miss).toBeLessThanOrEqual(settle(pins, false).miss + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  it('takes no turn where none helps: one pin, or one tight pin between roomy ones', () => {
    const one = settle({ positions: [50], along: [0.2], across: [-0.1], play: [0.1] }, true);
    expect(one).toMatchObject({ along: 0.2, across: -0.1, turn: 0, miss: -0.1 });
    const roomy = settle(
      { positions: [20, 120, 220], along: [0.1, 0, 0], across: [0, 0.1, 0.2], play: [1, 0.05, 1] },
      true,
    );
    expect(roomy.turn).toBe(0);
    expect(roomy.miss).toBeCloseTo(-0.05, 12);
  });

  it('takes the least turn that frees a tight pin, not the middle of those that do', () => {
    const pins = { positions: [0, 100], along: [0, 0], across: [0, 1], play: [0.1, 0.6] };
    const { turn, miss } = settle(pins, true);
    expect(miss).toBeCloseTo(-0.1, 12);
    expect(turn).toBeCloseTo((1 - 0.5) / 100, 12);
  });

  it('brings two pins level where nothing else matters', () => {
    const { turn, miss } = settle(
      { positions: [30, 130], along: [0.1, -0.1], across: [0, 0.4], play: [0.1, 0.1] },
      true,
    );
    expect(turn).toBeCloseTo(0.004, 9);
    expect(miss).toBeCloseTo(0, 9);
  });

  it('stays finite for two pins at one place and for holes that are right', () => {
    const twins = settle(
      { positions: [50, 50, 90], along: [0, 0.1, 0], across: [0, 0, 0.1], play: [0.1, 0.1, 0.1] },
      true,
    );
    expect(Number.isFinite(twins.miss + twins.turn + twins.across)).toBe(true);
    const right = settle(
      { positions: [50, 90, 130], along: [0, 0, 0], across: [0, 0, 0], play: [0.1, 0.1, 0.1] },
      true,
    );
    expect(right).toMatchObject({ along: 0, across: 0, turn: 0, miss: -0.1 });
  });

  it('may stop at a limit, but only where the miss is beyond it', () => {
    fc.assert(
      fc.property(row(false), fc.boolean(), (pins, mayTurn) => {
        const exact = settle(pins, mayTurn).miss;
        const circles = new PlayCircles(pins.positions, pins.play, mayTurn);
        circles.settle(pins.along, pins.across, 0);
        if (exact <= 0) expect(circles.miss).toBeCloseTo(exact, 9);
        else expect(circles.miss).toBeGreaterThan(0);
        expect(circles.miss).toBeLessThanOrEqual(exact + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });
});
