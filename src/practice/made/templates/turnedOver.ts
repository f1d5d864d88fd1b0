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
    const joint = jointOf(draws, draws.joint(['edge', 'frame']), system);
    // No errors along the row: only the guide is off.
    const none = mm(0);
    const setup = {
      calculation: 'agreement',
      system,
      values: { joint, secondFarther: none, thirdNearer: none, guideOff: offset },
    };
    const { numbers } = about(setup);
    const step = {
      id: 'proud',
      of: 'proud',
      why: "One hole is {guideOff} off to one side of the middle. In the board that was turned over it is off to the other side. The faces differ by {proud}, twice the guide's error.",
    };
    const once = {
      id: 'once',
      of: 'guideOff',
      misconception: 'offset-counts-once',
      why: '{this} is how far one hole is off. The other one is off as well: to the other side where its board was turned over, to the same side where it was not.',
    };
    const flush = { id: 'flush', says: 'None: the faces are flush.' };
    return {
      kind: 'one',
      setup,
      numbers: withMore(numbers, [['a.thickness', 't', joint.a.thickness]]),
      situation: `Your guide drills {guideOff} off the middle of a board {a.thickness} thick. A was drilled with the guide against its marked face. ${
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
                why: 'Both holes are off the middle by {guideOff}, and to the same side. Nothing of it shows in the joint.',
              },
            ],
      working: turned === 'one' ? 'proud' : 'inA',
    };
  },
};
