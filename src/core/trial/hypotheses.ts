import { diameterOfPin, unmeasuredPinUndersize } from '../fit/fit.ts';
import { type Mm, mm } from '../length/mm.ts';
import { assemble } from './assemble.ts';
import { lookAlike } from './classicMistakes.ts';
import type { DeviationCode } from './deviations.ts';
import {
  type BenchSetup,
  type MemberSetup,
  drill,
  drilledInFace,
  rightCollar,
  slippedHoles,
} from './drill.ts';
import { type Signs, signsOf } from './signs.ts';
import type { Member } from './trial.ts';

/** A cause that lies in the wood and not in the drilling. */
export type WoodCode = 'chips' | 'out-of-square' | 'cupped';

/** One thing that may have gone wrong, and the signs that it would show. */
export interface Hypothesis {
  readonly code: DeviationCode | WoodCode;
  readonly members: readonly Member[];
  /** How far off it would have to be, mm; for a lean, at the bottom of the hole. */
  readonly size: Mm;
  /** How unusual it is beside the others: what it starts with against it. */
  readonly rarity: number;
  readonly signs: Required<Signs>;
}

const members = ['a', 'b'] as const;

function other(member: Member): Member {
  return member === 'a' ? 'b' : 'a';
}

function change(setup: BenchSetup, member: Member, part: Partial<MemberSetup>): BenchSetup {
  return { ...setup, [member]: { ...setup[member], ...part } };
}

/** A board's setup with its collar moved: positive is deeper. */
function deeper(setup: BenchSetup, member: Member, by: number): BenchSetup {
  const { stop } = setup[member];
  if (!('collar' in stop)) return setup;
  return change(setup, member, { stop: { collar: mm(Math.max(0, stop.collar + by)) } });
}

/** The signs of a setup drilled and pushed together. */
export function signsOfSetup(setup: BenchSetup): Required<Signs> {
  const trial = drill(setup);
  return signsOf(trial, assemble(trial));
}

/**
 * Everything that may have gone wrong with a setup, each drilled and tried; where a mistake has a
 * size, it is taken from the signs seen.
 *
 * @param setup what the reader meant to drill, with the tools as measured
 */
export function hypothesesFor(setup: BenchSetup, seen: Signs): readonly Hypothesis[] {
  const expected = signsOfSetup(setup);
  const suppose = (
    code: Hypothesis['code'],
    rarity: number,
    on: readonly Member[],
    size: number,
    wrong: BenchSetup,
  ): Hypothesis => ({
    code,
    rarity,
    members: on,
    size: mm(Math.abs(size)),
    signs: signsOfSetup(wrong),
  });

  return [
    ...stops(setup, seen, expected, suppose),
    ...places(setup, seen, expected, suppose),
    ...leans(setup, seen, expected, suppose),
    ...pinsAndBits(setup, seen, expected, suppose),
    ...wood(seen, expected),
  ];
}

type Suppose = (
  code: Hypothesis['code'],
  rarity: number,
  on: readonly Member[],
  size: number,
  wrong: BenchSetup,
) => Hypothesis;

/** By how much the holes of a pin are too deep together, as far as the signs tell. */
function depthErrors(seen: Signs, expected: Required<Signs>): readonly number[] {
  const found: number[] = [];
  if (seen.endRoom !== undefined) found.push(seen.endRoom - expected.endRoom);
  if (seen.opening !== undefined) {
    const widest = Math.max(seen.opening.start, seen.opening.end);
    const even = Math.min(seen.opening.start, seen.opening.end);
    if (widest > 0) found.push(-widest - expected.endRoom);
    if (even > 0) found.push(-even - expected.endRoom);
  }
  return found;
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

function stops(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
  suppose: Suppose,
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
    const off = rightCollar(setup, other(member)) - rightCollar(setup, member);
    if (Math.abs(off) > 0.01) {
      found.push(suppose('same-stop', 0, [member], off, deeper(setup, member, off)));
    }
    for (const error of memberErrors(setup, seen, expected, member)) {
      found.push(suppose('stop-off', 0.3, [member], error, deeper(setup, member, error)));
    }
  }
  found.push(...slips(setup, seen, expected, suppose));
  found.push(unevenDepths(setup, seen, expected));
  return found;
}

