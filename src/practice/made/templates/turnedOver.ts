import { inches, mm } from '../../../core/length/mm.ts';
import { about, jointOf } from '../joints.ts';
import { withMore } from '../numbersFrom.ts';
import type { Template } from '../template.ts';

const OFFSETS = {
  in: [1 / 32, 3 / 64, 1 / 16, 5 / 64, 3 / 32].map(inches),
  mm: [1, 1.5, 2, 2.5].map(mm),
} as const;

/** A guide is off the middle and one board was turned over: what step is there? */
export const turnedOver: Template = {
  id: 'one-board-turned-over',
  revision: 1,
  lesson: 'faces-edges-ends-and-marks',
  joints: ['edge', 'frame'],
  kind: 'one',
  misconceptions: ['offset-counts-once', 'same-guide-same-place', 'shared-error-shows'],
  draft(draws, system) {
    const offset = draws.pick(OFFSETS[system]);
    const turned = draws.pick(['one', 'one', 'none']);
    const joint = jointOf(draws, draws.pick(['edge', 'frame']), system);
    const { setup, numbers } = about({ ...joint, guide: { ...joint.guide, offset } });
    const step = {
      id: 'twice',
      of: 'twice',
      why: "One hole is {guide.offset} off to one side of the middle. In the board that was turned over it is off to the other side. The faces differ by {twice}, twice the guide's error.",
    };
    const once = {
      id: 'once',
      of: 'guide.offset',
      misconception: 'offset-counts-once',
      why: '{this} is how far one hole is off. The other is off too: to the other side if its board was turned over, to the same side if not.',
    };
    const flush = { id: 'flush', says: 'None: the faces are flush.' };
    return {
      kind: 'one',
      setup,
      numbers: withMore(numbers, [['twice', '2 offset', 2 * offset]]),
      situation: `Your guide drills {guide.offset} off the middle of a board {a.thickness} thick. A was drilled with the guide against its marked face. ${
        turned === 'one'
          ? 'B was turned over: there the guide lay against the other face.'
          : 'So was B.'
      }`,
      ask: 'The marked faces of both boards are on one side. What step is there between them?',
      choices:
        turned === 'one'
          ? [
              { ...step, right: true },
              once,
              {
                ...flush,
                misconception: 'same-guide-same-place',
                why: 'The guide drills off the middle. Held against opposite faces, it puts the two holes on opposite sides of it.',
              },
            ]
          : [
              {
                ...step,
                misconception: 'shared-error-shows',
                why: 'That would come of turning one board over. Here both holes are off to the same side by the same amount, and the error cancels.',
              },
              once,
              {
                ...flush,
                right: true,
                why: 'Both holes are off the middle by {guide.offset}, and to the same side. Nothing of it shows in the joint.',
              },
            ],
    };
  },
};
