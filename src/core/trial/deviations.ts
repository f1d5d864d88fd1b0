import { diameterOfPin, unmeasuredPinUndersize } from '../fit/fit.ts';
import { type Mm, TOLERANCE, mm } from '../length/mm.ts';
import { type Sentence, say } from '../working/sentence.ts';
import {
  type BenchSetup,
  type Stop,
  drilledInFace,
  rightCollar,
  reachAlong,
  slippedHoles,
  soundSetup,
} from './drill.ts';
import type { Member } from './trial.ts';

/** What was done differently from what the plan asks. */
export type DeviationCode =
  | 'forgot-bushing'
  | 'forgot-standoff'
  | 'forgot-allowance'
  | 'same-stop'
  | 'other-guide'
  | 'stop-off'
  | 'stop-slipped'
  | 'no-stop'
  | 'turned-over'
  | 'opposite-ends'
  | 'centering-guide'
  | 'across-off'
  | 'marks-off'
  | 'guide-rocked'
  | 'mixed-systems'
  | 'other-pin'
  | 'other-bit'
  | 'pin-swollen'
  | 'pin-thin'
  | 'other-length'
  | 'other-point';

/** The part of the setup that a deviation sits in. */
export type Setting = 'pin' | 'bit' | 'stop' | 'guide' | 'face' | 'end' | 'marks';

/** One thing in a setup that is not as the plan asks, and the setup with only that put right. */
export interface Deviation {
  readonly code: DeviationCode;
  readonly setting: Setting;
  readonly members: readonly Member[];
  /** How far off it is, mm. */
  readonly size: Mm;
  readonly message: Sentence;
  readonly remedy: Sentence;
  readonly mend: (setup: BenchSetup) => BenchSetup;
}

const bothMembers = ['a', 'b'] as const;

/** Two lengths alike but for noise. */
function same(one: number, other: number): boolean {
  return Math.abs(one - other) <= TOLERANCE;
}

function boards(members: readonly Member[]): string {
  return members.length === 2 ? 'both boards' : `board ${members[0]?.toUpperCase() ?? ''}`;
}

/** Everything in a setup that is not as its plan asks. Most have no effect alone or together: `dryFit` tells. */
export function deviationsOf(setup: BenchSetup): readonly Deviation[] {
  const sound = soundSetup(setup.plan);
  return [
    ...stopDeviations(setup),
    ...slipDeviation(setup),
    ...pinAndBitDeviations(setup, sound),
    ...placeDeviations(setup, sound),
    ...leanDeviation(setup),
  ];
}

function stopDeviations(setup: BenchSetup): readonly Deviation[] {
  const found = bothMembers.flatMap((member) => {
    const code = stopFault(setup, member);
    return code === null ? [] : [{ code, member }];
  });
  const [one, other] = found;
  const groups =
    one !== undefined && other !== undefined && one.code === other.code
      ? [{ code: one.code, members: bothMembers as readonly Member[] }]
      : found.map(({ code, member }) => ({ code, members: [member] as readonly Member[] }));
  return groups.map(({ code, members }) => {
    const size = mm(Math.max(...members.map((member) => Math.abs(stopError(setup, member)))));
    return {
      code,
      setting: 'stop',
      members,
      size,
      message: stopMessage(setup, code, members, size),
      remedy: stopRemedy(setup, members),
      mend: (other: BenchSetup) =>
        members.reduce(
          (mended, member) => ({
            ...mended,
            [member]: { ...mended[member], stop: { collar: rightCollar(mended, member) } },
          }),
          other,
        ),
    };
  });
}

/** How much too deep (positive) or too shallow a board's stop drills; by eye, the worst hole. */
function stopError(setup: BenchSetup, member: Member): number {
  const { stop } = setup[member];
  if ('collar' in stop) return stop.collar - rightCollar(setup, member);
  const planned = setup.plan[member].holeDepth;
  return stop.byEye
    .map((depth) => depth - planned)
    .reduce((worst, error) => (Math.abs(error) > Math.abs(worst) ? error : worst), 0);
}

