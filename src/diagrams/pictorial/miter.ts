import type { JointPlan } from '../../core/joint/types.ts';
import { boreAt, dowelAt, movesOf } from './parts.ts';
import type { Corner, PictorialShapes, Solid, SurfaceMark } from './shapes.ts';
import { place } from './space.ts';

const HALF_ROOT = Math.SQRT1_2;
const X = place(1, 0, 0);
const BACK = place(-1, 0, 0);

/** A member of the frame from its miter to a square break; `way` −1 is A, 1 is B. */
function member(plan: JointPlan, way: -1 | 1, x: number): Solid {
  const { spec, a } = plan;
  const line = spec.jointLength;
  const t = spec[way === -1 ? 'a' : 'b'].thickness;
  const first = plan.positions[0] ?? 0;
  // The hole nearest to the heel comes farthest along the member.
  const reach = (a.holeDepth + spec.bit.tip + spec.bit.diameter / 2 - first) * HALF_ROOT;
  const inner = Math.max(reach + 10, 0) + Math.max(16, spec.a.width * 0.45);
  const outer = inner + line * HALF_ROOT;
  const from = (y: number, by: number): Corner => ({
    x: x + way * by * HALF_ROOT,
    y: y - by * HALF_ROOT,
  });
  const corners = [from(0, 0), from(0, inner), from(line, outer), from(line, 0)];
  const along = place(way * HALF_ROOT, -HALF_ROOT, 0);
  const middle = from(line / 2, (inner + outer) / 2);
  return {
    member: way === -1 ? 'a' : 'b',
    base: way === 1 ? corners : [...corners].reverse(),
    bottom: -t,
    top: 0,
    // The break is side 1 of either: between the second and the third corner.
    broken: { sides: [1], top: false, bottom: false },
    grain: {
      along,
      pith: place(middle.x, middle.y, -t - Math.max(t, spec.a.width * 0.45)),
      ring: Math.max(2, t / 4),
    },
    letter: {
      text: way === -1 ? 'A' : 'B',
      at: place(
        (corners[1]!.x + corners[2]!.x) / 2 - along.x * 18,
        (corners[1]!.y + corners[2]!.y) / 2 - along.y * 18,
        0,
      ),
    },
  };
}

/** The face mark, its tail to the inner edge, where the heel is measured from. */
function markOf(solid: Solid, way: -1 | 1): SurfaceMark {
  const [heel, end] =
    way === 1 ? [solid.base[0]!, solid.base[1]!] : [solid.base[3]!, solid.base[2]!];
  const { along } = solid.grain;
  return {
    kind: 'face',
    member: solid.member,
    at: place(heel.x + (end.x - heel.x) * 0.55, heel.y + (end.y - heel.y) * 0.55, solid.top),
    along,
    into: place(-along.y * way, along.x * way, 0),
  };
}

/**
 * A miter joint pulled apart, its reference faces up, in mm: x runs along the pins, y along the
 * cut from the heel (inside corner) to the toe. The members leave the cut at 45°.
 */
export function miterPictorial(plan: JointPlan, apart: number): PictorialShapes {
  const moves = movesOf(plan, apart);
  const [xA, xB] = [-moves.gap / 2, moves.gap / 2];
  const [a, b] = [member(plan, -1, xA), member(plan, 1, xB)];
  const mouths = plan.holes.map((hole) => ({
    a: place(xA, hole.along, -hole.acrossA),
    b: place(xB, hole.alongB, -hole.acrossB),
  }));
  return {
    turn: 45,
    solids: [b, a],
    bores: mouths.flatMap((mouth, i) => [
      boreAt(plan, 'b', i, mouth.b, X),
      boreAt(plan, 'a', i, mouth.a, BACK),
    ]),
    dowels: mouths.flatMap((mouth) => dowelAt(plan, moves, mouth.a, X)),
    axes: mouths.map((mouth) => [mouth.a, mouth.b]),
    marks: [markOf(a, -1), markOf(b, 1)],
    beyond: 0,
  };
}
