import { type Mm, TOLERANCE, lessThan, mm } from '../length/mm.ts';
import {
  type Expression,
  difference,
  least,
  quantity,
  quotient,
  sum,
} from '../working/expression.ts';
import { reckon, taken } from '../working/reckon.ts';
import { say } from '../working/sentence.ts';
import type { WorkingStep } from '../working/types.ts';
import { type Finding, finding } from './finding.ts';
import { defaults } from './defaults.ts';
import { drilledSide } from './jointLine.ts';
import type { Guide, JointSpec } from './types.ts';

/** Where the pins stand across each board, and the wood beside them. */
export interface Across {
  readonly a: WorkingStep;
  readonly b: WorkingStep;
  readonly wallA: WorkingStep;
  /** Null for a tee's face. */
  readonly wallB: WorkingStep | null;
  readonly cautions: readonly Finding[];
}

/** What B adds to the place across A: an overhang, a distance, a reveal, a setback. */
function shiftOnB(spec: JointSpec): { name: string; value: Mm } | null {
  const none = mm(0);
  switch (spec.kind) {
    case 'edge':
    case 'frame':
      return { name: 'reveal', value: spec.reveal ?? none };
    case 'corner':
      return { name: 'overhang', value: spec.overhang ?? none };
    case 'tee':
      return { name: 'at', value: spec.at ?? none };
    case 'leg':
      return { name: 'setback', value: spec.setback ?? defaults[spec.system].setback };
    case 'miter':
      return null;
  }
}

/** How far B reaches across the joint line; null where nothing can break out. */
function depthOfB(spec: JointSpec): { name: string; value: Mm } | null {
  switch (spec.kind) {
    case 'edge':
    case 'frame':
    case 'miter':
      return { name: 't_B', value: spec.b.thickness };
    case 'corner':
      return drilledSide(spec) === 'end'
        ? { name: 'length_B', value: spec.b.length }
        : { name: 'width_B', value: spec.b.width };
    case 'tee':
      return null;
    case 'leg':
      return { name: 'S', value: spec.b.thickness };
  }
}

function reckonWall(side: 'a' | 'b', across: WorkingStep, reach: Expression, bit: Mm): WorkingStep {
  const letter = side.toUpperCase();
  const radius = quotient(quantity('D', bit), 2);
  return reckon({
    id: `${side}.wall`,
    label: `Least wood beside the hole in ${letter}`,
    symbol: `wall_${letter}`,
    formula: least(difference(taken(across), radius), difference(reach, taken(across), radius)),
    source: 'geometry',
  });
}

function wallCautions(spec: JointSpec, letter: 'A' | 'B', wall: WorkingStep): readonly Finding[] {
  const enough = defaults[spec.system].wall;
  if (!lessThan(wall.result, enough)) return [];
  if (wall.result <= TOLERANCE) {
    return [
      finding(
        'through-side',
        'error',
        say`The hole in ${letter} would break out of its side by ${Math.max(0, -wall.result)}.`,
        say`Take a thinner pin, or move the hole toward the middle.`,
      ),
    ];
  }
  return [
    finding(
      'thin-wall',
      'caution',
      say`Only ${wall.result} of wood stands beside the hole in ${letter}: it can split or bulge.`,
      say`Take a thinner pin or move the hole, so that ${enough} or more is left.`,
    ),
  ];
}

/**
 * Where the pins stand across both boards: the middle of A (as far as the guide hits it), and
 * the matching place on B.
 * @param bit diameter of the bit, mm
 */
export function placeAcross(spec: JointSpec, guide: Required<Guide>, bit: Mm): Across {
  const middle = quotient(quantity('t_A', spec.a.thickness), 2);
  const a = reckon({
    id: 'acrossA',
    label: "From A's reference face to the middle of the hole",
    symbol: 'y_A',
    formula: guide.offset === 0 ? middle : sum(middle, quantity('offset', guide.offset)),
    source: 'geometry',
    rule: 'the middle of the board, as the guide finds it',
  });
  const shift = shiftOnB(spec);
  const b = reckon({
    id: 'acrossB',
    label: 'The same on B',
    symbol: 'y_B',
    formula: shift === null ? taken(a) : sum(quantity(shift.name, shift.value), taken(a)),
    source: 'geometry',
  });
  const wallA = reckonWall('a', a, quantity('t_A', spec.a.thickness), bit);
  const reach = depthOfB(spec);
  const wallB = reach === null ? null : reckonWall('b', b, quantity(reach.name, reach.value), bit);
  return {
    a,
    b,
    wallA,
    wallB,
    cautions: [
      ...wallCautions(spec, 'A', wallA),
      ...(wallB === null ? [] : wallCautions(spec, 'B', wallB)),
    ],
  };
}

/**
 * A guide that centers itself drills the middle of B, wherever the pin should be: the step
 * between the faces that this would make, where there is one.
 */
export function centeringCautions(
  spec: JointSpec,
  guide: Required<Guide>,
  across: Across,
): readonly Finding[] {
  if (!guide.centering || spec.kind === 'corner' || spec.kind === 'tee') return [];
  const found = spec.b.thickness / 2 + guide.offset;
  const step = found - across.b.result;
  if (Math.abs(step) <= TOLERANCE) return [];
  return [
    finding(
      'centering-step',
      'caution',
      say`A guide that centers itself puts B's hole ${mm(found)} from its reference face, where ${across.b.result} is wanted: A would stand ${Math.abs(step)} off.`,
      say`Drill B with a guide that is set from the reference face, or shim B's other side.`,
    ),
  ];
}
