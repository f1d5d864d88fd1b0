import type { JointPlan } from '../../core/joint/types.ts';
import { TOLERANCE } from '../../core/length/mm.ts';
import type { BenchSetup, MemberSetup } from '../../core/trial/drill.ts';
import type { DrilledHole, Trial } from '../../core/trial/trial.ts';
import { FAR, NEAR, RIGHT } from './parts.ts';
import type { Bore, Cue, PictorialShapes, Solid } from './shapes.ts';
import { straightPictorial } from './straight.ts';
import { place } from './space.ts';

const X = place(1, 0, 0);
const BACK = place(-1, 0, 0);

/** Without pins between them the boards stand closer, and come out larger. */
const APART = 0.65;

/** Where guide and rule were put on a board. */
function cuesOf(solid: Solid, { face, end }: Pick<MemberSetup, 'face' | 'end'>): Cue[] {
  const { member, base, top, bottom } = solid;
  const [left, right] = [base[NEAR]!.x, base[RIGHT]!.x];
  const [near, far] = [base[NEAR]!.y, base[FAR]!.y];
  const middle = (left + right) / 2;
  const onFace = ([x, y]: readonly [number, number]) =>
    place(left + (right - left) * x, near + (far - near) * y, top);
  return [
    face === 'reference'
      ? {
          text: 'guide',
          // Where the word keeps clear of the holes and of the board's letter.
          at: onFace(member === 'a' ? [0.22, 0.25] : [0.06, 0.5]),
          from: place(0, 0, 1),
          set: true,
        }
      : {
          text: 'guide',
          at: place(left + (right - left) * 0.8, near, bottom),
          from: place(0, 0, -1),
          set: true,
        },
    end === 'reference'
      ? {
          text: 'rule',
          // A's word keeps clear of what stands under B.
          at: place(
            left + (right - left) * (member === 'a' ? 0.25 : 0.8),
            near,
            (top + bottom) / 2,
          ),
          from: place(0, -1, 0),
          set: true,
        }
      : { text: 'rule', at: place(middle, far, top), from: place(0, 1, 0), set: true },
  ];
}

/**
 * An edge joint as it was really drilled, apart: each hole where it came to be, a line from every
 * hole in A to where its pin arrives on B, and from which face and end each board was drilled.
 * @param trial of `setup`; of an edge joint that is short enough to be shown whole
 */
export function drilledPair(plan: JointPlan, setup: BenchSetup, trial: Trial): PictorialShapes {
  const shapes = straightPictorial(plan, APART);
  const [b, a] = shapes.solids as readonly [Solid, Solid];
  const xA = a.base[RIGHT]!.x;
  const xB = b.base[NEAR]!.x;
  const mouth = (x: number, hole: DrilledHole) => place(x, hole.along, -hole.across);
  const bores = trial.pins.flatMap((pin, i): Bore[] => {
    const bore = (member: 'a' | 'b') => ({
      member,
      pin: i,
      mouth: mouth(member === 'a' ? xA : xB, pin[member]),
      into: member === 'a' ? BACK : X,
      radius: pin[member].diameter / 2,
      depth: pin[member].depth,
    });
    return [bore('b'), bore('a')];
  });
  const astray = trial.pins.filter(
    (pin) => Math.hypot(pin.a.along - pin.b.along, pin.a.across - pin.b.across) > TOLERANCE,
  );
  return {
    ...shapes,
    bores,
    dowels: [],
    axes: trial.pins.map((pin) => [mouth(xA, pin.a), mouth(xB, pin.a)]),
    arrivals: astray.map((pin) => ({
      member: 'b',
      at: mouth(xB, pin.a),
      normal: X,
      radius: pin.a.diameter / 2,
    })),
    cues: [...cuesOf(a, setup.a), ...cuesOf(b, setup.b)],
  };
}

/** The pair with every word that a way of drilling it could put there: what the drawing needs room for. */
export function pairWithAllCues(plan: JointPlan, setup: BenchSetup, trial: Trial): PictorialShapes {
  const shapes = drilledPair(plan, setup, trial);
  const ways = [
    { face: 'reference', end: 'reference' },
    { face: 'other', end: 'other' },
  ] as const;
  return {
    ...shapes,
    cues: shapes.solids.flatMap((solid) => ways.flatMap((way) => cuesOf(solid, way))),
  };
}