function stopFault(setup: BenchSetup, member: Member): DeviationCode | null {
  const { stop } = setup[member];
  const error = stopError(setup, member);
  if (same(error, 0)) return null;
  if (!('collar' in stop)) return 'no-stop';
  const { bushing, standoff } = setup.guide;
  const { allowance, guide } = setup.plan.spec;
  const other = setup[member === 'a' ? 'b' : 'a'].stop;
  const otherRight = rightCollar(setup, member === 'a' ? 'b' : 'a');
  if (bushing > 0 && (same(error, -bushing) || same(error, -bushing - standoff))) {
    return 'forgot-bushing';
  }
  if (isCollar(other) && same(other.collar, stop.collar) && same(other.collar, otherRight)) {
    return 'same-stop';
  }
  if (standoff > 0 && same(error, -standoff)) return 'forgot-standoff';
  if (allowance > 0 && same(error, -allowance)) return 'forgot-allowance';
  if (same(stop.collar, guide.bushing + guide.standoff + setup.plan[member].holeDepth)) {
    return 'other-guide';
  }
  return 'stop-off';
}

function isCollar(stop: Stop): stop is { readonly collar: Mm } {
  return 'collar' in stop;
}

function stopMessage(
  setup: BenchSetup,
  code: DeviationCode,
  members: readonly Member[],
  size: Mm,
): Sentence {
  const { bushing, standoff } = setup.guide;
  const who = boards(members);
  const way = members.some((member) => stopError(setup, member) > 0) ? 'deep' : 'shallow';
  switch (code) {
    case 'forgot-bushing':
      return say`The stop for ${who} was set without the ${bushing} bushing, so the holes are ${size} too shallow.`;
    case 'forgot-standoff':
      return say`The stop for ${who} was set without the ${standoff} gap between bushing and wood, so the holes are too shallow by that much.`;
    case 'forgot-allowance':
      return say`The stop for ${who} leaves out the ${size} of free depth past the pin's end: no room for glue and chips.`;
    case 'same-stop':
      return say`The stop for ${who} was left as it was for the other board; here it drills ${size} too ${way}.`;
    case 'other-guide':
      return say`The plan was made for another guide: with the bushing in use the holes in ${who} are ${size} too ${way}.`;
    case 'no-stop':
      return say`There was no stop on the bit for ${who}: the depths came by eye and are off by up to ${size}.`;
    default:
      return say`The stop for ${who} is off: its holes are ${size} too ${way}.`;
  }
}

function stopRemedy(setup: BenchSetup, members: readonly Member[]): Sentence {
  return members.flatMap((member, k) => [
    ...(k > 0 ? [' '] : []),
    ...say`Set the stop for board ${member.toUpperCase()} at ${rightCollar(setup, member)} from the collar to the bit's full-diameter corner: bushing, gap and hole depth.`,
  ]);
}

function slipDeviation(setup: BenchSetup): readonly Deviation[] {
  const { slip } = setup;
  if (slip === null || same(slip.by, 0)) return [];
  const members = bothMembers.filter((member) => slippedHoles(setup, member).length > 0);
  if (members.length === 0) return [];
  const size = mm(Math.abs(slip.by));
  const way = slip.by > 0 ? 'deep' : 'shallow';
  return [
    {
      code: 'stop-slipped',
      setting: 'stop',
      members,
      size,
      message: say`The stop slipped after ${String(slip.after)} of the holes: those drilled later in ${boards(members)} are ${size} too ${way}.`,
      remedy: say`Tighten the collar, mark the bit beside it, and check that mark after every hole.`,
      mend: (other) => ({ ...other, slip: null }),
    },
  ];
}

/** Whether a diameter is named in inches (a 64th) or in millimeters (a half). */
function namedIn(diameter: Mm): 'in' | 'mm' | 'neither' {
  const whole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-4;
  if (whole(diameter * 2)) return 'mm';
  return whole((diameter / 25.4) * 64) ? 'in' : 'neither';
}

