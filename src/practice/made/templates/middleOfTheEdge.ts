import { steps } from '../shop.ts';
import { about, jointOf } from '../joints.ts';
import type { Template } from '../template.ts';

/** Half of a thickness, which is half of a fraction. */
export const middleOfTheEdge: Template = {
  id: 'middle-of-the-edge',
  revision: 1,
  lesson: 'reading-a-rule',
  joints: ['edge', 'frame'],
  kind: 'length',
  misconceptions: ['doubled-for-halved', 'marked-the-edge-of-it'],
  draft(draws, system) {
    const joint = jointOf(draws, draws.joint(['edge', 'frame']), system);
    const thickness = steps(system, draws.whole(9, 23), draws.whole(14, 32));
    const spec = {
      ...joint,
      a: { ...joint.a, thickness },
      b: { ...joint.b, thickness },
      pin: 'choose' as const,
    };
    return {
      kind: 'length',
      ...about(spec),
      situation: 'A board has been planed to {a.thickness}.',
      ask: 'The hole is to be in the middle of its edge. How far from the face is that?',
      answer: 'acrossA',
      why: 'Half of {a.thickness} is {acrossA}.',
      hint: 'To halve a fraction, halve its top number, or double its bottom number.',
      mistakes: [
        {
          misconception: 'doubled-for-halved',
          of: '2 * a.thickness',
          why: '{this} is more than the board is thick. A smaller bottom number makes a larger fraction, not half of it.',
        },
        {
          misconception: 'marked-the-edge-of-it',
          of: 'a.thickness',
          why: 'That is the far face. The middle is half as far.',
        },
      ],
    };
  },
};
