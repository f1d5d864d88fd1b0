import { unmeasuredPinUndersize } from '../fit/fit.ts';
import { type Mm, TOLERANCE, mm } from '../length/mm.ts';
import { formatReading } from '../tools/formatReading.ts';
import { type Readings, nearlyAll } from '../tools/readings.ts';
import { type MeasureInText, type Sentence, say } from '../working/sentence.ts';
import { type BenchSetup, drilledInFace, rightCollar, slippedHoles } from './drill.ts';
import type { Hypothesis } from './hypothesis.ts';
import { areThick, areThin, narrowerHole } from './pinHypotheses.ts';
import type { Member } from './trial.ts';

/** What to say of a possible cause. */
export interface Advice {
  readonly message: Sentence;
  readonly check: Sentence;
  readonly correction: Sentence;
}

function board(on: readonly Member[]): string {
  return on.length === 2 ? 'both boards' : `board ${on[0]?.toUpperCase() ?? ''}`;
}

/** The stop that drills each board as planned. */
function rightStops(setup: BenchSetup, on: readonly Member[]): Sentence {
  return on.flatMap((member, k) => [
    ...(k > 0 ? [', and '] : []),
    ...say`${rightCollar(setup, member)} for board ${member.toUpperCase()}`,
  ]);
}

/** How far the collar has to go away from the bit's tip to be right; negative, toward it. 0 without a collar. */
function collarMove(setup: BenchSetup, wrong: BenchSetup | undefined, member: Member): number {
  if (wrong === undefined) return 0;
  const { stop } = wrong[member];
  if (!('collar' in stop)) return 0;
  const slip = slippedHoles(wrong, member).length > 0 ? (wrong.slip?.by ?? 0) : 0;
  return rightCollar(setup, member) - stop.collar - slip;
}

/** Where the stop should stand, how far that is from where it stood, and what becomes of the holes. */
function resetStop(
  setup: BenchSetup,
  wrong: BenchSetup | undefined,
  on: readonly Member[],
): Sentence {
  const [first = 'a'] = on;
  const move = collarMove(setup, wrong, first);
  const moved =
    Math.abs(move) <= TOLERANCE
      ? []
      : say`: move the collar ${mm(Math.abs(move))} ${move > 0 ? 'farther from' : 'nearer to'} the tip`;
  return [
    ...say`Set the stop at `,
    ...rightStops(setup, on),
    ...say` (collar to the bit's full-diameter corner)`,
    ...moved,
    ...(move < 0
      ? say`. Holes that are too deep can stay: mark each pin at the length that goes into board ${first.toUpperCase()}, ${setup.plan[first].engagement}. Where the point came through, patch the face or turn it to the inside.`
      : say`. Drill the same holes again, in the same guide.`),
  ];
}

/** How far the guide has to go to stand as planned. */
function guideMove(setup: BenchSetup, wrong: BenchSetup | undefined, member: Member): Sentence {
  const move = wrong === undefined ? 0 : setup[member].across - wrong[member].across;
  if (Math.abs(move) <= TOLERANCE) return ['.'];
  const way = move > 0 ? 'farther from' : 'nearer to';
  const from = drilledInFace(setup.plan, member) ? 'end' : 'face';
  return say`: set the guide ${mm(Math.abs(move))} ${way} the reference ${from}.`;
}

/** A diameter as a caliper reads it, in either unit. */
function caliper(diameter: Mm): MeasureInText {
  return { in: `${formatReading(diameter, 'in')} in`, mm: `${formatReading(diameter, 'mm')} mm` };
}

/** What the readings of the pins have to say about them. */
function asMeasured(
  pins: Readings,
  setup: BenchSetup,
  bearsOut: boolean,
  which: 'thickest' | 'thinnest',
): Sentence {
  const { least, most } = nearlyAll(pins);
  return [
    ` By your ${pins.count} reading${pins.count === 1 ? '' : 's'} they `,
    bearsOut ? 'are' : 'were not when you measured them',
    ': on average ',
    caliper(pins.mean),
    ...(pins.spread === null
      ? []
      : [`, the ${which} about `, caliper(which === 'thickest' ? most : least)]),
    ', in holes of ',
    caliper(mm(narrowerHole(setup))),
    '.',
  ];
}

