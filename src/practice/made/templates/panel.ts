import { mm } from '../../../core/length/mm.ts';
import { about, boardsIn, instead, jointOf } from '../joints.ts';
import { withMore } from '../numbersFrom.ts';
import { shop, steps } from '../shop.ts';
import type { Template } from '../template.ts';

/** How deep is a hole in the edge of a panel's board? */
export const holeInTheEdge: Template = {
  id: 'hole-in-the-edge',
  revision: 1,
  lesson: 'edge-joint-and-the-panel',
  joints: ['edge', 'frame'],
  kind: 'length',
  misconceptions: ['pin-for-hole', 'hole-for-pin', 'face-rule-everywhere', 'free-depth-twice'],
  draft(draws, system) {
    const spec = jointOf(draws, draws.joint(['edge', 'edge', 'frame']), system);
    return {
      kind: 'length',
      ...about(spec),
      situation: `${boardsIn[spec.kind]} The pin is {pin.length} long, with {allowance} of free depth past each of its ends.`,
      ask: 'How deep is the hole in B, at full diameter?',
      answer: 'b.holeDepth',
      why: 'The hole runs into the width of B, where there is wood enough. B holds half of the pin, {b.engagement}, and the hole goes {allowance} farther.',
      hint: 'Is there any reason not to halve the pin? The hole is deeper than the pin in it.',
      mistakes: [
        {
          misconception: 'pin-for-hole',
          of: 'b.engagement',
          why: 'That is half of the pin. The hole goes {allowance} past its end.',
        },
        {
          misconception: 'hole-for-pin',
          of: 'pin.length + allowance',
          why: 'That hole would swallow the whole pin. The other board holds half of it.',
        },
        {
          misconception: 'face-rule-everywhere',
          of: 'changed.b.holeDepth',
          changed: instead(spec, { kind: 'tee' }),
          why: 'So it would be in a face {b.thickness} thick. Here the hole runs into the width of the board.',
        },
        {
          misconception: 'free-depth-twice',
          of: 'b.holeDepth + allowance',
          why: 'There is free depth past one end of the pin in B. The other end is in A.',
        },
      ],
    };
  },
};

/** How many clamps does a panel take? */
export const clampsForAPanel: Template = {
  id: 'clamps-for-a-panel',
  revision: 1,
  lesson: 'edge-joint-and-the-panel',
  joints: ['edge'],
  kind: 'one',
  misconceptions: ['one-side-only', 'forgot-the-caul', 'two-will-do'],
  draft(draws, system) {
    const values = {
      length: draws.pick(shop[system].lengths),
      thickness: draws.pick(draws.limits.thicknesses ?? shop[system].thicknesses),
      boardWidth: draws.pick(shop[system].narrow),
      caul: steps(system, draws.whole(12, 28), 5 * draws.whole(4, 9)),
      // The force is not asked for; any pressure gives the same number of clamps by reach.
      pressure: 1,
    };
    const setup = { calculation: 'clamps', system, values };
    const { numbers } = about(setup);
    const asIf = (change: Partial<typeof values>) =>
      about({ ...setup, values: { ...values, ...change } }).numbers;
    return {
      kind: 'one',
      setup,
      numbers: withMore(numbers, [['two', '2', 2, 'count']]),
      situation:
        'A panel for the plant stand is {length} long. Its narrowest board, next to the clamps, is {boardWidth} wide, and a caul {caul} deep lies between the clamps and the board. Pressure spreads at 45° to both sides of each clamp.',
      ask: 'How many clamps does the glue line take, so that no gap is left between their reaches?',
      choices: [
        {
          id: 'right',
          of: 'count',
          right: true,
          why: 'At the glue line a clamp reaches as far to each side as caul and board are deep, so it presses {reach}. The line is {length} long.',
        },
        {
          id: 'one-side',
          of: 'changed.count',
          // A line twice as long takes as many clamps as this one would if each pressed one side.
          changed: asIf({ length: mm(2 * values.length) }),
          misconception: 'one-side-only',
          why: 'A clamp presses to both sides. Together that makes {reach}, not half of it.',
        },
        {
          id: 'no-caul',
          of: 'changed.count',
          changed: asIf({ caul: mm(0) }),
          misconception: 'forgot-the-caul',
          why: 'The pressure starts to spread at the clamp, and the caul is {caul} deep. That makes each clamp reach farther.',
        },
        {
          id: 'two',
          of: 'two',
          misconception: 'two-will-do',
          why: 'Two clamps press twice {reach}. The line is {length} long: it would stay open between them.',
        },
      ],
      working: 'reach',
    };
  },
};
