import { defaults } from '../../../core/joint/defaults.ts';
import type { Board, JointKind, JointSpec, System } from '../../../core/joint/types.ts';
import { inches, type Mm, mm } from '../../../core/length/mm.ts';

/** A joint by the trade's name, and which part is A and which is B. */
export interface JointName {
  readonly kind: JointKind;
  readonly name: string;
  readonly says: string;
}

/** The six joints, in the order of the course. */
export const jointNames: readonly JointName[] = [
  { kind: 'edge', name: 'Edge', says: 'Boards A and B edge to edge, into a panel.' },
  { kind: 'corner', name: 'Corner', says: 'The end of A against the face of B, at B’s end.' },
  {
    kind: 'tee',
    name: 'Tee',
    says: 'A shelf’s end, A, against the face of B, away from its ends.',
  },
  { kind: 'frame', name: 'Frame', says: 'A rail’s end, A, against a stile’s edge, B.' },
  { kind: 'miter', name: 'Miter', says: 'Members A and B of a frame, both cut at 45°.' },
  { kind: 'leg', name: 'Leg', says: 'An apron’s end, A, into a square leg, B.' },
];

const ROUNDED = {
  in: (inch: number, _: number) => inches(inch),
  mm: (_: number, metric: number) => mm(metric),
};

/** The boards of the plant stand and its stool, as a first joint of each kind. */
export function startingJoint(kind: JointKind, system: System): JointSpec {
  const size = ROUNDED[system];
  const board = ([thickness, width, length]: readonly [Mm, Mm, Mm], species: string): Board => ({
    thickness,
    width,
    length,
    species,
  });
  const stock = size(3 / 4, 18);
  const wood = 'yellow-poplar';
  const panel = board([stock, size(5.5, 140), size(24, 600)], wood);
  const rail = board([stock, size(2, 50), size(14, 350)], wood);
  switch (kind) {
    case 'edge':
    case 'corner':
      return { kind, system, a: panel, b: panel };
    case 'tee':
      return { kind, system, a: panel, b: panel, at: size(8, 200) };
    case 'frame':
      return { kind, system, a: rail, b: board([stock, size(2, 50), size(24, 600)], wood) };
    case 'miter':
      return { kind, system, a: rail, b: rail };
    case 'leg': {
      const side = size(1.5, 40);
      return {
        kind,
        system,
        a: board([stock, size(3, 75), size(12, 300)], wood),
        b: board([side, side, size(18, 450)], wood),
      };
    }
  }
}

/**
 * A spec whose lengths that say no more than a default are left out, so that changing the
 * system brings the other system's defaults.
 */
export function withoutDefaults(spec: JointSpec): JointSpec {
  const usual = defaults[spec.system];
  const { allowance, setback, guide, ...rest } = spec;
  const { bushing, ...otherGuide } = guide ?? {};
  return {
    ...rest,
    ...(allowance === undefined || allowance === usual.allowance ? {} : { allowance }),
    ...(setback === undefined || setback === usual.setback ? {} : { setback }),
    guide: {
      ...otherGuide,
      ...(bushing === undefined || bushing === usual.bushing ? {} : { bushing }),
    },
  };
}
