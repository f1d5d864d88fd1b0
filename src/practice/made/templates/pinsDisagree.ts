import { inches, mm } from '../../../core/length/mm.ts';
import { about, jointOf } from '../joints.ts';
import { withMore } from '../numbersFrom.ts';
import type { Template } from '../template.ts';

const STEP = { in: inches(0.001), mm: mm(0.02) } as const;

/** Two pins that each agree with the first nearly: by how much do they disagree with each other? */
export const pinsDisagree: Template = {
  id: 'pins-disagree',
  revision: 1,
  lesson: 'errors-odds-and-the-dry-fit',
  joints: ['corner', 'tee', 'edge'],
  kind: 'one',
  misconceptions: ['took-the-difference', 'agrees-with-the-first'],
  draft(draws, system) {
    const step = STEP[system];
    const values = {
      joint: jointOf(draws, draws.joint(['corner', 'tee', 'edge']), system),
      secondFarther: mm(step * draws.whole(2, 9)),
      thirdNearer: mm(step * draws.whole(2, 9)),
      guideOff: mm(0),
    };
    const setup = { calculation: 'agreement', system, values };
    const { secondFarther, thirdNearer } = values;
    return {
      kind: 'one',
      setup,
      numbers: withMore(about(setup).numbers, [
        ['difference', 'difference', Math.abs(secondFarther - thirdNearer), 'fine'],
        ['larger', 'larger', Math.max(secondFarther, thirdNearer), 'fine'],
      ]),
      situation:
        'Three holes were measured in each board. From the first hole to the second it is {second} farther in B than in A. From the first to the third it is {third} less far.',
      ask: 'By how much do the second and the third pin disagree with each other?',
      choices: [
        {
          id: 'sum',
          of: 'apart',
          right: true,
          why: 'One is off in one direction, the other in the other. Their errors add up: {second} and {third}.',
        },
        {
          id: 'difference',
          of: 'difference',
          misconception: 'took-the-difference',
          why: 'They would cancel in part if both were off in the same direction. One is farther, the other less far.',
        },
        {
          id: 'larger',
          of: 'larger',
          misconception: 'agrees-with-the-first',
          why: 'That is how far one of them disagrees with the first. The other is off the other way.',
        },
      ],
      working: 'apart',
    };
  },
};
