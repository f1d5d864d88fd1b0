import type { JointPlan } from '../joint/types.ts';
import { type Sentence, say } from '../working/sentence.ts';
import { type References, referencesOf } from './references.ts';

/** One step at the bench, to be ticked off. */
export interface WorkStep {
  /** Unique among the steps of a joint: 'measure', 'stop-a'. */
  readonly id: string;
  /** What is done, in a few words: 'Measure'. */
  readonly title: string;
  readonly says: Sentence;
}

/** Two stops closer than this are one: no collar is set finer, mm. */
export const SAME_STOP = 0.01;

/** How far a board may be off its plan before the plan no longer serves, mm: from memory. */
export const OFF = { in: 25.4 / 64, mm: 0.5 };

/** How a side is held for drilling. */
const HELD: Record<References['drilled'], string> = {
  end: 'upright in the vise',
  edge: 'in the vise, edge up',
  face: 'flat on a waste board',
  cut: 'in the vise, the cut level',
};

/** What is looked at in the dry fit and again in the clamps. */
const CHECKED: Record<JointPlan['kind'], string> = {
  edge: 'faces flush, the panel flat under a straightedge',
  corner: 'the corner square, both diagonals equal',
  tee: 'A square to B, both diagonals equal',
  frame: 'faces flush, frame flat, both diagonals equal',
  miter: 'faces flush, heel and toe tight, both diagonals equal',
  leg: 'tops flush, aprons square to each other',
};

function layOut(plan: JointPlan): Sentence {
  const { kind, spec, positions } = plan;
  const { a, b } = referencesOf(plan);
  const pins = positions.length === 1 ? 'one pin' : `${positions.length} pins`;
  const from =
    a.along === b.along
      ? `on both boards from the ${a.along}`
      : `on A from its ${a.along}, on B from its ${b.along}`;
  return [
    ...say`Mark ${pins} ${from}, by the list or the story stick.`,
    ...(kind === 'tee' && spec.at > 0
      ? say` A’s reference face comes ${spec.at} from B’s ${b.across}: square a line there.`
      : []),
    ...(kind === 'frame' && spec.at > 0
      ? say` A’s reference edge comes ${spec.at} from B’s ${b.along}: square a line there.`
      : []),
    ...(kind === 'leg' ? say` The second apron’s row goes on the next side of the leg.` : []),
  ];
}

/** Where the guide goes: against a face, or on lines measured from an end or an edge. */
function guideAt(sides: References, across: number): Sentence {
  return sides.across === 'reference end' || sides.across === 'reference edge'
    ? say`the guide on the row, ${across} from the ${sides.across}`
    : say`the guide against its ${sides.across}`;
}

/**
 * What is done at the bench to make a joint, in order: the test joint before the boards, each
 * stop set once for the test and proved again before it serves. For a plan that can be made.
 * The order is common practice, no source.
 */
export function orderOfWork(plan: JointPlan): readonly WorkStep[] {
  const { a, b, spec, kind, positions } = plan;
  const references = referencesOf(plan);
  const [hole] = plan.holes;
  const same = Math.abs(a.stop - b.stop) < SAME_STOP;
  const leg = kind === 'leg';
  const holes = positions.length === 1 ? 'the hole' : `the ${positions.length} holes`;
  const marked = [...new Set([references.a.along, references.b.along])];
  const marks =
    kind === 'miter'
      ? 'Face mark on both reference faces; mark the heel.'
      : `Face mark on both reference faces, edge mark on ${marked.map((side) => `the ${side}`).join(' or ')}.`;

  return [
    {
      id: 'measure',
      title: 'Measure',
      says: say`A is ${spec.a.thickness} thick, B ${spec.b.thickness}. More than ${OFF[plan.system]} off? Plan again.`,
    },
    { id: 'marks', title: 'Face and edge', says: say`${marks} Write A and B at the joint.` },
    { id: 'lay-out', title: 'Lay out', says: layOut(plan) },
    {
      id: 'stop-a',
      title: same ? 'Stop for A and B' : 'Stop for A',
      says: say`Bit of ${spec.bit.diameter}, key out. Collar at ${a.stop}; tighten it, measure again.`,
    },
    {
      id: 'test-a',
      title: 'Test joint, A',
      says: say`Clamp an offcut as thick as A, drill one hole, measure it: ${a.holeDepth}. Correct the collar.`,
    },
    {
      id: 'test-b',
      title: same ? 'Test joint, B' : 'Stop and test joint, B',
      says: [
        ...(same ? [] : say`Collar at ${b.stop}. `),
        ...say`Offcut as thick as B: ${b.holeDepth} deep, not through. With a pin eased for the dry fit it closes by hand.`,
      ],
    },
    {
      id: 'drill-b',
      title: 'Drill B',
      says: [
        ...say`Clamp B ${HELD[references.b.drilled]}, `,
        ...guideAt(references.b, hole?.acrossB ?? 0),
        ...say`. No hand behind the bit. Drill ${holes}; clear the chips, and check the collar every third hole.`,
        ...(leg ? say` Turn the leg for the second apron’s row.` : []),
      ],
    },
    {
      id: 'drill-a',
      title: `${same ? 'Drill' : 'Stop again, drill'} ${leg ? 'both aprons' : 'A'}`,
      says: [
        ...(same ? [] : say`Collar back at ${a.stop}, tried in the test piece. `),
        ...say`Clamp A ${HELD[references.a.drilled]}, `,
        ...guideAt(references.a, hole?.acrossA ?? 0),
        ...say`. Drill as before.`,
      ],
    },
    {
      id: 'clean',
      title: 'Clean',
      says: say`Shake or vacuum the chips out, never blow. Take the sharp rim off each hole.`,
    },
    {
      id: 'dry-fit',
      title: 'Dry fit',
      says: say`Pins sanded to slide, and marked so. It closes by hand: ${CHECKED[kind]}.`,
    },
    {
      id: 'glue',
      title: 'Glue',
      says: say`Rehearse with the clamps, against the open time on the glue’s label. Then glue, new pins, clamps, and look at the same again.`,
    },
  ];
}

/** True where a plan has a pin, its holes and no error: where there is something to make. */
export function canBeMade(plan: JointPlan): boolean {
  return plan.ok && plan.pin !== null && plan.holes.length > 0;
}
