import type { PulledPin } from '../../../core/strength/compare.ts';
import { mm } from '../../../core/length/mm.ts';
import { species } from '../../../core/moisture/species.ts';
import { stockPins } from '../../../core/stock/pins.ts';
import { about } from '../joints.ts';
import { withMore } from '../numbersFrom.ts';
import { steps } from '../shop.ts';
import type { Template } from '../template.ts';

/** How many times the pull of one pin does another take? For comparing, never a rating. */
export const pullOfAPin: Template = {
  id: 'pull-of-a-pin',
  revision: 1,
  lesson: 'how-strong-and-when-not-to-use-dowels',
  joints: ['corner', 'tee', 'frame', 'edge'],
  kind: 'one',
  misconceptions: ['depth-squared', 'depth-is-idle', 'upside-down'],
  draft(draws, system) {
    const diameters = [...new Set(stockPins(system).map(({ diameter }) => diameter))];
    const thin = draws.whole(0, diameters.length - 2);
    const wood = species(draws.pick(['maple, sugar (hard)', 'oak, white', 'cherry, black']))!;
    const pins = species('birch, yellow')!;
    const depth = draws.whole(8, 14);
    const pinOf = (diameter: number, sixteenths: number): PulledPin => ({
      diameter: mm(diameter),
      engagement: steps(system, sixteenths, Math.round(1.5 * sixteenths)),
      memberShear: wood.shear!,
      dowelShear: pins.shear!,
      grain: 'side',
      clearance: mm(0.1),
      grooved: false,
    });
    const first = pinOf(diameters[thin]!, depth);
    const second = pinOf(
      diameters[draws.whole(thin + 1, diameters.length - 1)]!,
      depth + draws.whole(3, 10),
    );
    const compared = (values: { first: PulledPin; second: PulledPin }) =>
      about({ calculation: 'comparedPull', system, values });
    const { setup, numbers } = compared({ first, second });
    const byDiameter = second.diameter / first.diameter;
    const byDepth = second.engagement / first.engagement;
    return {
      kind: 'one',
      setup,
      numbers: withMore(numbers, [['squared', 'f', (byDiameter * byDepth) ** 2, 'ratio']]),
      situation: `Two pins are glued into the face of a board (${wood.name}). One is {first.diameter} across and sits {first.depth} deep. The other is {second.diameter} across and sits {second.depth} deep. All else is alike.`,
      ask: 'By the formula, how many times the pull of the first does the second take? This compares them; it rates neither.',
      choices: [
        {
          id: 'right',
          of: 'ratio',
          says: '{this} times',
          right: true,
          why: 'What holds is the glue around the pin. It grows with the diameter, {byDiameter} times, and almost as fast as the depth, {byDepth} times.',
        },
        {
          id: 'squared',
          of: 'squared',
          says: '{this} times',
          misconception: 'depth-squared',
          why: 'You squared both sizes. What holds is the glue around the pin, which grows straight with its diameter.',
        },
        {
          id: 'diameter-only',
          of: 'changed.ratio',
          changed: compared({ first, second: { ...second, engagement: first.engagement } }).numbers,
          says: '{this} times',
          misconception: 'depth-is-idle',
          why: 'That is what the diameter does. The second pin also sits deeper, and more glue holds it.',
        },
        {
          id: 'upside-down',
          of: 'changed.ratio',
          changed: compared({ first: second, second: first }).numbers,
          says: '{this} times',
          misconception: 'upside-down',
          why: 'You turned it over. That is the first against the second, and the second is the larger.',
        },
      ],
      working: 'ratio',
    };
  },
};
