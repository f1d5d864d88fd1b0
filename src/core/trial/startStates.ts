import { planJoint } from '../joint/planJoint.ts';
import { reckonTip } from '../joint/tip.ts';
import type { JointKind, JointPlan, JointSpec, Pin, System } from '../joint/types.ts';
import { inches, type Mm, mm } from '../length/mm.ts';
import { stockPins } from '../stock/pins.ts';
import type { MeasuredTools } from '../tools/toolSet.ts';
import { classicMistakes } from './classicMistakes.ts';
import type { DeviationCode } from './deviations.ts';
import { type BenchSetup, type MemberSetup, soundSetup } from './drill.ts';
import type { Member } from './trial.ts';
import { trialJob } from './trialJobs.ts';

/** A bench as someone finds it: a job, and how far it has been set up. */
export interface StartState {
  /** As it stands in a link: `#start=same-stop`. */
  readonly id: string;
  readonly title: string;
  /** What happened, in a sentence; it does not say what comes of it. */
  readonly story: string;
  /** The joints in which it shows; the first serves where none is asked for. */
  readonly kinds: readonly JointKind[];
  /** The first cause that `dryFit` gives; null where nothing is wrong, or nothing is set yet. */
  readonly cause: DeviationCode | null;
  /** Set where the sizes themselves are the point: the job's system, and its pin and boards. */
  readonly fixed?: Pick<JointSpec, 'system' | 'a' | 'b'> & { readonly pin: Pin };
  readonly set: (sound: BenchSetup) => BenchSetup;
}

const everyKind: readonly JointKind[] = ['corner', 'edge', 'tee', 'frame', 'miter', 'leg'];

function mistake(code: DeviationCode): StartState['set'] {
  const found = classicMistakes.find((each) => each.code === code);
  if (found === undefined) throw new TypeError(`no classic mistake is called ${code}`);
  return found.make;
}

/** A bit as it measures in a diameter, with the point that the plan's bit has. Lengths in mm. */
export function bitOf(plan: JointPlan, diameter: Mm): MemberSetup['bit'] {
  return { diameter, tip: mm(reckonTip(plan.spec.bit.point, diameter).result) };
}

/** A board drilled without a stop: the depths as they come by eye. */
export function withoutStop(setup: BenchSetup, member: Member): BenchSetup {
  return { ...setup, [member]: mistake('no-stop')(setup)[member] };
}

/** The smallest pin and bit of the drawer, and the collar where an earlier job left it. */
function untouched(sound: BenchSetup): BenchSetup {
  const { plan } = sound;
  const [smallest] = stockPins(plan.system);
  if (smallest === undefined) throw new TypeError(`there are no pins in ${plan.system}`);
  const collar = plan.system === 'in' ? inches(1) : mm(25);
  const idle = (member: MemberSetup): MemberSetup => ({
    ...member,
    bit: bitOf(plan, smallest.diameter),
    stop: { collar },
  });
  return { ...sound, pin: smallest, a: idle(sound.a), b: idle(sound.b) };
}

function fixed(system: System, pin: Pin, a: Mm, b: Mm): NonNullable<StartState['fixed']> {
  const size = (inch: number, metric: number): Mm => (system === 'in' ? inches(inch) : mm(metric));
  const species = 'yellow-poplar';
  return {
    system,
    pin,
    a: { thickness: a, width: size(11.25, 285), length: size(24, 600), species },
    b: { thickness: b, width: size(11.25, 285), length: size(30, 750), species },
  };
}

