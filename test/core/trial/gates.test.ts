import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Gates } from '../../../src/core/trial/gates.ts';
import { PlayCircles } from '../../../src/core/trial/playCircles.ts';

const pins = fc.array(
  fc.record({
    along: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
    across: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    play: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
  }),
  { minLength: 1, maxLength: 7 },
);

/**
 * By how much the best shift and turn still miss being in and flush, by a search of its own: the
 * flush ends are circles that are so wide along that only across counts.
 */
function searchedShut(
  positions: readonly number[],
  found: readonly { along: number; across: number; play: number }[],
  length: number,
  flush: number,
  mayTurn: boolean,
): number {
  const shut = (x: number, y0: number, y1: number): number =>
    Math.max(
      ...found.map(({ along, across, play }, j) => {
        const y = y0 + ((y1 - y0) * (positions[j] as number)) / length;
        return Math.hypot(along - x, across - y) - play;
      }),
      Math.abs(y0) - flush,
      Math.abs(y1) - flush,
    );
  let at: [number, number, number] = [0, 0, 0];
  let best = shut(...at);
  for (let stride = 0.3; stride > 1e-7; stride /= 1.6) {
    for (let improved = true, rounds = 0; improved && rounds < 60; rounds++) {
      improved = false;
      for (let k = 0; k < 27; k++) {
        const step = [(k % 3) - 1, (Math.floor(k / 3) % 3) - 1, Math.floor(k / 9) - 1] as const;
        const ends = mayTurn ? [step[1], step[2]] : [step[1], step[1]];
        const next: [number, number, number] = [
          at[0] + step[0] * stride,
          at[1] + (ends[0] as number) * stride,
          at[2] + (ends[1] as number) * stride,
        ];
        const there = shut(...next);
        if (there < best - 1e-12) {
          best = there;
          at = next;
          improved = true;
        }
      }
    }
  }
  return best;
}

describe('Gates', () => {
  it('lets a joint through just where a search finds a shift and a turn that do', () => {
    let through = 0;
    let shutOut = 0;
    fc.assert(
      fc.property(
        pins,
        fc.boolean(),
        fc.double({ min: 0.005, max: 0.08, noNaN: true }),
        (found, mayTurn, flush) => {
          const positions = found.map((_, j) => 40 + 60 * j);
          const length = 80 + 60 * (found.length - 1);
          const along = found.map((pin) => pin.along);
          const across = found.map((pin) => pin.across);
          const play = found.map((pin) => pin.play);
          const circles = new PlayCircles(positions, play, mayTurn);
          circles.settle(along, across);
          fc.pre(circles.miss <= 0);
          const shut = searchedShut(positions, found, length, flush, mayTurn);
          const answer = new Gates(positions, play, length, flush, mayTurn).canBeFlush(
            along,
            across,
            circles,
          );
          // A compass search only comes near: it proves that a joint can be made flush, and all
          // but proves that it can't.
          if (shut <= 0) {
            expect(answer).toBe(true);
            through++;
          } else if (shut > 0.01) {
            expect(answer).toBe(false);
            shutOut++;
          }
        },
      ),
      { numRuns: 1500 },
    );
    expect(through).toBeGreaterThan(50);
    expect(shutOut).toBeGreaterThan(10);
  });
});