/** The stop slipped somewhere: before each hole of either board, whichever was drilled first. */
function slips(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
  suppose: Suppose,
): readonly Hypothesis[] {
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

function places(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
  suppose: Suppose,
): readonly Hypothesis[] {
  const { plan, guide } = setup;
  const found: Hypothesis[] = [];
  const step = seen.step && (seen.step.start + seen.step.end) / 2;
  for (const member of members) {
    const hooked = change(setup, member, { end: 'other' });
    found.push(suppose('opposite-ends', 0.02, [member], signsOfSetup(hooked).endsOff, hooked));
    const turned = change(setup, member, { face: 'other' });
    const asTurned = signsOfSetup(turned);
    found.push(
      suppose('turned-over', 0, [member], asTurned.step.start || asTurned.endsOff, turned),
    );
    if (step !== undefined && !drilledInFace(plan, member)) {
      // Turned over, the guide's own offset counts twice: the one that would make this step.
      const twice = (step - asTurned.step.start) * (member === 'a' ? 1 : -1);
      const offset = mm(guide.offset + twice / 2);
      found.push(
        suppose('turned-over', 0.1, [member], step, { ...turned, guide: { ...guide, offset } }),
      );
    }
    if (step !== undefined) {
      const off = (step - expected.step.start) * (member === 'a' ? -1 : 1);
      const across = mm(setup[member].across + off);
      found.push(suppose('across-off', 0.3, [member], off, change(setup, member, { across })));
    }
    if (seen.endsOff !== undefined) {
      const off = (seen.endsOff - expected.endsOff) * (member === 'a' ? -1 : 1);
      const marks = setup[member].marks.map((mark) => mm(mark + off));
      found.push(suppose('marks-off', 0.3, [member], off, change(setup, member, { marks })));
    }
    if (seen.meets === false) {
      const marks = setup[member].marks.map((mark, j) => (j === 1 ? mm(mark + 1) : mark));
      found.push(suppose('marks-off', 0.2, [member], 1, change(setup, member, { marks })));
    }
  }
  if (!guide.centering) {
    const centered = { ...setup, guide: { ...guide, centering: true } };
    const { step: made } = signsOfSetup(centered);
    found.push(suppose('centering-guide', 0.1, members, made.start, centered));
  }
  return found;
}

function leans(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
  suppose: Suppose,
): readonly Hypothesis[] {
  return members.flatMap((member) => {
    const { engagement, holeDepth } = setup.plan[member];
    if (engagement <= 0) return [];
    const sign = member === 'a' ? -1 : 1;
    const toDegrees = (drift: number): number =>
      (Math.atan((sign * 2 * drift) / engagement) * 180) / Math.PI;
    const across = toDegrees(
      seen.step === undefined
        ? 0
        : (seen.step.start + seen.step.end - expected.step.start - expected.step.end) / 2,
    );
    const along = toDegrees(seen.endsOff === undefined ? 0 : seen.endsOff - expected.endsOff);
    const tries = [
      { along: 0, across },
      { along, across: 0 },
      { along, across },
      { along: 0, across: 3 },
      { along: 0, across: -3 },
    ];
    return tries
      .filter(({ along, across }) => Math.hypot(along, across) > 0.05)
      .map((lean) => {
        const degrees = Math.hypot(lean.along, lean.across);
        // Nobody rocks a guide by more than a few degrees without seeing it.
        const rarity = 0.05 + Math.max(0, degrees - 5) / 5;
        const size = Math.tan((degrees * Math.PI) / 180) * holeDepth;
        return suppose('guide-rocked', rarity, [member], size, change(setup, member, { lean }));
      });
  });
}

function pinsAndBits(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
  suppose: Suppose,
): readonly Hypothesis[] {
  const { pin } = setup;
  const bits = members.reduce((wrong, member) => {
    const { diameter, tip } = setup[member].bit;
    const size = lookAlike(diameter);
    return change(wrong, member, { bit: { diameter: size, tip: mm((tip * size) / diameter) } });
  }, setup);
  const otherPin = { diameter: lookAlike(pin.diameter), length: pin.length };
  const hole = Math.min(setup.a.bit.diameter, setup.b.bit.diameter);
  const measured = diameterOfPin(pin);
  const swollen = mm(Math.max(hole + 0.05, measured + unmeasuredPinUndersize));
  const thin = mm(Math.min(hole - 0.3, measured));
  const tooLong = depthErrors(seen, expected).filter((error) => Math.abs(error) > 0.01);
  return [
    suppose('mixed-systems', 0, members, bits.a.bit.diameter - setup.a.bit.diameter, bits),
    suppose('mixed-systems', 0, members, otherPin.diameter - pin.diameter, {
      ...setup,
      pin: otherPin,
    }),
    suppose('pin-swollen', 0.1, members, swollen - measured, {
      ...setup,
      pin: { ...pin, measured: swollen },
    }),
    ...(thin > 0
      ? [
          suppose('pin-thin', 0.1, members, measured - thin, {
            ...setup,
            pin: { ...pin, measured: thin },
          }),
        ]
      : []),
    ...tooLong
      .filter((error) => pin.length - error > 0)
      .map((error) =>
        suppose('other-length', 0.4, members, error, {
          ...setup,
          pin: { ...pin, length: mm(pin.length - error) },
        }),
      ),
  ];
}

/** Causes in the wood: chips under a pin, an end that is not square, a board that is cupped or hollow. */
function wood(seen: Signs, expected: Required<Signs>): readonly Hypothesis[] {
  const found: Hypothesis[] = [];
  const { opening, openInMiddle } = seen;
  if (opening !== undefined) {
    const widest = mm(Math.max(opening.start, opening.end));
    if (widest > 0) {
      // Chips fill a hole by a few millimetres; a depth gauge, after blowing it out, finds it sound.
      found.push({
        code: 'chips',
        members,
        size: mm(widest + expected.endRoom),
        rarity: 0.2 + Math.max(0, widest - 2) / 4,
        signs: {
          ...expected,
          opening,
          ...(seen.rocks !== undefined && { rocks: seen.rocks }),
        },
      });
      // Out of square, it is open at one end more than at the other.
      if (opening.start !== opening.end) {
        found.push({
          code: 'out-of-square',
          members,
          size: mm(Math.abs(opening.start - opening.end)),
          rarity: 0.1,
          signs: {
            ...expected,
            opening:
              opening.start > opening.end
                ? { start: opening.start, end: mm(0) }
                : { start: mm(0), end: opening.end },
          },
        });
      }
    }
  }
  if (openInMiddle === true || seen.rocks === true) {
    found.push({
      code: 'cupped',
      members,
      size: mm(opening === undefined ? 0 : Math.max(opening.start, opening.end)),
      rarity: 0.1,
      signs: {
        ...expected,
        openInMiddle: openInMiddle ?? false,
        rocks: seen.rocks ?? false,
        ...(opening && { opening }),
      },
    });
  }
  return found;
}
