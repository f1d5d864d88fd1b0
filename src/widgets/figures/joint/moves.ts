import type { JointKind, JointPlan, JointSpec } from '../../../core/joint/types.ts';
import { inches, type Mm, mm } from '../../../core/length/mm.ts';
import type { StepSize } from '../../../core/length/shopSteps.ts';

/** What a lesson may let its reader change about a joint. */
export const MOVES = [
  'thickness',
  'a.thickness',
  'b.thickness',
  'width',
  'a.width',
  'b.width',
  'pin',
  'point',
  'drilled',
  'overhang',
  'at',
  'reveal',
  'setback',
  'stagger',
  'margin',
] as const;

export type Move = (typeof MOVES)[number];

/** A length that the reader may change. */
export interface LengthMove {
  readonly label: (kind: JointKind) => string;
  readonly least: Mm;
  readonly most: Mm;
  readonly step?: StepSize;
  readonly zero?: boolean;
  readonly value: (plan: JointPlan) => Mm;
  readonly set: (spec: JointSpec, length: Mm) => JointSpec;
}

const FINE: StepSize = { in: 1 / 16, mm: 0.5 };
const COARSE: StepSize = { in: 1 / 4, mm: 5 };

/** Board B with a thickness; a leg is square. */
function thickB(spec: JointSpec, thickness: Mm): JointSpec {
  const square = spec.kind === 'leg' && { width: thickness };
  return { ...spec, b: { ...spec.b, thickness, ...square } };
}

const THICKNESS = { least: inches(3 / 8), most: inches(2) } as const;
const WIDTH = { least: inches(1), most: inches(12), step: COARSE } as const;
const NONE = mm(0);

/** The moves that are a single length. */
export const LENGTH_MOVES: Partial<Record<Move, LengthMove>> = {
  thickness: {
    label: () => 'Thickness of both boards',
    ...THICKNESS,
    value: (plan) => plan.spec.a.thickness,
    set: (spec, thickness) => thickB({ ...spec, a: { ...spec.a, thickness } }, thickness),
  },
  'a.thickness': {
    label: () => 'Thickness of A',
    ...THICKNESS,
    value: (plan) => plan.spec.a.thickness,
    set: (spec, thickness) => ({ ...spec, a: { ...spec.a, thickness } }),
  },
  'b.thickness': {
    label: (kind) => (kind === 'leg' ? 'Side of the square leg, B' : 'Thickness of B'),
    ...THICKNESS,
    most: inches(3),
    value: (plan) => plan.spec.b.thickness,
    set: thickB,
  },
  width: {
    label: () => 'Width of both boards',
    ...WIDTH,
    value: (plan) => plan.spec.a.width,
    set: (spec, width) => ({ ...spec, a: { ...spec.a, width }, b: { ...spec.b, width } }),
  },
  'a.width': {
    label: () => 'Width of A',
    ...WIDTH,
    value: (plan) => plan.spec.a.width,
    set: (spec, width) => ({ ...spec, a: { ...spec.a, width } }),
  },
  'b.width': {
    label: () => 'Width of B',
    ...WIDTH,
    value: (plan) => plan.spec.b.width,
    set: (spec, width) => ({ ...spec, b: { ...spec.b, width } }),
  },
  overhang: {
    label: () => 'B’s end beyond A’s face (overhang)',
    least: NONE,
    most: inches(2),
    zero: true,
    value: (plan) => plan.spec.overhang,
    set: (spec, overhang) => ({ ...spec, overhang }),
  },
  at: {
    label: (kind) =>
      kind === 'tee'
        ? 'B’s reference end to A’s reference face'
        : 'B’s reference end to A’s reference edge',
    least: NONE,
    most: inches(24),
    step: COARSE,
    zero: true,
    value: (plan) => plan.spec.at,
    set: (spec, at) => ({ ...spec, at }),
  },
  setback: {
    label: () => 'Leg’s outer face to the apron’s (setback)',
    least: NONE,
    most: inches(1),
    step: FINE,
    zero: true,
    value: (plan) => plan.spec.setback,
    set: (spec, setback) => ({ ...spec, setback }),
  },
  stagger: {
    label: () => 'Second apron’s row shifted by (stagger)',
    least: NONE,
    most: inches(2),
    step: FINE,
    zero: true,
    value: (plan) => plan.spec.stagger,
    set: (spec, stagger) => ({ ...spec, stagger }),
  },
  margin: {
    label: (kind) => (kind === 'miter' ? 'Heel to the first pin' : 'End to the first pin'),
    least: inches(1 / 4),
    most: inches(4),
    step: FINE,
    value: (plan) => plan.positions[0] ?? plan.spec.layout.endMargin,
    set: (spec, endMargin) => ({ ...spec, layout: { ...spec.layout, endMargin } }),
  },
};

const NOT_SQUARE = ['edge', 'corner', 'tee', 'frame', 'miter'] as const;

const ONLY: Partial<Record<Move, readonly JointKind[]>> = {
  drilled: ['corner', 'tee'],
  overhang: ['corner'],
  at: ['tee', 'frame'],
  reveal: ['edge', 'frame'],
  setback: ['leg'],
  stagger: ['leg'],
  width: NOT_SQUARE,
  'b.width': NOT_SQUARE,
};

/** Whether a joint of this kind has what a move changes. */
export function applies(move: Move, kind: JointKind): boolean {
  return ONLY[move]?.includes(kind) ?? true;
}
