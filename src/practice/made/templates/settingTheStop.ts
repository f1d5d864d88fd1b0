import type { JointSpec } from '../../../core/joint/types.ts';
import { mm } from '../../../core/length/mm.ts';
import { difference, quantity } from '../../../core/working/expression.ts';
import { about, boardsIn, jointOf } from '../joints.ts';
import { geometry, numbersFrom, passedOver } from '../numbersFrom.ts';
import { guideAtHand, pointedBit, shop, steps } from '../shop.ts';
import type { DraftMistake, Template } from '../template.ts';

const GUIDE =
  "The guide's bushing is {guide.bushing} long and stands {guide.standoff} off the wood. Each hole goes {allowance} past the end of the pin.";

/** The mistakes of a stop that everybody makes once, for one of the boards. */
function mistakesOf(board: 'a' | 'b'): readonly DraftMistake[] {
  return [
    {
      misconception: 'forgot-the-bushing',
      of: `${board}.holeDepth + guide.standoff`,
      why: 'The bit passes through {guide.bushing} of bushing before it meets wood. Set so, the hole would be too shallow by that, or there would be none.',
    },
    {
      misconception: 'forgot-the-standoff',
      of: `${board}.holeDepth + guide.bushing`,
      why: 'The bushing stands {guide.standoff} off the wood. The hole would be that much too shallow.',
    },
    {
      misconception: 'forgot-the-free-depth',
      of: `${board}.engagement + guide.bushing + guide.standoff`,
      why: 'The hole would be just as deep as the pin goes in. It has to go {allowance} past its end.',
    },
    {
      misconception: 'stop-from-the-point',
      of: `${board}.stopFromPoint`,
      why: 'You measured to the very point. The hole would be too shallow by the length of the point, {tip}: measure to the corner of the full diameter.',
    },
  ];
}

const holeDepthBlank = (board: 'a' | 'b'): readonly DraftMistake[] => [
  {
    misconception: 'pin-for-hole',
    of: `${board}.engagement`,
    why: '{this} is the pin in the hole. The hole goes {allowance} past its end.',
  },
  {
    misconception: 'free-depth-twice',
    of: `${board}.holeDepth + allowance`,
    why: 'There is free depth past one end of the pin in this board, not two.',
  },
];

/** The stop for one of two boards that need different ones. */
export const stopForABoard: Template = {
  id: 'stop-for-a-board',
  revision: 1,
  lesson: 'setting-the-stop',
  joints: ['corner', 'tee', 'leg'],
  kind: 'length',
  misconceptions: [
    'forgot-the-bushing',
    'forgot-the-standoff',
    'forgot-the-free-depth',
    'stop-from-the-point',
    'one-stop-for-both',
    'pin-for-hole',
    'free-depth-twice',
  ],
  draft(draws, system) {
    const board = draws.pick(['a', 'b']);
    const [letter, other] = board === 'a' ? ['A', 'b'] : ['B', 'a'];
    const spec: JointSpec = {
      ...jointOf(draws, draws.joint(['corner', 'tee', 'leg']), system),
      guide: guideAtHand(draws, system, 'gap'),
    };
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn[spec.kind]} The pin is {pin.length} long: A holds {a.engagement} of it, B {b.engagement}. ${GUIDE}`,
      ask: `Where does the collar go for ${letter}, measured to the corner of the bit's full diameter?`,
      answer: `${board}.stop`,
      why: `Bushing {guide.bushing}, gap {guide.standoff}, and a hole {${board}.holeDepth} deep: the collar stops the bit after all three.`,
      hint: 'Start at the collar. What does the bit pass through before it reaches the bottom of the hole?',
      mistakes: [
        ...mistakesOf(board),
        {
          misconception: 'one-stop-for-both',
          of: `${other}.stop`,
          why: `That is the stop for the other board. ${letter} holds {${board}.engagement} of the pin, not as much as the other.`,
        },
      ],
      blanks: { [`${board}.holeDepth`]: holeDepthBlank(board) },
    };
  },
};

