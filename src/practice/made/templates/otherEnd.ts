import { difference, quantity } from '../../../core/working/expression.ts';
import { taken } from '../../../core/working/reckon.ts';
import { jointOf } from '../joints.ts';
import { geometry, numbersFrom } from '../numbersFrom.ts';
import { steps } from '../shop.ts';
import type { Template } from '../template.ts';

/** A rule was hooked on opposite ends of the two boards: how far apart are the holes? */
export const otherEnd: Template = {
  id: 'rule-on-the-other-end',
  revision: 1,
  lesson: 'faces-edges-ends-and-marks',
  joints: ['corner', 'tee'],
  kind: 'length',
  misconceptions: ['mirrored-the-row', 'place-for-distance'],
  draft(draws, system) {
    const spec = jointOf(draws, draws.joint(['corner', 'tee']), system);
    const mark = steps(system, draws.whole(12, 44), 5 * draws.whole(4, 14));
    const width = quantity('W', spec.a.width);
    const x = quantity('x', mark);
    const from = geometry(
      'from',
      "The hole in B from B's reference end",
      "x'",
      difference(width, x),
    );
    const apart = geometry(
      'apart',
      'From the hole in A to the hole in B',
      'apart',
      difference(taken(from), x),
    );
    const numbers = numbersFrom(
      system,
      [
        ['a.width', 'W', spec.a.width],
        ['mark', 'x', mark],
      ],
      [from, apart],
    );
    return {
      kind: 'length',
      setup: spec,
      numbers,
      situation:
        'A hole is marked {mark} from the edge on both boards, which are {a.width} wide. But on A the rule was hooked on the reference edge, and on B on the other one.',
      ask: 'How far apart are the two holes, with the reference edges of both boards flush?',
      answer: 'apart',
      why: 'In B the hole is {from} from the reference edge, in A {mark}. They are {apart} apart: no pin finds both.',
      hint: 'Work out first how far the hole in B is from the reference edge.',
      mistakes: [
        {
          misconception: 'mirrored-the-row',
          of: 'mark',
          why: '{this} is what the rule showed on both boards. From the reference edge it is another number on B.',
        },
        {
          misconception: 'place-for-distance',
          of: 'from',
          why: '{this} is where the hole in B is. How far is that from the hole in A?',
        },
      ],
      blanks: {
        from: [
          {
            misconception: 'mirrored-the-row',
            of: 'mark',
            why: '{this} is measured from the other edge.',
          },
        ],
      },
    };
  },
};
