import type { Mm } from '../length/mm.ts';
import type { Sentence } from '../working/sentence.ts';
import { caseCornerMoment } from './caseCornerMoment.ts';
import { frameMoment } from './frameMoment.ts';
import { type WithdrawalInput, withdrawal } from './withdrawal.ts';

/** One difference between two joints, and how many times the strength it makes. */
export interface Factor {
  readonly of: 'diameter' | 'depth' | 'clearance' | 'grooves' | 'grain' | 'lever';
  readonly ratio: number;
}

/** Two joints against each other: never a force, only how many times the first the second is. */
export type Comparison =
  | {
      readonly ok: true;
      /** The second over the first, by name: bending is compared opening and closing. */
      readonly ratios: Readonly<Record<string, number>>;
      /** What makes the ratio, multiplied together; empty where a formula doesn't part them. */
      readonly factors: readonly Factor[];
      /** False where the woods lie outside the range that the formula is stated for. */
      readonly inStatedRange: boolean;
    }
  | { readonly ok: false; readonly reason: Sentence };

/** A glued pin, but for the glue, which is the same in both. */
export type PulledPin = Omit<WithdrawalInput, 'thinGlue'>;

const STEPS: readonly (readonly [Factor['of'], readonly (keyof PulledPin)[]])[] = [
  ['diameter', ['diameter']],
  ['depth', ['engagement']],
  ['clearance', ['clearance']],
  ['grooves', ['grooved']],
  ['grain', ['grain', 'memberShear', 'dowelShear']],
];

const LOOSE: Comparison = {
  ok: false,
  reason: ['A pin so loose has nothing to hold it in this formula: there is nothing to compare.'],
};

/**
 * How many times the pull of the first pin the second takes, and what makes the difference.
 * Refuses, with a reason, pins so loose that the formula gives them nothing. Throws as
 * `withdrawal` does.
 *
 * Source: `withdrawalSource` (second-hand).
 */
export function comparePull(first: PulledPin, second: PulledPin): Comparison {
  const pull = (pin: PulledPin) => withdrawal({ ...pin, thinGlue: false });
  const [before, after] = [pull(first), pull(second)];
  if (before.force === 0 || after.force === 0) return LOOSE;
  let pin = first;
  const factors = STEPS.map(([of, fields]): Factor => {
    const from = pull(pin).force;
    pin = { ...pin, ...Object.fromEntries(fields.map((field) => [field, second[field]])) };
    return { of, ratio: pull(pin).force / from };
  });
  return {
    ok: true,
    ratios: { pull: after.force / before.force },
    factors,
    inStatedRange: before.inStatedRange && after.inStatedRange,
  };
}

/** A pin of a case corner, as far as its formula knows it. */
export interface CornerPin {
  readonly diameter: Mm;
  /** Depth in the face, mm. */
  readonly faceDepth: Mm;
}

/**
 * How many times the first case corner's bending moment the second bears, forced open and forced
 * closed. Refuses, with a reason, sizes that were not tested.
 *
 * Source: `caseCornerSource` (read in the abstract); it is about particleboard.
 */
export function compareCorners(first: CornerPin, second: CornerPin): Comparison {
  const [before, after] = [caseCornerMoment(first), caseCornerMoment(second)];
  if (!before.ok) return before;
  if (!after.ok) return after;
  return {
    ok: true,
    ratios: { open: after.opening / before.opening, closed: after.closing / before.closing },
    factors: [],
    inStatedRange: true,
  };
}

/** The two pins of a frame joint. */
export interface FramePins extends PulledPin {
  /** Between the pins, mm. */
  readonly spacing: Mm;
  /** From the pin that is pressed to the rail's edge, mm. */
  readonly edgeDistance: Mm;
}

/**
 * How many times the first frame joint's bending moment the second bears: the pull of one pin,
 * times its lever. Refuses as `comparePull` does.
 *
 * Source: `frameMomentSource` (from memory), with `withdrawalSource` (second-hand) in it.
 */
export function compareFrames(first: FramePins, second: FramePins): Comparison {
  const pull = comparePull(first, second);
  if (!pull.ok) return pull;
  const lever = ({ spacing, edgeDistance }: FramePins) =>
    frameMoment({ withdrawal: 1, spacing, edgeDistance });
  const ratio = lever(second) / lever(first);
  return {
    ...pull,
    ratios: { bending: (pull.ratios['pull'] ?? 1) * ratio },
    factors: [...pull.factors, { of: 'lever', ratio }],
  };
}
