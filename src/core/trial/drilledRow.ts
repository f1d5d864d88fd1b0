import { TOLERANCE, type Mm, mm } from '../length/mm.ts';
import { PlayCircles } from './playCircles.ts';
import { requireCount } from './require.ts';
import { BOTH_HOLES, checkedPlay, pinStreams, type RowErrors } from './rowErrors.ts';

/** One pin of a row as it was drilled; along and across the row, mm. */
export interface DrilledPin {
  /** How far B's hole lies off A's. */
  readonly off: { readonly along: Mm; readonly across: Mm };
  /** What is left of that once the boards have settled. */
  readonly left: { readonly along: Mm; readonly across: Mm };
  /** Its play in both holes together, as a radius. */
  readonly play: Mm;
  /** True where what is left lies within the play. */
  readonly goesIn: boolean;
}

/** A row of pins drilled once and pushed together. */
export interface DrilledRow {
  readonly pins: readonly DrilledPin[];
  /** The shift and the turn (radians) of the boards that serve the worst pin best. */
  readonly shift: { readonly along: Mm; readonly across: Mm };
  readonly turn: number;
  /** How far the worst pin stays outside its play, mm; 0 or less where all go in. */
  readonly miss: Mm;
  readonly fits: boolean;
  /** Index of the first pin that can't join those before it; null where all go in. */
  readonly stoppedBy: number | null;
  /** Indexes of the pins of which any one, left out, lets the others in; none where all go in. */
  readonly spoilers: readonly number[];
  /** How far one face stands proud of the other at the row's start and at its end, mm, signed. */
  readonly step: { readonly start: Mm; readonly end: Mm };
}

/**
 * Drills a row of pins once, with normal errors, and pushes it together.
 *
 * The row is one of those that `closingOdds` tries: of the same row and seed its `trials` first
 * joints are `index` 0, 1, 2 and so on here. So a figure shows one of the very joints that its
 * odds count, and a longer row keeps the errors of its first pins.
 *
 * Throws a TypeError or a RangeError that names what is out of range.
 * @param index which joint of the seed, 0 or more; takes time in proportion
 * @example drilledRow({ ...row, seed: 1 }, 0).fits
 */
export function drilledRow(input: RowErrors, index: number): DrilledRow {
  const play = checkedPlay(input);
  requireCount('index', index, 0);
  const { positions, mayTurn, length } = input;
  const { along, across } = errorsOf(input, index);
  const settled = settle(positions, play, mayTurn, along, across);
  const pins = positions.map((x, j): DrilledPin => {
    const left = {
      along: mm(along[j]! - settled.along),
      across: mm(across[j]! - settled.across - settled.turn * x),
    };
    return {
      off: { along: mm(along[j]!), across: mm(across[j]!) },
      left,
      play: mm(play[j]!),
      goesIn: Math.hypot(left.along, left.across) <= play[j]! + TOLERANCE,
    };
  });
  const fits = settled.miss <= TOLERANCE;
  const missOf = (chosen: readonly number[]) =>
    settle(
      chosen.map((j) => positions[j]!),
      chosen.map((j) => play[j]!),
      mayTurn,
      chosen.map((j) => along[j]!),
      chosen.map((j) => across[j]!),
    ).miss;
  const all = positions.map((_, j) => j);
  return {
    pins,
    shift: { along: mm(settled.along), across: mm(settled.across) },
    turn: settled.turn,
    miss: mm(settled.miss),
    fits,
    stoppedBy: fits ? null : all.find((j) => missOf(all.slice(0, j + 1)) > TOLERANCE)!,
    spoilers: fits ? [] : all.filter((j) => missOf(all.filter((k) => k !== j)) <= TOLERANCE),
    step: { start: mm(settled.across), end: mm(settled.across + settled.turn * length) },
  };
}

function settle(
  positions: readonly number[],
  play: readonly number[],
  mayTurn: boolean,
  along: readonly number[],
  across: readonly number[],
): PlayCircles {
  const circles = new PlayCircles(positions, play, mayTurn);
  circles.settle(along, across);
  return circles;
}

function errorsOf({ positions, sigmaAlong, sigmaAcross, bias, seed }: RowErrors, index: number) {
  const along: number[] = [];
  const across: number[] = [];
  const drawn = new Float64Array(2 * (index + 1));
  for (const stream of pinStreams(seed, positions.length)) {
    stream.fill(drawn);
    along.push((bias?.along ?? 0) + BOTH_HOLES * sigmaAlong * drawn[2 * index]!);
    across.push((bias?.across ?? 0) + BOTH_HOLES * sigmaAcross * drawn[2 * index + 1]!);
  }
  return { along, across };
}
