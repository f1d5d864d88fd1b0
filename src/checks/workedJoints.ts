import {
  type BitPoint,
  type Board,
  type JointKind,
  type JointPlan,
  type Mm,
  type System,
  inches,
  mm,
  planJoint,
} from '../core/index.ts';
import type { CheckRow } from './checkRow.ts';

const byHand = {
  source: 'Worked by hand from the rules of the model',
  standing: 'geometry',
} as const;

const threeQuarters: Board = { thickness: inches(3 / 4), width: mm(140), length: mm(600) };

/** A 3/8 × 1 1/2 pin in a corner of 3/4 in boards. */
function lessonJoint(point: BitPoint, leave?: Mm): JointPlan {
  return planJoint({
    kind: 'corner',
    system: 'in',
    a: threeQuarters,
    b: threeQuarters,
    pin: { diameter: inches(3 / 8), length: inches(3 / 2) },
    allowance: inches(1 / 8),
    ...(leave === undefined ? {} : { leave }),
    bit: { point },
    guide: { bushing: inches(1), standoff: mm(0) },
  });
}

/** What the boards of the lesson's joint hold, in inches; worked to 9 decimals, or to 3. */
function lessonRows(
  how: string,
  { a, b, spec }: JointPlan,
  byHandInches: Readonly<Record<string, number>>,
  decimals: number,
): readonly CheckRow[] {
  const numbers: Readonly<Record<string, number>> = {
    'pin held by B': b.engagement,
    'depth of the hole in B': b.holeDepth,
    'stop for B': b.stop,
    'wood left in B': b.woodLeft,
    'pin held by A': a.engagement,
    'depth of the hole in A': a.holeDepth,
    'stop for A': a.stop,
    'point of the bit': spec.bit.tip,
  };
  return Object.entries(byHandInches).map(([name, published]) => ({
    ...byHand,
    what: `3/8 × 1 1/2 in pin, corner of 3/4 in boards, ${how}: ${name}`,
    unit: { name: 'in', decimals: 3 },
    published,
    computed: (numbers[name] ?? NaN) / 25.4,
    tolerance: 0.5 * 10 ** -decimals,
  }));
}

const chosen: readonly (readonly [
  kind: JointKind,
  system: System,
  thickness: string,
  thick: number,
  diameter: number,
  length: number,
])[] = [
  ['corner', 'in', '1/2 in', 1 / 2, 1 / 4, 1],
  ['corner', 'in', '5/8 in', 5 / 8, 5 / 16, 5 / 4],
  ['corner', 'in', '3/4 in', 3 / 4, 3 / 8, 3 / 2],
  ['corner', 'mm', '18 mm', 18, 8, 30],
  ['edge', 'in', '3/4 in', 3 / 4, 3 / 8, 2],
  ['edge', 'mm', '18 mm', 18, 8, 40],
];

/** The pin that is chosen from stock for two ordinary boards. */
function chosenRows([kind, system, name, thick, diameter, length]: (typeof chosen)[number]) {
  const size = system === 'in' ? inches : mm;
  const board: Board = { thickness: size(thick), width: mm(140), length: mm(600) };
  const { pin } = planJoint({ kind, system, a: board, b: board });
  const row = (side: 'diameter' | 'length', published: Mm): CheckRow => ({
    ...byHand,
    what: `Pin for ${kind === 'edge' ? 'an edge' : 'a corner'} joint of ${name} boards: ${side}`,
    unit: 'length',
    published,
    computed: pin?.[side] ?? NaN,
    tolerance: 0,
  });
  return [row('diameter', size(diameter)), row('length', size(length))];
}

/** Joints that were also worked by hand. */
export const workedJointRows: readonly CheckRow[] = [
  ...lessonRows(
    'bit without a point',
    lessonJoint({ kind: 'square' }, inches(1 / 8)),
    {
      'pin held by B': 1 / 2,
      'depth of the hole in B': 5 / 8,
      'stop for B': 1 + 5 / 8,
      'wood left in B': 1 / 8,
      'pin held by A': 1,
      'depth of the hole in A': 1 + 1 / 8,
      'stop for A': 2 + 1 / 8,
    },
    9,
  ),
  ...lessonRows(
    '118° bit, 1/8 in left',
    lessonJoint({ kind: 'twist', angle: 118 }, inches(1 / 8)),
    { 'point of the bit': 0.113, 'pin held by B': 0.387, 'pin held by A': 1.113 },
    3,
  ),
  ...lessonRows(
    '118° bit, 1/8 in left',
    lessonJoint({ kind: 'twist', angle: 118 }, inches(1 / 8)),
    { 'wood left in B': 1 / 8 },
    9,
  ),
  ...lessonRows(
    '118° bit, wood left by the rule',
    lessonJoint({ kind: 'twist', angle: 118 }),
    { 'pin held by B': 0.481, 'pin held by A': 1.019 },
    3,
  ),
  ...chosen.flatMap(chosenRows),
];
