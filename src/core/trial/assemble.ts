import { type Fit, diameterOfPin, fit } from '../fit/fit.ts';
import { type Mm, TOLERANCE, lessThan, mm } from '../length/mm.ts';
import { type Opening, restOn } from './opening.ts';
import { PlayCircles } from './playCircles.ts';
import { requireAtLeast, requireCount, requireNumber, requirePositive } from './require.ts';
import type { DrilledHole, Member, Trial } from './trial.ts';

/** A place or a way along and across the joint, mm. */
export interface AlongAcross {
  readonly along: Mm;
  readonly across: Mm;
}

/** One pin and its two holes, pushed together. Lengths in mm. */
export interface PinOutcome {
  /** Depth of both holes together beyond the pin's length; negative: it holds the joint open by that. */
  readonly endRoom: Mm;
  /** Length of pin in each hole, the end room shared. */
  readonly engagement: Readonly<Record<Member, Mm>>;
  readonly fit: Readonly<Record<Member, Fit>>;
  /** Wood between the bit's point and the far face; negative: it came through. */
  readonly woodLeft: Readonly<Record<Member, Mm>>;
  /** How far the pin lets the boards slide, both holes together, as a radius. */
  readonly play: Mm;
  /** How far B's hole lies from A's, each at half its engagement, with the boards as they were meant to be. */
  readonly offset: AlongAcross;
  /** What is left of that when the boards have settled. */
  readonly rest: AlongAcross;
  /** How far the rest exceeds the play; 0 or less: the pin goes in. */
  readonly miss: Mm;
  /** True where the pin is thicker than one of its holes. */
  readonly tight: boolean;
  /** True where its holes lean apart by more than the clearance lets it lean. */
  readonly binds: boolean;
  /** By how much too far its holes drive its ends apart; 0 where it doesn't bind. */
  readonly bindsBy: Mm;
}

/** Two boards pushed together: what comes of it, but not why. Lengths in mm. */
export interface Assembly {
  readonly pins: readonly PinOutcome[];
  /** How far the joint stands open, held by the pin that is longest for its holes; at least 0. */
  readonly gap: Mm;
  /** How it then stands open along its length, pressed in the middle. */
  readonly opening: Opening;
  /** Least depth of two holes together beyond their pin; negative where there is a gap. */
  readonly endRoom: Mm;
  /** True where some shift and turn puts every pin in its play. */
  readonly fits: boolean;
  /** True where it fits, no pin is tight or binds, and nothing holds it open. */
  readonly closes: boolean;
  /** How far A shifts from where it was meant to be when the boards settle. */
  readonly shift: AlongAcross;
  /** How far A turns, radians; across grows by that for each mm along. */
  readonly turn: number;
  /** How far the worst pin stays outside its play; 0 or less where it fits. */
  readonly miss: Mm;
  /**
   * How far A's reference face settles behind where it was meant to be, at the start and the end
   * of the joint: positive, B stands proud; negative, A does.
   */
  readonly step: { readonly start: Mm; readonly end: Mm };
}

/**
 * Pushes two drilled boards together dry: how far the pins let them close, whether some shift
 * and turn puts every pin in, and where the boards then stand. Throws a TypeError or a
 * RangeError that names what is out of range.
 *
 * Source: geometry.
 */
export function assemble(trial: Trial): Assembly {
  checkTrial(trial);
  const met = trial.pins.map(meet);
  const circles = new PlayCircles(
    trial.pins.map(({ a }) => a.along),
    met.map(({ play }) => play),
    trial.mayTurn,
  );
  circles.settle(
    met.map(({ offset }) => offset.along),
    met.map(({ offset }) => offset.across),
  );
  const pins = met.map((pin, j): PinOutcome => {
    const along = mm(pin.offset.along - circles.along);
    const turned = circles.turn * (trial.pins[j]?.a.along ?? 0);
    const across = mm(pin.offset.across - circles.across - turned);
    return {
      ...pin,
      rest: { along, across },
      miss: mm(Math.hypot(along, across) - pin.play),
    };
  });
  const endRoom = mm(Math.min(...pins.map((pin) => pin.endRoom)));
  const gap = lessThan(endRoom, 0) ? mm(-endRoom) : mm(0);
  const fits = circles.miss <= TOLERANCE;
  return {
    pins,
    gap,
    opening: restOn(
      pins.map(({ endRoom }, j) => ({
        along: trial.pins[j]?.a.along ?? mm(0),
        over: mm(-endRoom),
      })),
      trial.length,
    ),
    endRoom,
    fits,
    closes: fits && gap === 0 && !pins.some(({ tight, binds }) => tight || binds),
    shift: { along: mm(circles.along), across: mm(circles.across) },
    turn: circles.turn,
    miss: mm(circles.miss),
    step: {
      start: mm(circles.across),
      end: mm(circles.across + circles.turn * trial.length),
    },
  };
}

