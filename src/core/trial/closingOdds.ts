import { TOLERANCE, type Mm } from '../length/mm.ts';
import { Gates } from './gates.ts';
import { PlayCircles } from './playCircles.ts';
import { requireAtLeast, requireCount } from './require.ts';
import { BOTH_HOLES, checkedPlay, pinStreams, type RowErrors } from './rowErrors.ts';
import { type Odds, wilson } from './wilson.ts';

/** Joints whose errors are drawn in one go: few enough to stay at hand, many enough to be worth it. */
const BATCH = 256;

export interface ClosingOddsInput extends RowErrors {
  /** The most that the faces may stand off each other at the ends and count as flush, mm, 0 or more. */
  readonly flushTolerance: Mm;
  /** How many joints to try, 1 or more. */
  readonly trials: number;
}

/** The odds that a dry fit goes together. */
export interface ClosingOdds extends Odds {
  /** It goes together, and flush as it settles by itself. */
  readonly flush: Odds;
  /** It goes together, and can be pushed flush within the play of its pins. */
  readonly flushable: Odds;
}

/**
 * The odds that a row of pins goes in, when every hole of both boards is off by a normal error:
 * that many joints are drilled and tried. A bias does not keep a joint from closing; it costs
 * flushness.
 *
 * Each pin draws from a stream of its own, so the first pins of a longer row draw the same
 * errors, joint by joint, and adding a pin can only lower the odds. Engines may differ in the
 * last bits of `log` and `exp`: by a joint or two in 10,000.
 *
 * Throws a TypeError or a RangeError that names what is out of range.
 *
 * Source: geometry. Check: two pins that can't turn, the same sigma on both axes: 1 − exp(−r²/(2σ²)).
 */
export function closingOdds(input: ClosingOddsInput): ClosingOdds {
  const play = checkedPlay(input);
  requireAtLeast('flushTolerance', input.flushTolerance, 0);
  requireCount('trials', input.trials, 1);
  const { positions, sigmaAlong, sigmaAcross, length, flushTolerance, mayTurn, trials } = input;
  const bias = input.bias ?? { along: 0, across: 0 };
  const count = positions.length;
  const circles = new PlayCircles(positions, play, mayTurn);
  const flushWithin = flushTolerance + TOLERANCE;
  const gates = new Gates(
    positions,
    play.map((r) => r + TOLERANCE),
    length,
    flushWithin,
    mayTurn,
  );
  const streams = pinStreams(input.seed, count);
  const drawn = streams.map(() => new Float64Array(2 * BATCH));
  const along = new Float64Array(count);
  const across = new Float64Array(count);
  const scaleAlong = BOTH_HOLES * sigmaAlong;
  const scaleAcross = BOTH_HOLES * sigmaAcross;

  let fits = 0;
  let flush = 0;
  let flushable = 0;
  for (let trial = 0; trial < trials; trial++) {
    const at = 2 * (trial % BATCH);
    if (at === 0) streams.forEach((stream, j) => stream.fill(drawn[j] as Float64Array));
    for (let j = 0; j < count; j++) {
      const errors = drawn[j] as Float64Array;
      along[j] = bias.along + scaleAlong * (errors[at] as number);
      across[j] = bias.across + scaleAcross * (errors[at + 1] as number);
    }
    circles.settle(along, across, TOLERANCE);
    if (circles.miss > TOLERANCE) continue;
    fits++;
    const atEnd = circles.across + circles.turn * length;
    if (Math.abs(circles.across) <= flushWithin && Math.abs(atEnd) <= flushWithin) {
      flush++;
      flushable++;
    } else if (gates.canBeFlush(along, across, circles)) {
      flushable++;
    }
  }
  return {
    ...wilson(fits, trials),
    flush: wilson(flush, trials),
    flushable: wilson(flushable, trials),
  };
}
