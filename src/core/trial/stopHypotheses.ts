import { mm } from '../length/mm.ts';
import { type BenchSetup, rightCollar, slippedHoles } from './drill.ts';
import {
  type Hypothesis,
  change,
  depthErrors,
  members,
  signsOfSetup,
  suppose,
} from './hypothesis.ts';
import type { Signs } from './signs.ts';
import type { Member } from './trial.ts';

/** A board's setup with its collar moved: positive is deeper. */
function deeper(setup: BenchSetup, member: Member, by: number): BenchSetup {
  const { stop } = setup[member];
  if (!('collar' in stop)) return setup;
  return change(setup, member, { stop: { collar: mm(Math.max(0, stop.collar + by)) } });
}

/** By how much one board's holes are too deep, as far as the signs tell. */
function memberErrors(
  { plan }: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
  member: Member,
): readonly number[] {
  const through = seen.through?.[member];
  const out =
    through === undefined || through.holes === 'none'
      ? []
      : [(through.by ?? 1) + (plan.kind === 'miter' ? 0 : plan[member].woodLeft)];
  return [...depthErrors(seen, expected), ...out].filter((error) => Math.abs(error) > 0.01);
}

/** Stops that were set wrong, or slipped, or were not there. */
export function stopHypotheses(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
): readonly Hypothesis[] {
  const { guide, plan } = setup;
  const { allowance } = plan.spec;
  const found: Hypothesis[] = [];
  const forgotten = [
    ['forgot-bushing', guide.bushing],
    ['forgot-bushing', guide.bushing + guide.standoff],
    ['forgot-standoff', guide.standoff],
    ['forgot-allowance', allowance],
  ] as const;
  for (const [code, less] of forgotten) {
    if (less <= 0) continue;
    const both = deeper(deeper(setup, 'a', -less), 'b', -less);
    found.push(suppose(code, 0, members, less, both));
    for (const member of members) {
      found.push(suppose(code, 0.03, [member], less, deeper(setup, member, -less)));
    }
  }
  for (const member of members) {
    const off = rightCollar(setup, member === 'a' ? 'b' : 'a') - rightCollar(setup, member);
    if (Math.abs(off) > 0.01) {
      found.push(suppose('same-stop', 0, [member], off, deeper(setup, member, off)));
    }
    for (const error of memberErrors(setup, seen, expected, member)) {
      found.push(suppose('stop-off', 0.3, [member], error, deeper(setup, member, error)));
    }
  }
  found.push(...slips(setup, seen, expected));
  found.push(unevenDepths(setup, seen, expected));
  return found;
}

/** The stop slipped somewhere: before each hole of either board, whichever was drilled first. */
function slips(setup: BenchSetup, seen: Signs, expected: Required<Signs>): readonly Hypothesis[] {
  const count = setup.plan.holes.length;
  const errors = members.flatMap((member) => memberErrors(setup, seen, expected, member));
  // Where the collar stays as it is for the second board, both holes of a pin may share the error.
  const sizes = new Set(errors.flatMap((error) => [error, error / 2]));
  const found: Hypothesis[] = [];
  for (const by of sizes) {
    for (const first of members) {
      for (let after = 1; after < 2 * count; after++) {
        const slipped = { ...setup, first, slip: { after, by: mm(by) } };
        const on = members.filter((member) => slippedHoles(slipped, member).length > 0);
        // Between the boards it is a new setting rather than a slip.
        const rarity = after === count ? 0.29 : 0.06;
        if (on.length > 0) found.push(suppose('stop-slipped', rarity, on, by, slipped));
      }
    }
  }
  return found;
}

/**
 * No stop at all: the depths are anyone's guess, so whatever the signs say about them is as
 * expected. It is likelier where the holes are seen to differ among themselves.
 */
function unevenDepths(setup: BenchSetup, seen: Signs, expected: Required<Signs>): Hypothesis {
  const { opening, through, rocks } = seen;
  const some = through?.a.holes === 'some' || through?.b.holes === 'some';
  const stepped = opening !== undefined && Math.abs(opening.start - opening.end) > 0.2;
  const gapAndThrough =
    (seen.endRoom ?? 0) < 0 && (through?.a.holes !== 'none' || through.b.holes !== 'none');
  const uneven = [some, stepped || rocks === true, gapAndThrough].filter(Boolean).length;
  const errors = depthErrors(seen, expected);
  return {
    code: 'no-stop',
    members,
    size: mm(Math.max(0, ...errors.map(Math.abs))),
    rarity: uneven >= 2 ? 0.1 : uneven === 1 ? 0.2 : 0.28,
    signs: {
      ...signsOfSetup(setup),
      ...(opening && { opening }),
      ...(rocks !== undefined && { rocks }),
      ...(through && { through }),
      ...(seen.endRoom !== undefined && { endRoom: seen.endRoom }),
    },
  };
}
