import type { JointPlan } from '../../core/joint/types.ts';
import {
  LEFT,
  NEAR,
  behind,
  boreAt,
  box,
  brokenSides,
  dowelAt,
  flatSawn,
  movesOf,
  shown,
} from './parts.ts';
import type { PictorialShapes, Solid } from './shapes.ts';
import { place } from './space.ts';

const X = place(1, 0, 0);
const Y = place(0, 1, 0);
const UP = place(0, 0, 1);
const BACK = place(-1, 0, 0);
const NEARER = place(0, -1, 0);

/**
 * A leg and its two aprons from inside the frame, in mm: A comes along x, the second apron along
 * y; z is 0 at the top of leg and aprons, where measuring starts. A's outer face, its reference
 * face, lies at y = 0, and the leg's outer face the setback beyond.
 */
export function legPictorial(plan: JointPlan, apart: number): PictorialShapes {
  const { spec, a } = plan;
  const moves = movesOf(plan, apart);
  const side = spec.b.thickness;
  const t = spec.a.thickness;
  const line = spec.jointLength;
  const { setback } = spec;
  // The leg's faces that the aprons meet.
  const [meetsA, meetsSecond] = [0, setback - side];
  const outer = side - setback;
  const far = shown(behind(plan, 'a'), Math.max(a.limit, 1));
  const foot = shown(line + Math.max(24, side * 0.6), Math.max(1, spec.b.length));
  const xA = meetsA - moves.gap;
  const ySecond = meetsSecond - moves.gap;
  const leg: Solid = {
    member: 'b',
    base: box(0, side, setback - side, setback),
    bottom: -foot.at,
    top: 0,
    broken: { sides: [], top: false, bottom: !foot.whole },
    // Cut so that the rings cross the end slantwise, and every side shows straight grain.
    grain: {
      along: UP,
      pith: place(side * 1.7, setback - side * 1.9, 0),
      ring: Math.max(2, side / 8),
    },
    letter: { text: 'B', at: place(0, setback - side / 2, -(line + foot.at) / 2) },
  };
  const apron: Solid = {
    member: 'a',
    base: box(xA - far.at, xA, -t, 0),
    bottom: -line,
    top: 0,
    broken: { sides: brokenSides([[LEFT, far.whole]]), top: false, bottom: false },
    grain: flatSawn(X, place(xA, 0, -line * 0.54), Y, line, t),
    letter: { text: 'A', at: place(xA - far.at * 0.6, -t, (t - line) / 2) },
  };
  const second: Solid = {
    member: 'second',
    base: box(outer - t, outer, ySecond - far.at, ySecond),
    bottom: -line,
    top: 0,
    broken: { sides: brokenSides([[NEAR, far.whole]]), top: false, bottom: false },
    grain: flatSawn(Y, place(outer, ySecond, -line * 0.54), X, line, t),
    letter: { text: 'A2', at: place(outer - t, ySecond - far.at * 0.6, (t - line) / 2) },
  };
  const rows = [
    ...plan.holes.map((hole) => ({
      member: 'a' as const,
      own: place(xA, -hole.acrossA, -hole.along),
      inLeg: place(meetsA, setback - hole.acrossB, -hole.alongB),
      toward: X,
      back: BACK,
    })),
    ...plan.secondRow.map((along) => ({
      member: 'second' as const,
      own: place(outer - (plan.holes[0]?.acrossA ?? t / 2), ySecond, -along),
      inLeg: place(side - (plan.holes[0]?.acrossB ?? side / 2), meetsSecond, -along),
      toward: Y,
      back: NEARER,
    })),
  ];
  return {
    turn: 0,
    solids: [leg, second, apron],
    bores: rows.flatMap((row, i) => [
      boreAt(plan, 'b', i, row.inLeg, row.toward),
      boreAt(plan, row.member, i, row.own, row.back),
    ]),
    dowels: rows.flatMap((row) => dowelAt(plan, moves, row.own, row.toward)),
    axes: rows.map((row) => [row.own, row.inLeg]),
    marks: [
      { kind: 'edge', member: 'a', at: place(xA - far.at * 0.5, 0, 0), along: X, into: NEARER },
      {
        kind: 'edge',
        member: 'second',
        at: place(outer, ySecond - far.at * 0.5, 0),
        along: Y,
        into: BACK,
      },
      { kind: 'edge', member: 'b', at: place(side / 2, setback, 0), along: X, into: NEARER },
      {
        kind: 'edge',
        member: 'b',
        at: place(side, setback - side / 2, 0),
        along: Y,
        into: BACK,
      },
    ],
    beyond: 0,
  };
}
