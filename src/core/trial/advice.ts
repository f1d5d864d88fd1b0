import { unmeasuredPinUndersize } from '../fit/fit.ts';
import { mm } from '../length/mm.ts';
import { type Sentence, say } from '../working/sentence.ts';
import { type BenchSetup, drilledInFace, rightCollar } from './drill.ts';
import type { Hypothesis } from './hypotheses.ts';
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

function drillAgain(setup: BenchSetup, on: readonly Member[]): Sentence {
  return [
    ...say`Set the stop at `,
    ...rightStops(setup, on),
    ...say` (collar to the bit's full-diameter corner) and drill the same holes again, in the same guide.`,
  ];
}

/** Plugging and drilling anew, where a hole is in the wrong place. */
const plugAndDrill = say`Glue plugs of the same wood into the holes, cut them flush, and drill anew.`;

/** What a possible cause is, the check that tells it from the others, and the correction in numbers. */
export function adviceFor(
  { code, members, size }: Pick<Hypothesis, 'code' | 'members' | 'size'>,
  setup: BenchSetup,
): Advice {
  const who = board(members);
  const [first = 'a'] = members;
  const { guide, plan, pin } = setup;
  switch (code) {
    case 'forgot-bushing':
      return {
        message: say`The stop for ${who} was set without the bushing.`,
        check: say`Hold the bit in the guide with the collar against the bushing: it should stand out by the hole's depth, not by ${size} less.`,
        correction: drillAgain(setup, members),
      };
    case 'forgot-standoff':
      return {
        message: say`The gap between bushing and wood was left out of the stop for ${who}.`,
        check: say`Look between bushing and wood: measure the gap, ${guide.standoff} by the plan.`,
        correction: drillAgain(setup, members),
      };
    case 'forgot-allowance':
      return {
        message: say`The holes in ${who} have no free depth past the pin's end.`,
        check: say`Measure a hole with a depth gauge: it is as deep as the pin goes in, not ${plan.spec.allowance} deeper.`,
        correction: drillAgain(setup, members),
      };
    case 'same-stop':
      return {
        message: say`The stop for ${who} was left as it was for the other board.`,
        check: say`Measure a hole in each board: the two are equally deep, where they should differ by ${size}.`,
        correction: say`Where the holes are too shallow, set the stop at ${rightCollar(setup, first)} and drill them again. Where they are too deep, mark each pin at ${plan[first].engagement} so that it goes in no farther; where the point came through, patch the face or turn it to the inside.`,
      };
    case 'other-guide':
    case 'stop-off':
      return {
        message: say`The stop for ${who} was set ${size} off.`,
        check: say`Measure every hole in ${who} with a depth gauge: all are off alike from ${plan[first].holeDepth}.`,
        correction: drillAgain(setup, members),
      };
    case 'stop-slipped':
      return {
        message: say`The stop slipped by ${size} while ${who} was drilled.`,
        check: say`Measure the holes in the order in which they were drilled: from one hole on they are all off by the same ${size}.`,
        correction: [
          ...drillAgain(setup, members),
          ...say` Tighten the collar and mark the bit beside it. Holes that are too deep can stay: mark each pin at the length it should go in.`,
        ],
      };
    case 'no-stop':
      return {
        message: say`The depths differ from hole to hole, as they do without a stop.`,
        check: say`Measure every hole with a depth gauge: they differ without a pattern.`,
        correction: drillAgain(setup, members),
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
        correction: say`Plane the step off, or plug the holes of ${who} and drill them again at ${setup[first].across}.`,
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
        message: say`The pins are swollen, or thicker than their name.`,
        check: say`Measure five pins with calipers; try one in a hole that you know is right.`,
        correction: say`Dry them in a warm place for a day, or ease them to ${mm(setup.a.bit.diameter - unmeasuredPinUndersize)}.`,
      };
    case 'pin-thin':
      return {
        message: say`The pins are thinner than their name, or the bit cut wide.`,
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