/** The start states of the trial run, in the order in which a joint is made. */
export const startStates: readonly StartState[] = [
  {
    id: 'own',
    title: 'Nothing set yet',
    story: 'Pin, bit and collar are as an earlier job left them: all of it is yours to set.',
    kinds: everyKind,
    cause: null,
    set: untouched,
  },
  {
    id: 'sound',
    title: 'Set up soundly',
    story: 'Everything is set as the job asks.',
    kinds: everyKind,
    cause: null,
    set: (sound) => sound,
  },
  {
    id: '10-mm-pin-3-8-bit',
    title: 'A 10 mm pin, a 3/8 in bit',
    story: 'The pins are metric; the only bit in the drawer was an inch one.',
    kinds: ['corner'],
    cause: 'mixed-systems',
    fixed: fixed('mm', { diameter: mm(10), length: mm(40) }, mm(22), mm(25)),
    set: mistake('mixed-systems'),
  },
  {
    id: '3-8-pin-10-mm-bit',
    title: 'A 3/8 in pin, a 10 mm bit',
    story: 'The pins are inch ones; the bit came from the metric drawer.',
    kinds: ['corner'],
    cause: 'mixed-systems',
    fixed: fixed(
      'in',
      { diameter: inches(3 / 8), length: inches(1.5) },
      inches(3 / 4),
      inches(7 / 8),
    ),
    set: mistake('mixed-systems'),
  },
  {
    id: '8-mm-pin-5-16-bit',
    title: 'An 8 mm pin, a 5/16 in bit',
    story: 'The pins are metric and the bit is an inch one, but these two sizes lie close.',
    kinds: ['corner'],
    cause: null,
    fixed: fixed('mm', { diameter: mm(8), length: mm(40) }, mm(18), mm(22)),
    set: mistake('mixed-systems'),
  },
  {
    id: '5-16-pin-8-mm-bit',
    title: 'A 5/16 in pin, an 8 mm bit',
    story: 'The pins are inch ones and the bit is metric, but these two sizes lie close.',
    kinds: ['corner'],
    cause: null,
    fixed: fixed(
      'in',
      { diameter: inches(5 / 16), length: inches(1.5) },
      inches(5 / 8),
      inches(7 / 8),
    ),
    set: mistake('mixed-systems'),
  },
  {
    id: 'forgot-bushing',
    title: 'Forgot the bushing',
    story: 'The collar was set for the hole, as if the bit started at the wood.',
    kinds: ['frame', 'edge', 'corner', 'tee', 'miter', 'leg'],
    cause: 'forgot-bushing',
    set: mistake('forgot-bushing'),
  },
  {
    id: 'forgot-allowance',
    title: 'Forgot the free depth',
    story: 'The collar was set for just as much of the pin as each board holds.',
    kinds: everyKind,
    cause: 'forgot-allowance',
    set: mistake('forgot-allowance'),
  },
  {
    id: 'same-stop',
    title: 'The same stop for both boards',
    story: 'A was drilled first, and nobody touched the collar before B.',
    kinds: ['corner', 'tee'],
    cause: 'same-stop',
    set: mistake('same-stop'),
  },
  {
    id: 'stop-slipped',
    title: 'The stop slipped',
    story: 'B was drilled first. After its first hole the collar crept up the bit.',
    kinds: everyKind,
    cause: 'stop-slipped',
    set: mistake('stop-slipped'),
  },
  {
    id: 'no-stop',
    title: 'A bit without a stop',
    story: 'There was no collar: the depths were judged by eye.',
    kinds: everyKind,
    cause: 'no-stop',
    set: mistake('no-stop'),
  },
  {
    id: 'turned-over',
    title: 'One board turned over',
    story: 'The guide was held against B’s other face.',
    kinds: ['edge', 'frame', 'miter', 'leg'],
    cause: 'turned-over',
    set: mistake('turned-over'),
  },
  {
    id: 'opposite-ends',
    title: 'Rule hooked on opposite ends',
    story: 'A was measured from its reference end, B from its other end.',
    kinds: ['edge', 'tee', 'frame', 'leg'],
    cause: 'opposite-ends',
    set: mistake('opposite-ends'),
  },
  {
    id: 'guide-rocked',
    title: 'Guide rocked on the edge',
    story: 'The guide was held on A by hand, and tipped while the bit went in.',
    kinds: ['edge', 'corner', 'tee', 'frame', 'miter', 'leg'],
    cause: 'guide-rocked',
    set: mistake('guide-rocked'),
  },
];

/**
 * The bench of a start state. Throws a RangeError for a kind in which the state does not show.
 * @param system the stock of the job, where the state does not bring its own
 * @param tools someone's own guide, point and pins, which serve instead of the shop's as far as
 *   they were measured; pins where they are of the size that the job takes
 */
export function startSetup(
  start: StartState,
  kind: JointKind,
  system: System,
  tools?: MeasuredTools,
): BenchSetup {
  if (!start.kinds.includes(kind)) {
    throw new RangeError(`start ${start.id} does not show in a joint of the kind ${kind}`);
  }
  const job = trialJob(kind, start.fixed?.system ?? system);
  const plan = planJoint({
    ...job,
    ...start.fixed,
    guide: { ...job.guide, ...tools?.guide },
    bit: { ...job.bit, ...(tools?.bit.point && { point: tools.bit.point }) },
  });
  const sound = soundSetup(plan);
  const { diameter, measured } = tools?.pin ?? {};
  const own = measured !== undefined && diameter === sound.pin.diameter;
  return start.set(own ? { ...sound, pin: { ...sound.pin, measured } } : sound);
}

/** What a link to the trial run asks for. */
export type DecodedStart =
  | { readonly ok: true; readonly start: StartState; readonly kind: JointKind }
  | { readonly ok: false; readonly reason: string };

/**
 * Reads the fragment of a link to the trial run, such as `#start=same-stop;kind=tee`. Links come
 * from anyone: what is not on the list is refused in a sentence.
 */
export function decodeStart(fragment: string): DecodedStart {
  const refused = (why: string): DecodedStart => ({
    ok: false,
    reason: `This link can't be read: ${why}. Choose a start from the list instead.`,
  });
  const fields = new Map<string, string>();
  for (const pair of fragment.replace(/^#/, '').split(';')) {
    const [, key = '', value = ''] = /^([a-z]+)=([a-z0-9-]+)$/.exec(pair) ?? [];
    if (!['start', 'kind', 'show'].includes(key) || fields.has(key)) {
      return refused('it holds something that means nothing here');
    }
    fields.set(key, value);
  }
  const start = startStates.find(({ id }) => id === fields.get('start'));
  if (start === undefined) return refused('there is no start of that name');
  const asked = fields.get('kind');
  const kind = asked === undefined ? start.kinds[0] : start.kinds.find((each) => each === asked);
  if (kind === undefined) return refused('its joint does not go with its start');
  return { ok: true, start, kind };
}

/** The fragment of a link to a start, without its '#'. @example 'start=same-stop;kind=tee' */
export function encodeStart(start: StartState, kind: JointKind): string {
  return kind === start.kinds[0] ? `start=${start.id}` : `start=${start.id};kind=${kind}`;
}