/** One pin in its two holes, before the boards settle. */
function meet({ pin, a, b }: Trial['pins'][number]): Omit<PinOutcome, 'rest' | 'miss'> {
  const diameter = diameterOfPin(pin);
  const fits = {
    a: fit({ hole: a.diameter, pin: diameter }),
    b: fit({ hole: b.diameter, pin: diameter }),
  };
  const endRoom = mm(a.depth + b.depth - pin.length);
  const engagement = {
    a: engagementIn(a.depth, b.depth, pin.length),
    b: engagementIn(b.depth, a.depth, pin.length),
  };
  const clearance = {
    a: Math.max(0, fits.a.clearance),
    b: Math.max(0, fits.b.clearance),
  };
  // Each hole's lean is told going in, so two holes in one straight line lean by opposite amounts.
  const apart = Math.hypot(a.lean.along + b.lean.along, a.lean.across + b.lean.across);
  const allowed = leanAllowed(clearance.a, engagement.a) + leanAllowed(clearance.b, engagement.b);
  const bindsBy = Math.max(0, apart - allowed) * Math.max(engagement.a, engagement.b);
  const middle = (hole: DrilledHole, held: Mm): AlongAcross => ({
    along: mm(hole.along + (hole.lean.along * held) / 2),
    across: mm(hole.across + (hole.lean.across * held) / 2),
  });
  const inA = middle(a, engagement.a);
  const inB = middle(b, engagement.b);
  return {
    endRoom,
    engagement,
    fit: fits,
    woodLeft: { a: mm(a.limit - a.depth - a.tip), b: mm(b.limit - b.depth - b.tip) },
    play: mm((clearance.a + clearance.b) / 2),
    offset: { along: mm(inB.along - inA.along), across: mm(inB.across - inA.across) },
    tight: fits.a.verdict === 'ease the pin' || fits.b.verdict === 'ease the pin',
    binds: apart > allowed + TOLERANCE,
    bindsBy: apart > allowed + TOLERANCE ? mm(bindsBy) : mm(0),
  };
}

/** Length of pin in a hole where both share the end room alike, as far as their depths allow. */
function engagementIn(depth: Mm, otherDepth: Mm, length: Mm): Mm {
  const shared = (depth - otherDepth + length) / 2;
  const least = Math.max(0, length - otherDepth);
  return mm(Math.max(Math.min(least, depth), Math.min(shared, depth, length)));
}

/** How far a pin may lean in one hole, mm for each mm; any way in a hole that it barely enters. */
function leanAllowed(clearance: number, held: Mm): number {
  return held <= TOLERANCE ? Infinity : clearance / held;
}

function checkTrial(trial: Trial): void {
  requirePositive('length', trial.length);
  requireCount('pins.length', trial.pins.length, 1);
  trial.pins.forEach(({ pin, a, b }, j) => {
    requirePositive(`pins[${j}].pin.diameter`, pin.diameter);
    requirePositive(`pins[${j}].pin.diameter, as it is,`, diameterOfPin(pin));
    requirePositive(`pins[${j}].pin.length`, pin.length);
    for (const [name, hole] of [
      ['a', a],
      ['b', b],
    ] as const) {
      const field = `pins[${j}].${name}`;
      requireNumber(`${field}.along`, hole.along);
      requireNumber(`${field}.across`, hole.across);
      requirePositive(`${field}.diameter`, hole.diameter);
      requireAtLeast(`${field}.depth`, hole.depth, 0);
      requireNumber(`${field}.lean.along`, hole.lean.along);
      requireNumber(`${field}.lean.across`, hole.lean.across);
      requireNumber(`${field}.limit`, hole.limit);
      requireAtLeast(`${field}.tip`, hole.tip, 0);
    }
  });
}