function pinAndBitDeviations(setup: BenchSetup, sound: BenchSetup): readonly Deviation[] {
  const { pin } = setup;
  const found: Deviation[] = [];
  const bits = bothMembers.filter(
    (member) => !same(setup[member].bit.diameter, sound[member].bit.diameter),
  );
  const bit = setup[bits[0] ?? 'a'].bit.diameter;
  const otherPin = !same(pin.diameter, sound.pin.diameter);
  if (otherPin || bits.length > 0) {
    const systems = new Set([namedIn(pin.diameter), namedIn(bit)]);
    const mixed = systems.has('in') && systems.has('mm');
    found.push({
      code: mixed ? 'mixed-systems' : bits.length > 0 ? 'other-bit' : 'other-pin',
      setting: bits.length > 0 ? 'bit' : 'pin',
      members: bits.length > 0 ? bits : bothMembers,
      size: mm(Math.abs(bit - pin.diameter)),
      message: mixed
        ? say`A pin of ${pin.diameter} and a bit of ${bit} are sizes of two systems; they differ by ${mm(Math.abs(bit - pin.diameter))}.`
        : say`The pin is ${pin.diameter} and the bit ${bit}; the plan asks for ${sound.pin.diameter} and ${sound.a.bit.diameter}.`,
      remedy: say`Use a pin of ${sound.pin.diameter} with a bit of ${sound.a.bit.diameter}.`,
      mend: (other) => ({
        ...other,
        pin: { ...other.pin, diameter: sound.pin.diameter },
        a: { ...other.a, bit: bits.includes('a') ? sound.a.bit : other.a.bit },
        b: { ...other.b, bit: bits.includes('b') ? sound.b.bit : other.b.bit },
      }),
    });
  }
  const measured = diameterOfPin(pin);
  const usual = mm(pin.diameter - unmeasuredPinUndersize);
  if (!same(measured, usual)) {
    const thick = measured > usual;
    found.push({
      code: thick ? 'pin-swollen' : 'pin-thin',
      setting: 'pin',
      members: bothMembers,
      size: mm(Math.abs(measured - usual)),
      message: thick
        ? say`The pins measure ${measured}, thicker than a dry pin of that name.`
        : say`The pins measure ${measured}, thinner than a pin of that name should be.`,
      remedy: thick
        ? say`Dry the pins in a warm place, or ease them to ${usual} or a little under.`
        : say`Take other pins, and measure one before you drill.`,
      mend: (other) => ({ ...other, pin: { ...other.pin, measured: usual } }),
    });
  }
  if (!same(pin.length, sound.pin.length)) {
    const size = mm(Math.abs(pin.length - sound.pin.length));
    found.push({
      code: 'other-length',
      setting: 'pin',
      members: bothMembers,
      size,
      message: say`The pins are ${pin.length} long; the holes were planned for ${sound.pin.length}.`,
      remedy: say`Take pins ${sound.pin.length} long, or plan the holes for the pins you have.`,
      mend: (other) => ({ ...other, pin: { ...other.pin, length: sound.pin.length } }),
    });
  }
  const points = bothMembers.filter(
    (member) => !same(setup[member].bit.tip, sound[member].bit.tip),
  );
  const [pointed] = points;
  if (pointed !== undefined) {
    const { tip } = setup[pointed].bit;
    found.push({
      code: 'other-point',
      setting: 'bit',
      members: points,
      size: mm(Math.abs(tip - sound[pointed].bit.tip)),
      message: say`The bit's point stands ${tip} beyond its full diameter; the plan reckoned with ${sound[pointed].bit.tip}.`,
      remedy: say`Plan the joint with the bit that you have: measure its point.`,
      mend: (other) =>
        points.reduce(
          (mended, member) => ({
            ...mended,
            [member]: {
              ...mended[member],
              bit: { ...mended[member].bit, tip: sound[member].bit.tip },
            },
          }),
          other,
        ),
    });
  }
  return found;
}

