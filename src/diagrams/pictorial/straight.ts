import type { JointPlan } from '../../core/joint/types.ts';
import {
  type Extent,
  FAR,
  LEFT,
  NEAR,
  RIGHT,
  behind,
  boreAt,
  box,
  brokenSides,
  dowelAt,
  flatSawn,
  movesOf,
  reachOf,
  shown,
} from './parts.ts';
import type { PictorialShapes, Solid, SurfaceMark } from './shapes.ts';
import { place } from './space.ts';

/** A longer joint is cut between two pins, so that the pins come out large enough to see; mm. */
const LONGEST = 260;

const X = place(1, 0, 0);
const Y = place(0, 1, 0);
const UP = place(0, 0, 1);
const DOWN = place(0, 0, -1);
const BACK = place(-1, 0, 0);

/** How much of the joint line is shown. */
function lineOf(plan: JointPlan): Extent {
  const { jointLength } = plan.spec;
  if (jointLength <= LONGEST) return { at: jointLength, whole: true };
  const { positions } = plan;
  const cuts = positions.slice(1).map((next, i) => (positions[i]! + next) / 2);
  const cut = cuts.findLast((at) => at <= LONGEST) ?? cuts[0] ?? LONGEST;
  return { at: Math.min(cut, LONGEST * 1.5), whole: false };
}

/** From the joint to the middle of the wood behind a hole, mm. */
function pastHole(plan: JointPlan, member: 'a' | 'b', far: Extent): number {
  return (Math.min(reachOf(plan, member), far.at) + far.at) / 2;
}

/** A place along the joint where no hole is seen behind a letter or a mark, mm. */
function clearPlace({ positions, spec }: JointPlan, line: Extent): number {
  const [first, second] = positions;
  if (first === undefined || second === undefined || second - first < 40) return line.at / 2;
  // On the page a hole lies half a thickness nearer than it is.
  return (first + second - spec.a.thickness) / 2;
}

function boardA(plan: JointPlan, x: number, line: Extent): Solid {
  const { spec, a } = plan;
  const far = shown(behind(plan, 'a'), Math.max(a.limit, 1));
  const t = spec.a.thickness;
  const alongJoint = spec.drilled === 'edge';
  return {
    member: 'a',
    base: box(x - far.at, x, 0, line.at),
    bottom: -t,
    top: 0,
    broken: {
      sides: brokenSides([
        [LEFT, far.whole],
        [FAR, line.whole],
      ]),
      top: false,
      bottom: false,
    },
    grain: flatSawn(
      alongJoint ? Y : X,
      place(x - far.at / 2, line.at * 0.46, -t),
      DOWN,
      alongJoint ? far.at : line.at,
      t,
    ),
    letter: {
      text: 'A',
      at: place(x - pastHole(plan, 'a', far), clearPlace(plan, line), 0),
    },
  };
}

/** B where its face receives the pins: it stands upright, its reference end on top. */
function standing(plan: JointPlan, x: number, line: Extent): Solid {
  const { spec } = plan;
  const ta = spec.a.thickness;
  const tb = spec.b.thickness;
  const pad = Math.max(ta * 1.1, 22);
  const beyond = plan.kind === 'corner' ? spec.overhang : spec.at;
  const over: Extent = beyond <= pad ? { at: beyond, whole: true } : { at: pad, whole: false };
  const alongJoint = spec.drilled === 'edge';
  const own = alongJoint ? spec.b.width : spec.b.length;
  const under = shown(ta + Math.max(pad, 40), Math.max(own - beyond, ta));
  const side = line.whole
    ? shown(line.at + pad, Math.max(1, alongJoint ? spec.b.length : spec.b.width))
    : line;
  return {
    member: 'b',
    base: box(x, x + tb, 0, side.at),
    bottom: -under.at,
    top: over.at,
    broken: {
      sides: brokenSides([[FAR, side.whole]]),
      top: !over.whole,
      bottom: !under.whole,
    },
    grain: flatSawn(
      alongJoint ? Y : UP,
      place(x + tb, side.at * 0.54, (over.at - under.at) / 2),
      X,
      alongJoint ? over.at + under.at : side.at,
      tb,
    ),
    letter: {
      text: 'B',
      at: place(
        x,
        Math.min((plan.positions[0] ?? line.at) * 0.5, line.at / 2),
        Math.min(-(ta + under.at) / 2, 13 - under.at),
      ),
    },
  };
}