/** The stop for boards that share one: both hold half of the pin. */
export const stopInAnEdge: Template = {
  id: 'stop-in-an-edge',
  revision: 1,
  lesson: 'setting-the-stop',
  joints: ['edge', 'frame', 'miter'],
  kind: 'length',
  misconceptions: [
    'forgot-the-bushing',
    'forgot-the-standoff',
    'forgot-the-free-depth',
    'stop-from-the-point',
    'hole-for-pin',
    'pin-for-hole',
    'free-depth-twice',
  ],
  draft(draws, system) {
    const spec: JointSpec = {
      ...jointOf(draws, draws.joint(['edge', 'frame', 'miter']), system),
      guide: guideAtHand(draws, system, 'gap'),
    };
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn[spec.kind]} The pin is {pin.length} long, and each board holds half of it. ${GUIDE}`,
      ask: "Where does the collar go, measured to the corner of the bit's full diameter?",
      answer: 'a.stop',
      why: 'Bushing {guide.bushing}, gap {guide.standoff}, and a hole {a.holeDepth} deep: half of the pin and the free depth.',
      hint: 'How deep is the hole? Then add all that the bit passes through before it meets wood.',
      mistakes: [
        ...mistakesOf('a'),
        {
          misconception: 'hole-for-pin',
          of: 'pin.length + allowance + guide.bushing + guide.standoff',
          why: 'That hole would swallow the whole pin. Each board holds half of it.',
        },
      ],
      blanks: { 'a.holeDepth': holeDepthBlank('a') },
    };
  },
};

/** A collar is set: how deep will the hole be? */
export const holeFromTheStop: Template = {
  id: 'hole-from-the-stop',
  revision: 1,
  lesson: 'setting-the-stop',
  joints: ['edge', 'corner', 'tee', 'frame'],
  kind: 'length',
  misconceptions: ['forgot-the-standoff', 'forgot-the-bushing', 'stop-from-the-point'],
  draft(draws, system) {
    const joint = jointOf(draws, draws.joint(['edge', 'corner', 'tee', 'frame']), system);
    const spur = draws.pick(shop[system].spurs);
    const guide = guideAtHand(draws, system, 'gap');
    const bushing = guide.bushing ?? mm(0);
    const standoff = guide.standoff ?? mm(0);
    const collar = mm(bushing + standoff + steps(system, draws.whole(6, 20), draws.whole(10, 32)));
    const depth = geometry(
      'depth',
      'Depth of the hole, at full diameter',
      'h',
      difference(
        quantity('stop', collar),
        quantity('bushing', bushing),
        quantity('standoff', standoff),
      ),
    );
    return {
      kind: 'length',
      setup: { ...joint, guide, bit: { point: { kind: 'brad', spur } } },
      numbers: numbersFrom(
        system,
        [
          ['stop', 'stop', collar],
          ['bushing', 'bushing', bushing],
          ['standoff', 'standoff', standoff],
          ['spur', 'spur', spur],
        ],
        [depth],
      ),
      situation:
        "Somebody has left the collar on the bit, {stop} from the corner of its full diameter. The bit has a spur {spur} long. The guide's bushing is {bushing} long and stands {standoff} off the wood.",
      ask: 'How deep will the hole be, at full diameter?',
      answer: 'depth',
      why: 'The bit goes through {bushing} of bushing and {standoff} of air. What is left of {stop} goes into the wood.',
      hint: 'Take away from the stop what the bit passes through before it meets wood.',
      mistakes: [
        {
          misconception: 'forgot-the-standoff',
          of: 'stop - bushing',
          why: 'The bushing stands {standoff} off the wood. That much of the bit is in the air.',
        },
        {
          misconception: 'forgot-the-bushing',
          of: 'stop - standoff',
          why: 'The bit passes through {bushing} of bushing first.',
        },
        {
          misconception: 'stop-from-the-point',
          of: 'depth - spur',
          why: 'You took the spur off. The stop was measured to the full diameter, and so is the depth; the spur goes beyond both.',
        },
      ],
    };
  },
};

/** Which board was drilled to the wrong depth? */
export const wrongDepth: Template = {
  id: 'wrong-depth',
  revision: 1,
  lesson: 'setting-the-stop',
  joints: ['corner', 'tee'],
  kind: 'fault',
  misconceptions: ['blamed-the-sound-one', 'one-stop-for-both', 'forgot-the-free-depth'],
  draft(draws, system) {
    const spec: JointSpec = {
      ...jointOf(draws, draws.joint(['corner', 'tee']), system),
      bit: { point: pointedBit(draws, system) },
    };
    const { setup, numbers } = about(spec);
    const value = (name: string) => {
      const found = numbers.quantities.get(name);
      return found?.op === 'quantity' ? found.value : NaN;
    };
    const wrong = draws.pick(['a', 'b'] as const);
    const other = wrong === 'a' ? 'b' : 'a';
    const mistake = draws.pick(['one-stop-for-both', 'forgot-the-free-depth'] as const);
    const depth =
      mistake === 'one-stop-for-both' ? `${other}.holeDepth` : `${wrong}.holeDepth - allowance`;
    const collar =
      mistake === 'one-stop-for-both'
        ? value(`${other}.stop`)
        : value(`${wrong}.stop`) - value('allowance');
    const off = Math.abs(collar - value(`${wrong}.stop`));
    const place = (member: 'a' | 'b') => {
      const letter = member.toUpperCase();
      const at = { member, part: 'depth' } as const;
      return member === wrong
        ? {
            id: `depth-${member}`,
            at,
            says: `The holes in ${letter}, {${depth}} deep`,
            right: true,
            misconception: mistake,
            why:
              mistake === 'one-stop-for-both'
                ? `${letter} was drilled with the other board's stop. Its hole should be {${member}.holeDepth} deep: the pin in it, {${member}.engagement}, and the free depth.`
                : `The hole is only as deep as the pin goes in. It should go {allowance} farther, to {${member}.holeDepth}.`,
          }
        : {
            id: `depth-${member}`,
            at,
            says: `The holes in ${letter}, {${member}.holeDepth} deep`,
            misconception: 'blamed-the-sound-one',
            why: `${letter} is right: it holds {${member}.engagement} of the pin, and there is {allowance} of free depth.`,
          };
    };
    return {
      kind: 'fault',
      setup,
      numbers: off > steps(system, 1, 2) ? numbers : passedOver(numbers, 'hardly wrong'),
      situation: `${boardsIn[spec.kind]} The pin is {pin.length} long: A was to hold {a.engagement} of it, B {b.engagement}, with {allowance} of free depth in each. The drawing shows the holes as drilled.`,
      ask: 'Which depth is wrong?',
      drawing: { view: 'section', setup: { spec, [wrong]: { collar: mm(collar) } } },
      places: [place('a'), place('b')],
      working: `${wrong}.holeDepth`,
    };
  },
};
