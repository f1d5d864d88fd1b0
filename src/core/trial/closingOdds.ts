import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { TOLERANCE, type Mm } from '../length/mm.ts';
import { Gates } from './gates.ts';
import { drawNormal } from './normal.ts';
import { PlayCircles } from './playCircles.ts';
import { requireAtLeast, requireCount, requireNumber, requirePositive } from './require.ts';
import { type Odds, wilson } from './wilson.ts';

export interface ClosingOddsInput {
  /** Where the pins stand along the row, mm; at least one. */
  readonly positions: readonly Mm[];
  /** Play of a pin in both holes together, as a radius, mm, 0 or more: one for all, or one for each. */
  readonly radialPlay: Mm | readonly Mm[];
  /** Standard deviation of every hole's error along the row, mm, 0 or more. */
  readonly sigmaAlong: Mm;
  /** The same across the row. */
  readonly sigmaAcross: Mm;
  /** How far all of B's holes lie off A's, mm. Default: nothing. */
  readonly bias?: { readonly along: Mm; readonly across: Mm };
  /** Length of the joint, mm, more than 0: the step is looked at on both its ends. */
  readonly length: Mm;
  /** The most that the faces may stand off each other at the ends and count as flush, mm, 0 or more. */
  readonly flushTolerance: Mm;
  /** Whether the boards are free to turn on their pins. */
  readonly mayTurn: boolean;
  /** How many joints to try, 1 or more. */
  readonly trials: number;
  /** A whole number; the same seed gives the same odds. */
  readonly seed: number;
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
  const along = new Float64Array(count);
  const across = new Float64Array(count);
  // A's hole and B's are both off: their difference has √2 times the deviation of either.
  const scaleAlong = Math.SQRT2 * sigmaAlong;
  const scaleAcross = Math.SQRT2 * sigmaAcross;

  let fits = 0;
  let flush = 0;
  let flushable = 0;
  for (let trial = 0; trial < trials; trial++) {
    let low = -Infinity;
    let high = Infinity;
    for (let j = 0; j < count; j++) {
      const stream = streams[j] as (typeof streams)[number];
      // Drawn for lost joints too, so that each stream stays in step with the joints.
      const drawnAlong = drawNormal(stream);
      const drawnAcross = drawNormal(stream);
      if (low > high) continue;
      const off = bias.along + scaleAlong * drawnAlong;
      along[j] = off;
      across[j] = bias.across + scaleAcross * drawnAcross;
      // Turning does nothing for errors along the row: where these alone are too many, it is lost.
      const reach = (play[j] as number) + TOLERANCE;
      if (off - reach > low) low = off - reach;
      if (off + reach < high) high = off + reach;
    }
    if (low > high) continue;
    circles.settle(along, across, TOLERANCE);
    if (circles.miss > TOLERANCE) continue;
    fits++;
    const atEnd = circles.across + circles.turn * length;
    if (Math.abs(circles.across) <= flushWithin && Math.abs(atEnd) <= flushWithin) {
      flush++;
      flushable++;
    } else if (gates.canBeFlush(along, across, circles.along)) {
      flushable++;
    }
  }
  return {
    ...wilson(fits, trials),
    flush: wilson(flush, trials),
    flushable: wilson(flushable, trials),
  };
}

/** A stream of numbers for each pin, 2⁶⁴ draws apart. */
function pinStreams(seed: number, count: number) {
  const source = xoroshiro128plus(seed);
  return Array.from({ length: count }, () => {
    // The jump comes first: straight from a small seed the first draws would be poor.
    source.jump();
    return source.clone();
  });
}

function checkedPlay(input: ClosingOddsInput): readonly number[] {
  const { positions, radialPlay } = input;
  requireCount('positions.length', positions.length, 1);
  positions.forEach((x, j) => requireNumber(`positions[${j}]`, x));
  const play = typeof radialPlay === 'number' ? positions.map(() => radialPlay) : radialPlay;
  if (play.length !== positions.length) {
    throw new RangeError(`radialPlay must have one entry for each of the positions`);
  }
  play.forEach((r, j) => requireAtLeast(`radialPlay[${j}]`, r, 0));
  requireAtLeast('sigmaAlong', input.sigmaAlong, 0);
  requireAtLeast('sigmaAcross', input.sigmaAcross, 0);
  if (input.bias !== undefined) {
    requireNumber('bias.along', input.bias.along);
    requireNumber('bias.across', input.bias.across);
  }
  requirePositive('length', input.length);
  requireAtLeast('flushTolerance', input.flushTolerance, 0);
  requireCount('trials', input.trials, 1);
  requireNumber('seed', input.seed);
  return play;
}
