import { type FitVerdict, fit, fitBands } from '../../../core/fit/fit.ts';
import { type Mm, inches, mm } from '../../../core/length/mm.ts';
import type { System } from '../../../core/joint/types.ts';
import type { Draws } from '../draws.ts';
import { about } from '../joints.ts';
import { passedOver } from '../numbersFrom.ts';
import { pinInStock } from '../shop.ts';
import type { DraftChoice, Template } from '../template.ts';

/** A caliper's step: a thousandth of an inch or a hundredth of a millimeter. */
const CALIPER = { in: inches(0.001), mm: mm(0.01) } as const;

/** A hole and a pin by caliper, so many steps over and under their name. */
function measuredPin(
  draws: Draws,
  system: System,
  over: readonly [number, number],
  under: readonly [number, number],
) {
  const step = CALIPER[system];
  const { diameter } = pinInStock(draws, system);
  const whole = (length: number): Mm => mm(Math.round(length * 1e6) / 1e6);
  const values = {
    hole: whole(diameter + step * draws.whole(...over)),
    pin: diameter,
    measured: whole(diameter - step * draws.whole(...under)),
  };
  return { calculation: 'fit', system, values };
}

const MEASURED =
  'By caliper a hole is {hole} across, and a pin sold as {pin.named} is {pin} across.';

/** How thick is the glue line? */
export const glueLine: Template = {
  id: 'glue-line',
  revision: 1,
  lesson: 'clearance-and-the-glue-line',
  joints: [],
  kind: 'one',
  misconceptions: ['one-side-for-both', 'pin-as-named'],
  draft(draws, system) {
    const most = system === 'in' ? 3 : 8;
    const setup = measuredPin(draws, system, [1, most], [1, 2 * most]);
    const { pin } = setup.values;
    return {
      kind: 'one',
      ...about(setup),
      situation: `${MEASURED} The pin sits in the middle of the hole.`,
      ask: 'How thick is the glue line around it?',
      choices: [
        {
          id: 'half',
          of: 'glueLine',
          right: true,
          why: 'The hole is {clearance} wider than the pin. Half of that is on either side.',
        },
        {
          id: 'whole',
          of: 'clearance',
          misconception: 'one-side-for-both',
          why: '{this} is the clearance, both sides together. The glue line is on one side.',
        },
        {
          id: 'by-name',
          of: 'changed.glueLine',
          changed: about({ ...setup, values: { ...setup.values, measured: pin } }).numbers,
          misconception: 'pin-as-named',
          why: 'You reckoned with {pin.named}, as the bag says. By caliper the pin is thinner.',
        },
      ],
      working: 'glueLine',
    };
  },
};

/** Nearer than this to where one verdict turns into the next, a question would be about noise, mm. */
const TOO_CLOSE_TO_CALL = 0.012;

/** What each verdict says, and why it is right where it is. */
const RIGHT: Readonly<Record<FitVerdict, { readonly says: string; readonly why: string }>> = {
  'ease the pin': {
    says: 'Too tight: ease the pin.',
    why: 'The pin is thicker than the hole. Ease it, or drill with the bit that belongs to it.',
  },
  starved: {
    says: 'It goes in, but leaves too little room for glue.',
    why: 'The clearance is {clearance}. Under {goodFrom} the glue is scraped off as the pin goes in.',
  },
  good: {
    says: 'A good fit.',
    why: 'The clearance is {clearance}, between {goodFrom} and {goodTo}.',
  },
  thick: {
    says: 'Too loose: the glue line would be thick.',
    why: 'The clearance is {clearance}. Over {goodTo} the line of glue is thick and weak.',
  },
};

/** What somebody has in mind who calls a fit good that is not. */
const CALLED_GOOD: Readonly<Record<FitVerdict, readonly [misconception: string, why: string]>> = {
  'ease the pin': [
    'tight-is-strong',
    'The pin is thicker than the hole. Driven in, it scrapes the glue off and can split the board.',
  ],
  starved: [
    'slides-so-fits',
    'It goes in, but {clearance} is too little for glue all around. Good is {goodFrom} to {goodTo}.',
  ],
  good: ['slides-so-fits', RIGHT.good.why],
  thick: [
    'glue-fills-gaps',
    'A clearance of {clearance} makes a thick line of glue, which is a weak one. Good is {goodFrom} to {goodTo}.',
  ],
};

/** All four verdicts as wrong answers; the right one takes the place of its own. */
function wrongVerdicts(verdict: FitVerdict): readonly DraftChoice[] {
  const [misconception, why] = CALLED_GOOD[verdict];
  return [
    {
      id: 'ease-the-pin',
      says: RIGHT['ease the pin'].says,
      misconception: 'pin-as-named',
      why: 'By caliper the hole is wider than the pin. It goes in.',
    },
    {
      id: 'starved',
      says: RIGHT.starved.says,
      misconception: 'one-side-for-both',
      why: 'Take the pin from the hole: that is {clearance}, for both sides together. Too little is from nothing to {goodFrom}.',
    },
    { id: 'good', says: RIGHT.good.says, misconception, why },
    {
      id: 'thick',
      says: RIGHT.thick.says,
      misconception: 'pin-as-named',
      why: 'Take the pin from the hole: that is {clearance}. Too much is over {goodTo}.',
    },
  ];
}

/** What does a clearance mean? */
export const verdictOfAFit: Template = {
  id: 'verdict-of-a-fit',
  revision: 1,
  lesson: 'clearance-and-the-glue-line',
  joints: [],
  kind: 'one',
  misconceptions: [
    'tight-is-strong',
    'slides-so-fits',
    'glue-fills-gaps',
    'pin-as-named',
    'one-side-for-both',
  ],
  draft(draws, system) {
    const setup = measuredPin(
      draws,
      system,
      system === 'in' ? [0, 4] : [0, 10],
      system === 'in' ? [-4, 10] : [-10, 25],
    );
    const { hole, measured } = setup.values;
    const { numbers } = about(setup);
    const { clearance, verdict } = fit({ hole, pin: measured });
    const edges = [fitBands.starvedFrom, fitBands.goodFrom, fitBands.goodTo];
    const close = edges.some((edge) => Math.abs(clearance - edge) < TOO_CLOSE_TO_CALL);
    const right = { id: verdict.replaceAll(' ', '-'), right: true, ...RIGHT[verdict] };
    return {
      kind: 'one',
      setup,
      numbers: close ? passedOver(numbers, 'too close to call') : numbers,
      situation: MEASURED,
      ask: 'What will come of it?',
      choices: wrongVerdicts(verdict).map((choice) => (choice.id === right.id ? right : choice)),
      working: 'clearance',
    };
  },
};
