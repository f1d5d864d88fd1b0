import type { JointSpec } from '../../../core/joint/types.ts';
import { mm } from '../../../core/length/mm.ts';
import { about, boardsIn, instead, jointOf } from '../joints.ts';
import { steps } from '../shop.ts';
import type { Template } from '../template.ts';

/** Two rows of pins meet inside a leg: how deep may a hole go? */
export const roomInTheLeg: Template = {
  id: 'room-in-the-leg',
  revision: 1,
  lesson: 'leg-and-apron',
  joints: ['leg'],
  kind: 'length',
  misconceptions: [
    'whole-leg-is-free',
    'to-the-middle-of-the-leg',
    'forgot-the-shift',
    'to-the-middle-of-a-hole',
  ],
  draft(draws, system) {
    const setback = steps(system, draws.whole(2, 5), draws.whole(3, 8));
    const spec: JointSpec = { ...jointOf(draws, 'leg', system), setback };
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn.leg} Another apron comes from the next side, at the same height. Both lie {setback} behind the leg's outer faces, and all holes are {bit.diameter} across, in the middle of the aprons.`,
      ask: "How much wood is there along a hole, as far as the other apron's holes?",
      answer: 'b.limit',
      why: "The other row's middle lies {acrossB} behind its own outer face, and its holes come half of {bit.diameter} nearer. What is left of {b.thickness} is free.",
      hint: "How far behind the leg's outer face does the other row lie? Its holes have a radius, too.",
      mistakes: [
        {
          misconception: 'whole-leg-is-free',
          of: 'b.thickness',
          why: 'The leg is {b.thickness} thick, but the holes of the other apron are in the way.',
        },
        {
          misconception: 'to-the-middle-of-the-leg',
          of: 'b.thickness / 2',
          why: 'The rows do not meet in the middle of the leg. The other row lies {acrossB} from its outer face.',
        },
        {
          misconception: 'forgot-the-shift',
          of: 'changed.b.limit',
          changed: instead(spec, { setback: mm(0) }),
          why: 'You put the aprons flush with the leg. They lie {setback} behind its faces, and so do their holes.',
        },
        {
          misconception: 'to-the-middle-of-a-hole',
          of: 'b.thickness - acrossB',
          why: 'That is as far as the middle of the other holes. Their edge comes sooner, by half of {bit.diameter}.',
        },
      ],
      blanks: {
        acrossB: [
          {
            misconception: 'forgot-the-shift',
            of: 'acrossA',
            why: 'The apron lies {setback} behind the face of the leg. Add that.',
          },
        ],
      },
    };
  },
};
