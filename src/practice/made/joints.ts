import { planJoint } from '../../core/joint/planJoint.ts';
import type { Board, JointKind, JointSpec, System } from '../../core/joint/types.ts';
import type { Numbers } from '../questions/numbers.ts';
import { numbersOf } from '../questions/numbersOf.ts';
import type { Setup } from '../questions/setupKinds.ts';
import type { Draws } from './draws.ts';
import { guideAtHand, pointedBit, shop } from './shop.ts';

/** A setup and its numbers, as a draft wants them. */
export function about(setup: Setup): { readonly setup: Setup; readonly numbers: Numbers } {
  return { setup, numbers: numbersOf(setup) };
}

function boards(draws: Draws, kind: JointKind, system: System): readonly [Board, Board] {
  const { widths, lengths, narrow, legs } = shop[system];
  const thicknesses = draws.limits.thicknesses ?? shop[system].thicknesses;
  const board = (width: Board['width'], thickness = draws.pick(thicknesses)): Board => ({
    thickness,
    width,
    length: draws.pick(lengths),
  });
  switch (kind) {
    case 'edge': {
      const a = board(draws.pick(widths));
      return [a, { ...a, width: draws.pick(widths) }];
    }
    case 'corner':
    case 'tee': {
      const a = board(draws.pick(widths));
      return [a, board(a.width)];
    }
    case 'frame': {
      const a = board(draws.pick(narrow));
      return [a, board(draws.pick(narrow), a.thickness)];
    }
    case 'miter': {
      const a = board(draws.pick(narrow));
      return [a, { ...a, length: draws.pick(lengths) }];
    }
    case 'leg': {
      const side = draws.pick(legs);
      const [, inMiddle = 0] = narrow;
      const wide = narrow.filter((width) => width >= inMiddle);
      return [board(draws.pick(wide)), { ...board(side), thickness: side }];
    }
  }
}

/**
 * A joint of the plant stand or its stool, in sizes that a shop has. The pin is the one that the
 * calculator would choose, and is then kept: a mistake about the depth doesn't choose another.
 */
export function jointOf(draws: Draws, kind: JointKind, system: System): JointSpec {
  const [a, b] = boards(draws, kind, system);
  const spec: JointSpec = {
    kind,
    system,
    a,
    b,
    allowance: draws.pick(shop[system].allowances),
    leave: draws.pick(shop[system].leaves),
    bit: { point: pointedBit(draws, system) },
    guide: guideAtHand(draws, system, 'no gap'),
  };
  return { ...spec, pin: planJoint(spec).pin ?? 'choose' };
}

/** The numbers of a joint with something set otherwise: a mistake, as the calculator runs it. */
export function instead(spec: JointSpec, change: Partial<JointSpec>): Numbers {
  return numbersOf({ ...spec, ...change });
}

/** The joint with a bit that has no point: what somebody reckons with who forgot it. */
export function withoutPoint(spec: JointSpec): Numbers {
  return instead(spec, { bit: { ...spec.bit, point: { kind: 'square' } } });
}

/** Which boards meet how, in a sentence. */
export const boardsIn: Readonly<Record<JointKind, string>> = {
  edge: "Two boards of the plant stand's top, A and B, are joined edge to edge. Both are {a.thickness} thick; A is {a.width} wide, B {b.width}.",
  corner:
    'A corner of the plant stand: a side, A, is drilled in its end, and the top, B, in its face. A is {a.thickness} thick, B {b.thickness}; both are {a.width} wide.',
  tee: 'A fixed shelf of the plant stand: the shelf, A, is drilled in its end, and the side, B, in its face. A is {a.thickness} thick, B {b.thickness}; both are {a.width} wide.',
  frame:
    "The plant stand's face frame: a rail, A, is drilled in its end, and a stile, B, in its edge. Both are {a.thickness} thick; A is {a.width} wide, B {b.width}.",
  miter:
    "Two members of the plant stand's mitered frame, A and B, are cut at 45°. Both are {a.thickness} thick and {a.width} wide.",
  leg: 'The stool: an apron, A, is drilled in its end and goes into a square leg, B. A is {a.thickness} thick and {a.width} wide, the leg {b.thickness} on each side.',
};

/** The pin, the bit and what is left free, in sentences. */
export function drillingOf(spec: JointSpec): string {
  const point = {
    twist: 'The twist bit has a point of 118°, which is {tip} long',
    brad: 'The brad-point bit has a spur {tip} long',
    center: 'The bit has a center point {tip} long',
    square: 'The bit is square at its tip',
  }[spec.bit?.point?.kind ?? 'twist'];
  return `The pin is {pin.diameter} across and {pin.length} long. ${point}. Each hole goes {allowance} past the end of the pin.`;
}
