import { planJoint } from '../../../core/joint/planJoint.ts';
import type { JointSpec } from '../../../core/joint/types.ts';
import { about, jointOf } from '../joints.ts';
import { passedOver, withMore } from '../numbersFrom.ts';
import { steps } from '../shop.ts';
import type { Template } from '../template.ts';

/** How many pins does the whole plant stand take? */
export const pinsForAPiece: Template = {
  id: 'pins-for-a-piece',
  revision: 1,
  lesson: 'plan-a-whole-piece',
  joints: ['tee'],
  kind: 'one',
  misconceptions: ['one-end-of-the-shelf', 'one-joint-of-many', 'counted-the-spaces'],
  draft(draws, system) {
    const endMargin = steps(system, draws.whole(16, 28), 5 * draws.whole(5, 8));
    const maxPitch = steps(system, 16 * draws.whole(2, 4), 10 * draws.whole(5, 10));
    const spec: JointSpec = { ...jointOf(draws, 'tee', system), layout: { endMargin, maxPitch } };
    const shelves = draws.whole(2, 4);
    const { setup, numbers } = about(spec);
    const plan = planJoint(spec);
    const asDrawn = Math.abs(plan.spec.layout.endMargin - endMargin) < 1e-6;
    // Two corners under the top, and both ends of every shelf.
    const joints = 2 + 2 * shelves;
    return {
      kind: 'one',
      setup,
      numbers: withMore(
        asDrawn ? numbers : passedOver(numbers, 'the joint is too short for its margins'),
        [
          ['spaces', 'spaces', plan.positions.length - 1, 'count'],
          ['widest', 'P', maxPitch],
        ],
      ),
      situation: `A plant stand has a top on two sides and ${shelves} shelves between the sides. All its boards are {a.width} wide. In every joint the first and the last pin stand {layout.margin} from the edges, and no two neighbors are more than {widest} apart.`,
      ask: 'How many pins does the stand take, without spares?',
      choices: [
        {
          id: 'right',
          of: `${joints} * layout.count`,
          right: true,
          why: `There are ${joints} joints: two under the top and two for each shelf. Each takes {layout.count} pins.`,
        },
        {
          id: 'one-end',
          of: `${2 + shelves} * layout.count`,
          misconception: 'one-end-of-the-shelf',
          why: 'A shelf has two ends, and each is a joint.',
        },
        {
          id: 'one-joint',
          of: 'layout.count',
          misconception: 'one-joint-of-many',
          why: `That is one joint. The stand has ${joints}.`,
        },
        {
          id: 'spaces',
          of: `${joints} * spaces`,
          misconception: 'counted-the-spaces',
          why: 'You counted the spaces between the pins. Each joint has one more pin than spaces.',
        },
      ],
      working: `${joints} * layout.count`,
    };
  },
};
