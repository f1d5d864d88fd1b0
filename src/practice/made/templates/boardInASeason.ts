import { species } from '../../../core/moisture/species.ts';
import { about } from '../joints.ts';
import { shop } from '../shop.ts';
import type { Template } from '../template.ts';

/** Woods whose two ways of moving were both read in the table itself. */
const WOODS = [
  'birch, yellow',
  'cherry, black',
  'maple, red (soft)',
  'maple, sugar (hard)',
  'red oak, commercial',
  'white oak, commercial',
];

/** How much wider does a board grow? */
export const boardInASeason: Template = {
  id: 'board-in-a-season',
  revision: 1,
  lesson: 'moisture-and-seasons',
  joints: [],
  kind: 'length',
  misconceptions: ['other-way-of-the-rings', 'change-for-size', 'forgot-where-it-started'],
  draft(draws, system) {
    const wood = species(draws.pick(WOODS))!;
    const from = draws.whole(6, 8);
    const values = {
      size: draws.pick(shop[system].widths.slice(2)),
      wood,
      rings: draws.pick(['along', 'along', 'across']),
      from,
      to: from + draws.whole(3, 6),
    };
    const setup = { calculation: 'movement', system, values };
    const asIf = (change: Partial<Record<keyof typeof values, unknown>>) =>
      about({ ...setup, values: { ...values, ...change } }).numbers;
    const otherRings = values.rings === 'along' ? 'across' : 'along';
    const runs = {
      along: 'flat-sawn: its rings run with its width',
      across: 'quarter-sawn: its rings stand on its width',
    };
    return {
      kind: 'length',
      ...about(setup),
      situation: `A board (${wood.name}) is {size} wide and ${runs[values.rings]}. The table gives ${wood.tangential} along the rings and ${wood.radial} across them, for each percent of moisture. The wood goes from {from} to {to}.`,
      ask: 'By how much does the board grow wider?',
      answer: 'change',
      why: 'Its width, times the number for the way that its rings run, times the rise of {rise}.',
      hint: 'By how many percent does the moisture rise? And which of the two numbers belongs to the width?',
      mistakes: [
        {
          misconception: 'other-way-of-the-rings',
          of: 'changed.change',
          changed: asIf({ rings: otherRings }),
          why: `You took the number for the other way of the rings. This board is ${runs[values.rings]}.`,
        },
        {
          misconception: 'forgot-where-it-started',
          of: 'changed.change',
          changed: asIf({ from: 0 }),
          why: 'You reckoned with all of its {to}. It had {from} before: only the rise counts.',
        },
        {
          misconception: 'change-for-size',
          of: 'newSize',
          why: 'That is how wide it is afterwards. The question is by how much it grew.',
        },
      ],
    };
  },
};