/** B where its edge receives the pins: it lies in line with A. */
function lying(plan: JointPlan, x: number, line: Extent): Solid {
  const { spec, b } = plan;
  const t = spec.b.thickness;
  const far = shown(behind(plan, 'b'), Math.max(b.limit, 1));
  const pad = Math.max(20, line.at * 0.3);
  const before = plan.kind === 'frame' ? spec.at : 0;
  const near: Extent =
    before <= pad * 1.25 ? { at: before, whole: true } : { at: pad, whole: false };
  const side = line.whole ? shown(line.at + pad, Math.max(1, spec.b.length - before)) : line;
  return {
    member: 'b',
    base: box(x, x + far.at, -near.at, side.at),
    bottom: spec.reveal - t,
    top: spec.reveal,
    broken: {
      sides: brokenSides([
        [RIGHT, far.whole],
        [NEAR, near.whole],
        [FAR, side.whole],
      ]),
      top: false,
      bottom: false,
    },
    grain: flatSawn(Y, place(x + far.at * 0.55, 0, spec.reveal - t), DOWN, far.at, t),
    letter: {
      text: 'B',
      at: place(x + pastHole(plan, 'b', far), clearPlace(plan, line), spec.reveal),
    },
  };
}

/** A face mark on the top of a board, its tail to the near arris, and an edge mark that points there. */
function marksOnTop(solid: Solid): SurfaceMark[] {
  const { member, top, base, broken, letter } = solid;
  if (broken.sides.includes(NEAR)) return [];
  const { x: left, y } = base[NEAR]!;
  const { x: right } = base[RIGHT]!;
  return [
    { kind: 'face', member, at: place(letter.at.x, y, top), along: X, into: Y },
    { kind: 'edge', member, at: place((left + right) / 2, y, top), along: X, into: DOWN },
  ];
}

/**
 * The marks of a board that stands: on its edge and its end, where measuring starts.
 * @param along the joint to the mark on its end
 */
function marksStanding(solid: Solid, along: number): SurfaceMark[] {
  const { member, base, top, bottom, broken } = solid;
  const near = base[NEAR]!;
  return [
    {
      kind: 'edge',
      member,
      at: place(near.x, near.y, top + (bottom - top) * 0.72),
      along: UP,
      into: X,
    },
    ...(broken.top
      ? []
      : [
          {
            kind: 'edge' as const,
            member,
            at: place(near.x, along, top),
            along: Y,
            into: X,
          },
        ]),
  ];
}

/**
 * Edge, corner, tee and frame joints pulled apart, in mm: x runs along the pins from A to B with
 * the joint at 0, y along the joint from the reference end, z up from A's reference face.
 */
export function straightPictorial(plan: JointPlan, apart: number): PictorialShapes {
  const { spec } = plan;
  const moves = movesOf(plan, apart);
  const [xA, xB] = [-moves.gap / 2, moves.gap / 2];
  const line = lineOf(plan);
  const stands = plan.kind === 'corner' || plan.kind === 'tee';
  const a = boardA(plan, xA, line);
  const b = stands ? standing(plan, xB, line) : lying(plan, xB, line);
  const holes = plan.holes.filter((hole) => line.whole || hole.along < line.at);
  const before = plan.kind === 'frame' ? spec.at : 0;
  const beyond =
    plan.kind === 'corner' ? spec.overhang : plan.kind === 'tee' ? spec.at : spec.reveal;
  const mouths = holes.map((hole) => ({
    a: place(xA, hole.along, -hole.acrossA),
    // Each board's own measures: that the two mouths face each other is what the plan is for.
    b: place(xB, hole.alongB - before, beyond - hole.acrossB),
  }));
  return {
    turn: 0,
    solids: [b, a],
    bores: mouths.flatMap((mouth, i) => [
      boreAt(plan, 'b', i, mouth.b, X),
      boreAt(plan, 'a', i, mouth.a, BACK),
    ]),
    dowels: mouths.flatMap((mouth) => dowelAt(plan, moves, mouth.a, X)),
    axes: mouths.map((mouth) => [mouth.a, mouth.b]),
    marks: [
      ...marksOnTop(a),
      ...(stands ? marksStanding(b, clearPlace(plan, line)) : marksOnTop(b)),
    ],
    beyond: plan.holes.length - holes.length,
  };
}
