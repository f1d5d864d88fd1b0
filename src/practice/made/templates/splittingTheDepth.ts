import { mm } from '../../../core/length/mm.ts';
import { about, boardsIn, drillingOf, instead, jointOf, withoutPoint } from '../joints.ts';
import type { Template } from '../template.ts';

const LEFT = '{leave} of wood stays beyond the point.';

/** How much of the pin can B hold in its face? */
export const mostInTheFace: Template = {
  id: 'most-in-the-face',
  revision: 1,
  lesson: 'splitting-the-depth',
  joints: ['corner', 'tee'],
  kind: 'length',
  misconceptions: ['forgot-the-point', 'left-no-wood', 'forgot-the-free-depth', 'wrong-board'],
  draft(draws, system) {
    const spec = jointOf(draws, draws.joint(['corner', 'tee']), system);
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn[spec.kind]} ${drillingOf(spec)} ${LEFT}`,
      ask: 'What is the most of the pin that B can hold?',
      answer: 'b.most',
      why: 'Of {b.thickness}, {leave} stays as wood, the point takes {tip} and the free depth {allowance}. The pin can have the rest.',
      hint: "Begin with B's thickness, {b.thickness}. Three things come off it before there is room for the pin.",
      mistakes: [
        {
          misconception: 'forgot-the-point',
          of: 'changed.b.most',
          changed: withoutPoint(spec),
          why: 'The point of the bit, {tip}, goes in as well. It would come out of the face.',
        },
        {
          misconception: 'left-no-wood',
          of: 'b.limit - allowance',
          why: 'You left room for glue, but no wood. The hole would go down to the far face, and the point out of it.',
        },
        {
          misconception: 'forgot-the-free-depth',
          of: 'changed.b.most',
          changed: instead(spec, { allowance: mm(0) }),
          why: 'The hole goes {allowance} past the end of the pin, for glue and air. Take that off too.',
        },
        {
          misconception: 'wrong-board',
          of: 'changed.b.most',
          changed: instead(spec, { b: { ...spec.b, thickness: spec.a.thickness } }),
          why: 'You began with the thickness of A. The hole in question goes into B, {b.thickness} thick.',
        },
      ],
    };
  },
};

/** How much of the pin is left for A, or for an apron? */
export const restInTheEnd: Template = {
  id: 'rest-in-the-end',
  revision: 1,
  lesson: 'splitting-the-depth',
  joints: ['corner', 'tee'],
  kind: 'length',
  misconceptions: [
    'split-in-half',
    'wrong-board',
    'forgot-the-point',
    'hole-for-pin',
    'left-no-wood',
  ],
  draft(draws, system) {
    const spec = jointOf(draws, draws.joint(['corner', 'tee']), system);
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn[spec.kind]} ${drillingOf(spec)} ${LEFT}`,
      ask: 'B takes as much of the pin as it can hold, up to half. How much does A hold?',
      answer: 'a.engagement',
      why: 'B holds {b.engagement} of the {pin.length}. A takes the rest.',
      hint: 'Work out first what B can hold. Its thickness is {b.thickness}.',
      mistakes: [
        {
          misconception: 'split-in-half',
          of: 'pin.length / 2',
          why: 'Half of the pin is more than B can hold: only {b.engagement}.',
        },
        {
          misconception: 'wrong-board',
          of: 'b.engagement',
          why: 'That is what B holds. The question is what is left of the pin for A.',
        },
        {
          misconception: 'forgot-the-point',
          of: 'changed.a.engagement',
          changed: withoutPoint(spec),
          why: 'You gave B {changed.b.engagement}. The point of the bit, {tip}, has to come off first.',
        },
        {
          misconception: 'hole-for-pin',
          of: 'a.holeDepth',
          why: 'That is how deep the hole in A is. The pin in it is shorter by the free depth.',
        },
      ],
      blanks: {
        'b.most': [
          {
            misconception: 'forgot-the-point',
            of: 'changed.b.most',
            changed: withoutPoint(spec),
            why: 'The point of the bit, {tip}, has to come off too.',
          },
          {
            misconception: 'left-no-wood',
            of: 'b.most + leave',
            why: '{leave} of wood has to stay beyond the point.',
          },
        ],
      },
    };
  },
};

/** How much wood is left behind the point? */
export const woodLeft: Template = {
  id: 'wood-left',
  revision: 1,
  lesson: 'splitting-the-depth',
  joints: ['corner', 'tee', 'leg'],
  kind: 'length',
  misconceptions: ['forgot-the-point', 'pin-for-hole', 'free-depth-twice'],
  draft(draws, system) {
    const kind = draws.joint(['corner', 'tee', 'leg']);
    const drawn = jointOf(draws, kind, system);
    // A leg that is thick enough, or a board, so that the rows of a leg are no matter here.
    const spec = kind === 'leg' ? { ...drawn, stagger: drawn.b.thickness } : drawn;
    const { setup, numbers } = about(spec);
    return {
      kind: 'length',
      setup,
      numbers,
      situation: `${boardsIn[kind]} ${drillingOf(spec)} B holds {b.engagement} of the pin${
        kind === 'leg' ? ', and along its holes there is {b.limit} of wood' : ''
      }.`,
      ask: 'How much wood is left in B beyond the point of the bit?',
      answer: 'b.woodLeft',
      why: 'Of {b.limit}, the hole takes {b.holeDepth} and the point {tip}. The rest is left.',
      hint: 'The hole is as deep as the pin in it and the free depth. The point goes beyond that.',
      mistakes: [
        {
          misconception: 'forgot-the-point',
          of: 'b.limit - b.holeDepth',
          why: 'That is left beyond the full diameter. The point goes {tip} farther.',
        },
        {
          misconception: 'pin-for-hole',
          of: 'b.woodLeft + allowance',
          why: 'The hole is deeper than the pin in it, by {allowance}.',
        },
      ],
      blanks: {
        'b.holeDepth': [
          {
            misconception: 'pin-for-hole',
            of: 'b.engagement',
            why: '{this} is the pin in B. The hole goes on past its end.',
          },
          {
            misconception: 'free-depth-twice',
            of: 'b.holeDepth + allowance',
            why: 'There is free depth past one end of the pin in B, not two.',
          },
        ],
      },
    };
  },
};