function placeDeviations(setup: BenchSetup, sound: BenchSetup): readonly Deviation[] {
  const found: Deviation[] = [];
  const { guide, plan } = setup;
  const turned = bothMembers.filter((member) => setup[member].face === 'other');
  if (turned.length > 0) {
    found.push({
      code: 'turned-over',
      setting: 'face',
      members: turned,
      size: mm(Math.max(...turned.map((member) => turnedSize(setup, member)))),
      message: turned.some((member) => drilledInFace(plan, member))
        ? say`Board B was turned over: it was drilled in its wrong face, and its holes run the other way along the joint.`
        : say`The guide was held against the wrong face of ${boards(turned)}, as if turned over: whatever the guide is off the middle now counts twice.`,
      remedy: say`Mark a reference face on both boards and hold the guide against it every time.`,
      mend: (other) => withMembers(other, turned, { face: 'reference' }),
    });
  }
  const hooked = bothMembers.filter((member) => setup[member].end === 'other');
  if (hooked.length > 0) {
    found.push({
      code: 'opposite-ends',
      setting: 'end',
      members: hooked,
      size: mm(Math.max(...hooked.map((member) => hookedSize(setup, member)))),
      message: say`The rule was hooked on the other end of ${boards(hooked)}.`,
      remedy: say`Mark a reference end on both boards and measure every hole from it.`,
      mend: (other) => withMembers(other, hooked, { end: 'reference' }),
    });
  }
  if (guide.centering) {
    const off = bothMembers.filter(
      (member) =>
        !drilledInFace(plan, member) &&
        !same(plan.spec[member].thickness / 2, sound[member].across),
    );
    const [first] = off;
    if (first !== undefined) {
      const size = mm(Math.abs(plan.spec[first].thickness / 2 - sound[first].across));
      found.push({
        code: 'centering-guide',
        setting: 'guide',
        members: off,
        size,
        message: say`A guide that centers itself drills the middle of ${boards(off)}, ${size} from where the hole belongs.`,
        remedy: say`Use a guide that is set from the reference face: ${sound[first].across} to the middle of the bit.`,
        mend: (other) => ({ ...other, guide: { ...other.guide, centering: false } }),
      });
    }
  }
  for (const member of bothMembers) {
    const off = setup[member].across - sound[member].across;
    if (!same(off, 0) && (!guide.centering || drilledInFace(plan, member))) {
      const size = mm(Math.abs(off));
      found.push({
        code: 'across-off',
        setting: 'guide',
        members: [member],
        size,
        message: say`The guide for ${boards([member])} was set ${size} too ${off > 0 ? 'far from' : 'near'} the reference face.`,
        remedy: say`Set it at ${sound[member].across} to the middle of the bit.`,
        mend: (other) => withMembers(other, [member], { across: sound[member].across }),
      });
    }
    const marks = sound[member].marks;
    const worst = Math.max(
      ...marks.map((mark, j) => Math.abs(mark - (setup[member].marks[j] ?? mark))),
    );
    if (!same(worst, 0)) {
      const size = mm(worst);
      found.push({
        code: 'marks-off',
        setting: 'marks',
        members: [member],
        size,
        message: say`The marks on ${boards([member])} are up to ${size} off.`,
        remedy: say`Mark both boards together, from one story stick.`,
        mend: (other) => withMembers(other, [member], { marks }),
      });
    }
  }
  return found;
}

/** How far apart a board's holes and their right places lie when it was turned over. */
function turnedSize(setup: BenchSetup, member: Member): number {
  const { plan, guide } = setup;
  if (drilledInFace(plan, member)) return hookedSize(setup, member);
  const thickness = plan.spec[member].thickness;
  const set = guide.centering ? thickness / 2 : setup[member].across;
  return Math.abs(thickness - 2 * (set + guide.offset));
}

/** How far a board's row moves along the joint when it is measured from its other end. */
function hookedSize({ plan }: BenchSetup, member: Member): number {
  const [first, last] = [plan.holes[0], plan.holes.at(-1)];
  const place = member === 'a' ? 'along' : 'alongB';
  return Math.abs(reachAlong(plan, member) - (first?.[place] ?? 0) - (last?.[place] ?? 0));
}

function leanDeviation(setup: BenchSetup): readonly Deviation[] {
  return bothMembers.flatMap((member) => {
    const { lean } = setup[member];
    const degrees = Math.hypot(lean.along, lean.across);
    if (degrees < 1e-9) return [];
    const depth = setup.plan[member].holeDepth;
    const size = mm(Math.tan((degrees * Math.PI) / 180) * depth);
    return [
      {
        code: 'guide-rocked',
        setting: 'guide',
        members: [member],
        size,
        message: say`The guide was rocked on ${boards([member])}: its holes lean by ${degrees.toFixed(1)}°, ${size} at the bottom.`,
        remedy: say`Clamp the guide flat on the wood, and look at the bit from two sides before each hole.`,
        mend: (other: BenchSetup) =>
          withMembers(other, [member], { lean: { along: 0, across: 0 } }),
      } satisfies Deviation,
    ];
  });
}

function withMembers(
  setup: BenchSetup,
  members: readonly Member[],
  change: Partial<BenchSetup['a']>,
): BenchSetup {
  return members.reduce(
    (mended, member) => ({ ...mended, [member]: { ...mended[member], ...change } }),
    setup,
  );
}