/** Plugging and drilling anew, where a hole is in the wrong place. */
const plugAndDrill = say`Glue plugs of the same wood into the holes, cut them flush, and drill anew.`;

/** What a possible cause is, the check that tells it from the others, and the correction in numbers. */
export function adviceFor(
  { code, members, size, wrong }: Pick<Hypothesis, 'code' | 'members' | 'size' | 'wrong'>,
  setup: BenchSetup,
  pins?: Readings,
): Advice {
  const who = board(members);
  const [first = 'a'] = members;
  const { guide, plan, pin } = setup;
  switch (code) {
    case 'forgot-bushing':
      return {
        message: say`The stop for ${who} was set without the bushing.`,
        check: say`Hold the bit in the guide with the collar against the bushing: it should stand out by the hole's depth, not by ${size} less.`,
        correction: resetStop(setup, wrong, members),
      };
    case 'forgot-standoff':
      return {
        message: say`The gap between bushing and wood was left out of the stop for ${who}.`,
        check: say`Look between bushing and wood: measure the gap, ${guide.standoff} by the plan.`,
        correction: resetStop(setup, wrong, members),
      };
    case 'forgot-allowance':
      return {
        message: say`The holes in ${who} have no free depth past the pin's end.`,
        check: say`Measure a hole with a depth gauge: it is as deep as the pin goes in, not ${plan.spec.allowance} deeper.`,
        correction: resetStop(setup, wrong, members),
      };
    case 'same-stop':
      return {
        message: say`The stop for ${who} was left as it was for the other board.`,
        check: say`Measure a hole in each board: the two are equally deep, where they should differ by ${size}.`,
        correction: resetStop(setup, wrong, members),
      };
    case 'other-guide':
    case 'stop-off':
      return {
        message: say`The stop for ${who} was set ${size} off.`,
        check: say`Measure every hole in ${who} with a depth gauge: all are off alike from ${plan[first].holeDepth}.`,
        correction: resetStop(setup, wrong, members),
      };
    case 'stop-slipped':
      return {
        message: say`The stop slipped by ${size} while ${who} was drilled.`,
        check: say`Measure the holes in the order in which they were drilled: from one hole on they are all off by the same ${size}.`,
        correction: [
          ...resetStop(setup, wrong, members),
          ...say` Tighten the collar and mark the bit beside it.`,
        ],
      };
    case 'no-stop':
      return {
        message: say`The depths differ from hole to hole, as they do without a stop.`,
        check: say`Measure every hole with a depth gauge: they differ without a pattern.`,
        correction: resetStop(setup, wrong, members),
      };
    case 'turned-over':
      return drilledInFace(plan, first)
        ? {
            message: say`Board B was drilled in its wrong face.`,
            check: say`Look for the reference mark: the holes are on the other side, and count from the other end of the joint.`,
            correction: plugAndDrill,
          }
        : {
            message: say`The guide was held against the wrong face of ${who}.`,
            check: say`Measure from the reference face to a hole in each board: they differ by the step, ${size}. Drill two holes from opposite faces of an offcut: half the distance between them is how far your guide is off.`,
            correction: say`Plane the step off where the boards are thick enough; else plug the holes of ${who} and drill them again with the guide on the reference face.`,
          };
    case 'opposite-ends':
      return {
        message: say`The rule was hooked on the other end of ${who}.`,
        check: say`Measure from the reference end to the first hole in each board: they should be alike, and differ by ${size}.`,
        correction: plugAndDrill,
      };
    case 'centering-guide':
      return {
        message: say`The guide found the middle of each board, and the boards are not equally thick.`,
        check: say`Measure both thicknesses: half their difference is the step, ${size}.`,
        correction: say`Plane the step off, or plug board B and drill it ${setup.b.across} from its reference face.`,
      };
    case 'across-off':
      return {
        message: say`The guide was set ${size} off for ${who}.`,
        check: say`Measure from the reference face to the middle of a hole: ${mm(setup[first].across + guide.offset)} is right for ${who}.`,
        correction: [
          ...say`Plane the step off, or plug the holes of ${who} and drill them again at ${setup[first].across}`,
          ...guideMove(setup, wrong, first),
        ],
      };
    case 'marks-off':
      return {
        message: say`Marks on ${who} are off by about ${size}.`,
        check: say`Lay the two boards side by side, reference ends together: each pair of holes should be in line.`,
        correction: say`Plug the holes that are out of line, and mark them again from the other board with center points.`,
      };
    case 'guide-rocked':
      return {
        message: say`The holes in ${who} lean, by about ${size} at the bottom.`,
        check: say`Stand a pin in a hole and hold a square beside it, from two sides.`,
        correction: say`Pins that still go in by hand can be glued, slowly and with the joint clamped true. Else plug the holes of ${who} and drill them again with the guide clamped flat.`,
      };
    case 'mixed-systems':
      return {
        message: say`Pin and bit are of two systems.`,
        check: say`Measure the bit's shank and a pin with calipers, in one unit: they should be alike within ${mm(0.2)}.`,
        correction: say`Take pins of the bit's own size; a tight pin can be eased to ${mm(setup.a.bit.diameter - unmeasuredPinUndersize)}.`,
      };
    case 'pin-swollen':
      return {
        message: [
          ...say`The pins are swollen, or thicker than their name.`,
          ...(pins ? asMeasured(pins, setup, areThick(setup, pins), 'thickest') : []),
        ],
        check:
          pins && areThick(setup, pins)
            ? say`Try the thickest of them in a hole: it should bind there. Drill a hole in an offcut and measure it too: a worn bit cuts narrow.`
            : say`Measure five pins with calipers; try one in a hole that you know is right.`,
        correction: say`Dry them in a warm place for a day, or ease them to ${mm(setup.a.bit.diameter - unmeasuredPinUndersize)}.`,
      };
    case 'pin-thin':
      return {
        message: [
          ...say`The pins are thinner than their name, or the bit cut wide.`,
          ...(pins ? asMeasured(pins, setup, areThin(setup, pins), 'thinnest') : []),
        ],
        check: say`Measure five pins and the bit with calipers: between them there should be no more than ${mm(0.2)}.`,
        correction: say`Take other pins. Don't trust glue to fill the gap: a thick line is a weak one.`,
      };
    case 'other-pin':
    case 'other-bit':
    case 'other-point':
      return {
        message: say`Pin or bit is not the one that was planned.`,
        check: say`Measure both, and the bit's point.`,
        correction: say`Plan the joint again with what you have.`,
      };
    case 'other-length':
      return {
        message: say`The pins are not as long as planned, by ${size}.`,
        check: say`Lay a pin on the rule: ${pin.length} was planned.`,
        correction: say`Cut the pins to ${pin.length} and chamfer the ends, or take others.`,
      };
    case 'chips':
      return {
        message: say`Chips lie in the bottom of a hole.`,
        check: say`Turn the boards upside down and tap them, or draw the chips out with a vacuum; then measure the holes again.`,
        correction: say`Clear every hole and try the fit again. Don't blow: dust goes into your eyes.`,
      };
    case 'out-of-square':
      return {
        message: say`An end or edge is not square or not straight: the joint touches at one end only.`,
        check: say`Take the pins out and put the boards together: the gap of ${size} is still there.`,
        correction: say`Plane or saw the end square; it loses up to ${size}, and so do the holes: drill them deeper by that.`,
      };
    case 'cupped':
      return {
        message: say`A board is cupped or its edge is not straight.`,
        check: say`Take the pins out and hold a straightedge to both surfaces of the joint.`,
        correction: say`Plane the surface straight, or flatten the board, before you glue: clamps should not have to bend it.`,
      };
  }
}
