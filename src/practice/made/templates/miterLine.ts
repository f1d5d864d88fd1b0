import { about, boardsIn, jointOf } from '../joints.ts';
import { difference, quantity } from '../../../core/working/expression.ts';
import { geometry, withMore, withStep } from '../numbersFrom.ts';
import { planJoint } from '../../../core/joint/planJoint.ts';
import type { Template } from '../template.ts';

/** How long is the line that a miter is glued along? */
export const lineOfTheMiter: Template = {
  id: 'line-of-the-miter',
  revision: 1,
  lesson: 'miter-joint',
  joints: ['miter'],
  kind: 'length',
  misconceptions: ['square-cut-for-miter', 'both-widths-for-miter'],
  draft(draws, system) {
    return {
      kind: 'length',
      ...about(jointOf(draws, 'miter', system)),
      situation: boardsIn.miter,
      ask: 'How long is the cut, from the heel to the toe?',
      answer: 'jointLength',
      why: 'A cut at 45° runs across as far as it runs along: it is the width times the square root of 2, about 1.414.',
      hint: 'The cut is the long side of a triangle whose two short sides are as long as the member is wide.',
      mistakes: [
        {
          misconception: 'square-cut-for-miter',
          of: 'a.width',
          why: 'That is the width, which is how long a square cut would be. A slanted one is longer.',
        },
        {
          misconception: 'both-widths-for-miter',
          of: '2 * a.width',
          why: 'That is the way around the corner, across and along. The cut goes straight.',
        },
      ],
    };
  },
};

/** How much of the cut is left between the last pin and the toe? */
export const pinToTheToe: Template = {
  id: 'pin-to-the-toe',
  revision: 1,
  lesson: 'miter-joint',
  joints: ['miter'],
  kind: 'length',
  misconceptions: ['square-cut-for-miter', 'both-widths-for-miter', 'mirrored-the-row'],
  draft(draws, system) {
    const spec = jointOf(draws, 'miter', system);
    const { setup, numbers } = about(spec);
    const { positions, spec: resolved } = planJoint(spec);
    const last = positions.at(-1) ?? 0;
    const toToe = geometry(
      'toToe',
      'From the last pin to the toe',
      'q',
      difference(quantity('J', resolved.jointLength), quantity('x', last)),
    );
    return {
      kind: 'length',
      setup,
      numbers: withStep(withMore(numbers, [['last', 'x', last]]), toToe),
      situation: `${boardsIn.miter} The last pin stands {last} from the heel, along the cut.`,
      ask: 'How far is it from there to the toe, along the cut? No hole at that pin can be deeper.',
      answer: 'toToe',
      why: 'The whole cut is {jointLength} long. Take off the {last} from the heel to the pin.',
      hint: 'Work out the length of the whole cut first: the width times 1.414.',
      mistakes: [
        {
          misconception: 'square-cut-for-miter',
          of: 'a.width - last',
          why: 'You took the width for the length of the cut. At 45° it is longer: {jointLength}.',
        },
        {
          misconception: 'both-widths-for-miter',
          of: '2 * a.width - last',
          why: 'You added two widths for the cut. It goes straight: {jointLength}.',
        },
        {
          misconception: 'mirrored-the-row',
          of: 'last',
          why: 'That is measured from the heel. The question is what is left to the toe.',
        },
      ],
      blanks: {
        jointLength: [
          {
            misconception: 'square-cut-for-miter',
            of: 'a.width',
            why: 'That is the width. A cut at 45° is longer.',
          },
          {
            misconception: 'both-widths-for-miter',
            of: '2 * a.width',
            why: 'That is the way around the corner. The cut goes straight.',
          },
        ],
      },
    };
  },
};
