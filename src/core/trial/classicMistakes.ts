import { type Mm, TOLERANCE, inches, mm } from '../length/mm.ts';
import type { DeviationCode } from './deviations.ts';
import type { BenchSetup, MemberSetup } from './drill.ts';
import type { Member } from './trial.ts';

/** A mistake that everybody makes once. */
export interface ClassicMistake {
  /** The cause that `dryFit` gives for it. */
  readonly code: DeviationCode;
  readonly title: string;
  /** The setup with the mistake made. */
  readonly make: (setup: BenchSetup) => BenchSetup;
}

/** Sizes of the two systems that are near enough to be taken for each other. */
const lookAlikes: readonly (readonly [Mm, Mm])[] = [
  [mm(6), inches(1 / 4)],
  [mm(8), inches(5 / 16)],
  [mm(10), inches(3 / 8)],
  [mm(12), inches(1 / 2)],
];

/** More than this is not drilled too deep by a slip of the collar or by eye, mm. */
const deepest = 8;

/** The mistakes of the trial run, in the order in which a joint is made. */
export const classicMistakes: readonly ClassicMistake[] = [
  {
    code: 'mixed-systems',
    title: 'Pin and bit of different systems',
    make: (setup) => {
      const bit = lookAlike(setup.pin.diameter);
      const scaled = (member: Member): MemberSetup => {
        const { diameter, tip } = setup[member].bit;
        return { ...setup[member], bit: { diameter: bit, tip: mm((tip * bit) / diameter) } };
      };
      return { ...setup, a: scaled('a'), b: scaled('b') };
    },
  },
  {
    code: 'forgot-bushing',
    title: 'Forgot the bushing',
    make: (setup) => collarsLess(setup, setup.guide.bushing),
  },
  {
    code: 'forgot-allowance',
    title: 'Forgot the free depth',
    make: (setup) => collarsLess(setup, setup.plan.spec.allowance),
  },
  {
    code: 'same-stop',
    title: 'Same stop for both boards',
    make: (setup) => {
      const second = setup.first === 'a' ? 'b' : 'a';
      return { ...setup, [second]: { ...setup[second], stop: setup[setup.first].stop } };
    },
  },
  {
    code: 'no-stop',
    title: 'A bit without a stop',
    make: (setup) => ({ ...setup, a: byEye(setup, 'a'), b: byEye(setup, 'b') }),
  },
  {
    code: 'stop-slipped',
    title: 'The stop slipped after the first hole',
    make: (setup) => ({
      ...setup,
      first: 'b',
      slip: { after: 1, by: mm(Math.min(deepest, setup.plan.b.woodLeft + 2)) },
    }),
  },
  {
    code: 'turned-over',
    title: 'One board turned over',
    make: (setup) => ({ ...setup, b: { ...setup.b, face: 'other' } }),
  },
  {
    code: 'opposite-ends',
    title: 'Rule hooked on opposite ends',
    make: (setup) => ({ ...setup, b: { ...setup.b, end: 'other' } }),
  },
  {
    code: 'guide-rocked',
    title: 'Guide rocked on the edge',
    make: (setup) => ({ ...setup, a: { ...setup.a, lean: { along: 0, across: 3 } } }),
  },
];

/** The size of the other system that a pin is taken for; where it has none, a 64th more. */
export function lookAlike(diameter: Mm): Mm {
  const is = (size: Mm): boolean => Math.abs(size - diameter) <= TOLERANCE;
  const pair = lookAlikes.find(([metric, inch]) => is(metric) || is(inch));
  if (pair === undefined) return mm(diameter + inches(1 / 64));
  const [metric, inch] = pair;
  return is(metric) ? inch : metric;
}

function collarsLess(setup: BenchSetup, less: Mm): BenchSetup {
  const shorter = (member: MemberSetup): MemberSetup =>
    'collar' in member.stop
      ? { ...member, stop: { collar: mm(Math.max(0, member.stop.collar - less)) } }
      : member;
  return { ...setup, a: shorter(setup.a), b: shorter(setup.b) };
}

/** Depths as they come by eye: the first hole too deep, the next too shallow, and so on. */
function byEye(setup: BenchSetup, member: Member): MemberSetup {
  const { holeDepth, woodLeft } = setup.plan[member];
  const deep = Math.min(deepest, woodLeft + 1);
  const shallow = 2 * setup.plan.spec.allowance + 1;
  return {
    ...setup[member],
    stop: {
      byEye: setup[member].marks.map((_, j) =>
        mm(Math.max(0, j % 2 === 0 ? holeDepth + deep : holeDepth - shallow)),
      ),
    },
  };
}
