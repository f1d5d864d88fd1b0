import type { JointSpec } from '../../../core/joint/types.ts';
import { mm } from '../../../core/length/mm.ts';
import { about, boardsIn, jointOf } from '../joints.ts';
import { steps } from '../shop.ts';
import type { Template } from '../template.ts';

/** A corner whose top stands out past the side: where do the holes go in the top? */
export const overhangOfTheTop: Template = {
  id: 'overhang-of-the-top',
  revision: 1,
  lesson: 'corner-joint',
  joints: ['corner'],
  kind: 'length',
  misconceptions: ['forgot-the-shift', 'marked-the-edge-of-it', 'wrong-board'],
  draft(draws, system) {
    const overhang = steps(system, draws.whole(4, 24), draws.whole(6, 40));
    const spec: JointSpec = { ...jointOf(draws, 'corner', system), overhang };
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn.corner} The top stands out {overhang} past the outer face of the side. The holes in A are in the middle of its thickness.`,
      ask: 'How far from the end of B are the middles of its holes?',
      answer: 'acrossB',
      why: 'From the end of B to the outer face of A it is {overhang}, and from there to the middle of A another {acrossA}.',
      hint: 'How far is it from the end of B to the outer face of A? And from there to the middle of A?',
      mistakes: [
        {
          misconception: 'forgot-the-shift',
          of: 'acrossA',
          why: "That is half of A's thickness. But A's face doesn't begin at the end of B: the top stands out past it.",
        },
        {
          misconception: 'marked-the-edge-of-it',
          of: 'overhang',
          why: 'That is where the face of A will be. Its holes are in the middle of its thickness.',
        },
        {
          misconception: 'wrong-board',
          of: 'overhang + b.thickness / 2',
          why: 'You added half of the thickness of B. It is A that stands there.',
        },
      ],
      blanks: {
        acrossA: [
          {
            misconception: 'marked-the-edge-of-it',
            of: 'a.thickness',
            why: 'That is the whole thickness. The hole is in the middle of it.',
          },
        ],
      },
    };
  },
};

/** A shelf's height on its side: where do the holes go? */
export const heightOfTheShelf: Template = {
  id: 'height-of-the-shelf',
  revision: 1,
  lesson: 'tee-joint-for-a-fixed-shelf',
  joints: ['tee'],
  kind: 'length',
  misconceptions: ['marked-the-edge-of-it', 'mirrored-the-row', 'wrong-board', 'forgot-the-shift'],
  draft(draws, system) {
    const at = steps(system, draws.whole(64, 176), 5 * draws.whole(20, 56));
    const spec: JointSpec = { ...jointOf(draws, 'tee', system), at };
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn.tee} The side is {b.length} long. The underside of the shelf is to be {at} above its lower end.`,
      ask: "How far from the side's lower end are the middles of its holes?",
      answer: 'acrossB',
      why: 'The underside of the shelf is at {at}, and the middle of its thickness {acrossA} above that.',
      hint: 'Where is the underside of the shelf? And how far above it is the middle of the shelf?',
      mistakes: [
        {
          misconception: 'marked-the-edge-of-it',
          of: 'at',
          why: 'That is the underside of the shelf. Drilled there, the shelf would sit too low by half of its thickness.',
        },
        {
          misconception: 'mirrored-the-row',
          of: 'b.length - acrossB',
          why: 'That is the same place from the upper end. The rule is hooked on the lower one.',
        },
        {
          misconception: 'wrong-board',
          of: 'at + b.thickness / 2',
          why: 'You added half of the thickness of the side. It is the shelf that stands there.',
        },
        {
          misconception: 'forgot-the-shift',
          of: 'acrossA',
          why: "That is half of the shelf's thickness. The shelf begins {at} from the end.",
        },
      ],
    };
  },
};

/** A rail set back behind its stile: where do the holes go in the stile? */
export const revealOfTheRail: Template = {
  id: 'reveal-of-the-rail',
  revision: 1,
  lesson: 'frame-joint',
  joints: ['frame', 'edge'],
  kind: 'length',
  misconceptions: ['reveal-for-distance', 'reveal-the-wrong-way', 'forgot-the-shift'],
  draft(draws, system) {
    const kind = draws.joint(['frame', 'frame', 'edge']);
    const joint = jointOf(draws, kind, system);
    const reveal = steps(system, draws.whole(1, 4), draws.whole(2, 6));
    const thickness = mm(joint.a.thickness + reveal);
    const spec: JointSpec = { ...joint, reveal, b: { ...joint.b, thickness } };
    const boards =
      kind === 'frame'
        ? "The plant stand's face frame: a rail, A, is drilled in its end, and a stile, B, in its edge."
        : 'Two boards, A and B, are joined edge to edge.';
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boards} A is {a.thickness} thick and B {b.thickness}. The marked face of A is to lie {reveal} behind the marked face of B. The holes in A are in the middle of its thickness.`,
      ask: 'How far from the marked face of B are the middles of its holes?',
      answer: 'acrossB',
      why: "A's marked face lies {reveal} behind B's, and A's holes another {acrossA} behind that.",
      hint: "Start at B's marked face. How far is it to A's face, and from there to A's holes?",
      mistakes: [
        {
          misconception: 'reveal-for-distance',
          of: 'reveal',
          why: "That is where A's face lies. Its holes are in the middle of its thickness.",
        },
        {
          misconception: 'reveal-the-wrong-way',
          of: 'acrossA - reveal',
          why: "You took the reveal off. Then A's face would stand in front of B's. It lies behind: add.",
        },
        {
          misconception: 'forgot-the-shift',
          of: 'acrossA',
          why: 'Drilled so, the two faces would be flush. A is to lie {reveal} behind.',
        },
      ],
    };
  },
};

/** An apron set back behind its leg: where do the holes go in the leg? */
export const setbackOfTheApron: Template = {
  id: 'setback-of-the-apron',
  revision: 1,
  lesson: 'leg-and-apron',
  joints: ['leg'],
  kind: 'length',
  misconceptions: ['forgot-the-shift', 'marked-the-edge-of-it', 'to-the-middle-of-the-leg'],
  draft(draws, system) {
    const setback = steps(system, draws.whole(2, 6), draws.whole(3, 10));
    const spec: JointSpec = { ...jointOf(draws, 'leg', system), setback };
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn.leg} The apron's face lies {setback} behind the leg's outer face.`,
      ask: "How far from the leg's outer face are the middles of its holes?",
      answer: 'acrossB',
      why: "It is {setback} to the apron's face, and {acrossA} from there to the middle of the apron.",
      hint: "How far is it from the leg's outer face to the apron's? And to the middle of the apron?",
      mistakes: [
        {
          misconception: 'forgot-the-shift',
          of: 'acrossA',
          why: 'That would make the apron flush with the leg. It is set back by {setback}.',
        },
        {
          misconception: 'marked-the-edge-of-it',
          of: 'setback',
          why: "That is where the apron's face will be. Its holes are in the middle of its thickness.",
        },
        {
          misconception: 'to-the-middle-of-the-leg',
          of: 'b.thickness / 2',
          why: 'That is the middle of the leg. The apron is not in the middle: it lies {setback} behind the outer face.',
        },
      ],
    };
  },
};
