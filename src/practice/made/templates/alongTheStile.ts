import type { JointSpec } from '../../../core/joint/types.ts';
import { planJoint } from '../../../core/joint/planJoint.ts';
import { about, boardsIn, jointOf } from '../joints.ts';
import { passedOver } from '../numbersFrom.ts';
import { steps } from '../shop.ts';
import type { Template } from '../template.ts';

/** A rail that meets its stile away from the end: where do the marks go on the stile? */
export const marksOnTheStile: Template = {
  id: 'marks-on-the-stile',
  revision: 1,
  lesson: 'frame-joint',
  joints: ['frame'],
  kind: 'length',
  misconceptions: ['forgot-the-shift', 'marked-the-edge-of-it', 'mirrored-the-row'],
  draft(draws, system) {
    const endMargin = steps(system, draws.whole(9, 14), draws.whole(14, 22));
    const at = steps(system, draws.whole(24, 160), 5 * draws.whole(8, 50));
    const spec: JointSpec = { ...jointOf(draws, 'frame', system), at, layout: { endMargin } };
    const { setup, numbers } = about(spec);
    const { positions, spec: resolved } = planJoint(spec);
    const asDrawn =
      positions.length === 2 && Math.abs(resolved.layout.endMargin - endMargin) < 1e-6;
    const second = draws.pick([true, false]);
    const [own, other] = second
      ? ['layout.margin + layout.pitch', 'layout.margin']
      : ['layout.margin', 'layout.margin + layout.pitch'];
    return {
      kind: 'length',
      setup,
      numbers: asDrawn ? numbers : passedOver(numbers, 'the rail is too narrow for its margins'),
      situation: `${boardsIn.frame} The rail's lower edge meets the stile {at} above the stile's lower end. The rail has two pins, each {layout.margin} from one of its edges.`,
      ask: `How far from the stile's lower end is the mark for its ${second ? 'upper' : 'lower'} pin?`,
      answer: `at + ${own}`,
      why: `The rail begins {at} above the stile's end, and the pin is {${own}} farther up.`,
      hint: "Where does the rail begin on the stile? And how far is the pin from the rail's lower edge?",
      mistakes: [
        {
          misconception: 'forgot-the-shift',
          of: own,
          why: 'That is its place on the rail. On the stile the rail begins at {at}.',
        },
        {
          misconception: 'marked-the-edge-of-it',
          of: 'at',
          why: "That is where the rail's lower edge meets the stile, not where the pin goes in.",
        },
        {
          misconception: 'mirrored-the-row',
          of: `at + ${other}`,
          why: "That is the other pin. You measured from the rail's upper edge down, or the other way about.",
        },
      ],
    };
  },
};
