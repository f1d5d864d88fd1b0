import { planJoint } from '../../../core/joint/planJoint.ts';
import type { JointSpec, System } from '../../../core/joint/types.ts';
import { mm } from '../../../core/length/mm.ts';
import { difference, quantity, sum } from '../../../core/working/expression.ts';
import { taken } from '../../../core/working/reckon.ts';
import type { Draws } from '../draws.ts';
import { jointOf } from '../joints.ts';
import { geometry, numbersFrom } from '../numbersFrom.ts';
import { shop, steps } from '../shop.ts';
import type { Template } from '../template.ts';

/** Depths of both holes as somebody drilled them, in shop steps: both deeper or shallower than half of the pin. */
function drilled(draws: Draws, system: System, deeper: boolean) {
  const kind = draws.joint(['edge', 'corner', 'tee', 'frame']);
  const spec: JointSpec = jointOf(draws, kind, system);
  const { pin, a, b } = planJoint(spec);
  const length = pin?.length ?? mm(0);
  const step = steps(system, 1, 1);
  const off = () => step * draws.whole(1, 3) * (deeper ? 1 : -1);
  const whole = (depth: number) => mm(Math.round(Math.round(depth / step) * step * 1e6) / 1e6);
  const inA = whole(a.engagement + off());
  const inB = whole(b.engagement + off());
  return { spec, kind, length, inA, inB };
}

/** How much room is left past the ends of a pin that is pushed home? */
export const freeRoom: Template = {
  id: 'free-room',
  revision: 1,
  lesson: 'what-a-dowel-joint-is',
  joints: ['edge', 'corner', 'tee', 'frame'],
  kind: 'length',
  misconceptions: ['one-hole-for-the-pin', 'pin-for-hole'],
  draft(draws, system) {
    const { spec, length, inA, inB } = drilled(draws, system, true);
    const both = geometry(
      'both',
      'Depth of both holes together',
      'both',
      sum(quantity('h_A', inA), quantity('h_B', inB)),
    );
    const room = geometry(
      'room',
      "Free depth past the pin's ends, in all",
      'room',
      difference(taken(both), quantity('L', length)),
    );
    const numbers = numbersFrom(
      system,
      [
        ['pin.length', 'L', length],
        ['hole.a', 'h_A', inA],
        ['hole.b', 'h_B', inB],
      ],
      [both, room],
    );
    return {
      kind: 'length',
      setup: spec,
      numbers,
      situation:
        'The hole in A is {hole.a} deep, the hole in B {hole.b}. The pin is {pin.length} long. The boards are pushed together until they touch.',
      ask: "How much free depth is left past the pin's two ends, in all?",
      answer: 'room',
      why: 'Both holes together are {both} deep, and the pin fills {pin.length} of that. The rest is room for glue and air.',
      hint: 'How deep are the two holes together? The pin takes its own length out of that.',
      mistakes: [
        {
          misconception: 'pin-for-hole',
          of: 'both',
          why: '{this} is the depth of both holes. The pin is in there too.',
        },
        {
          misconception: 'one-hole-for-the-pin',
          of: 'pin.length - hole.a',
          why: '{this} is the part of the pin that stands out of A when it touches the bottom there. The question is what stays free in both holes.',
        },
      ],
    };
  },
};

/** How far does a joint stay open whose holes are too shallow? */
export const gapThatStays: Template = {
  id: 'gap-that-stays',
  revision: 1,
  lesson: 'glue-trapped-air-and-the-end-gap',
  joints: ['edge', 'corner', 'tee', 'frame'],
  kind: 'length',
  misconceptions: ['one-hole-for-the-pin', 'free-depth-must-stay'],
  draft(draws, system) {
    const { spec, length, inA, inB } = drilled(draws, system, false);
    const allowance = draws.pick(shop[system].allowances);
    const both = geometry(
      'both',
      'Depth of both holes together',
      'both',
      sum(quantity('h_A', inA), quantity('h_B', inB)),
    );
    const gap = geometry(
      'gap',
      'Gap that the pin holds open',
      'gap',
      difference(quantity('L', length), taken(both)),
    );
    const numbers = numbersFrom(
      system,
      [
        ['pin.length', 'L', length],
        ['hole.a', 'h_A', inA],
        ['hole.b', 'h_B', inB],
        ['allowance', 'c', allowance],
      ],
      [both, gap],
    );
    return {
      kind: 'length',
      setup: spec,
      numbers,
      situation:
        'The holes came out too shallow: the one in A is {hole.a} deep, the one in B {hole.b}. The pin is {pin.length} long. It was meant to have {allowance} of free depth in each hole.',
      ask: 'Pushed together dry, how wide a gap stays between the boards?',
      answer: 'gap',
      why: 'The pin goes to the bottom of both holes, which together are {both} deep. What is left of its {pin.length} holds the boards apart.',
      hint: 'The pin stops at the bottom of both holes. How much of it finds no room?',
      mistakes: [
        {
          misconception: 'one-hole-for-the-pin',
          of: 'pin.length - hole.a',
          why: '{this} of the pin stands out of A. But B has a hole for it too.',
        },
        {
          misconception: 'free-depth-must-stay',
          of: 'gap + 2 * allowance',
          why: 'You kept {allowance} free in each hole. A dry pin slides to the bottom: that room is gone, and the boards come closer by it. Glue would have nowhere to go.',
        },
      ],
    };
  },
};
