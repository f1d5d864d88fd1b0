import { diameterOfPin } from '../../core/fit/fit.ts';
import type { JointPlan } from '../../core/joint/types.ts';
import { reachAlong } from '../../core/trial/drill.ts';
import type { DryFit } from '../../core/trial/dryFit.ts';
import type { DrilledHole, Trial } from '../../core/trial/trial.ts';
import type { Point } from '../drafting/point.ts';
import { reading } from '../drafting/reading.ts';
import { dowelOf, pose } from '../section/bore.ts';
import type { Body } from '../section/shapes.ts';
import { type Figure, type Piece, borePieces, dowelPiece } from './figure.ts';
import { type SmallLength, boreOfHole, shownTo } from './section.ts';
import type { Seated } from './seat.ts';

/** Two views of the row in mm, one under the other; x runs along the joint in both. */
export interface TrialRow {
  /** Cut along the row of pins: A above, B below; y along the pins. */
  readonly cut: Figure;
  /** Face to face, looking along the pins: y across the joint. */
  readonly face: Figure;
  /** Where each pin is, for its number. */
  readonly pins: readonly Point[];
  /** How far the boards stand open at the start and the end of the joint; null where they meet. */
  readonly opening: { readonly start: number; readonly end: number } | null;
  /** How far A lies out of place along the joint; 0 where that is too little to notice. */
  readonly outOfPlace: { readonly from: number; readonly to: number } | null;
  /** What is worth enlarging of the faces. */
  readonly small: readonly SmallLength[];
}

const CIRCLE = 48;

function circlePoints(center: Point, diameter: number): Point[] {
  return Array.from({ length: CIRCLE }, (_, i) => {
    const angle = (i / CIRCLE) * 2 * Math.PI;
    return {
      x: center.x + (diameter / 2) * Math.cos(angle),
      y: center.y + (diameter / 2) * Math.sin(angle),
    };
  });
}

function degrees(slope: number): number {
  return (Math.atan(slope) * 180) / Math.PI;
}

function depthShown(holes: readonly DrilledHole[]): { at: number; whole: boolean } {
  const limit = Math.min(...holes.map((hole) => hole.limit));
  const deepest = Math.max(...holes.map((hole) => Math.min(hole.depth, hole.limit) + hole.tip));
  return shownTo(Math.min(deepest, limit), limit);
}

/** Where a board begins and ends along the joint, cut off where it goes far beyond it. */
function alongOf(from: number, to: number, view: readonly [number, number]) {
  return {
    from: Math.max(from, view[0]),
    to: Math.min(to, view[1]),
    breaks: { from: from < view[0], to: to > view[1] },
  };
}

/** The fibers as a cut along the row shows them. */
function grainAlongRow(plan: JointPlan, member: 'a' | 'b'): Pick<Body, 'grain' | 'angle'> {
  if (plan.kind === 'edge') return { grain: 'long', angle: 0 };
  if (plan.kind === 'miter') return { grain: 'long', angle: member === 'a' ? 45 : -45 };
  if (member === 'a') return { grain: 'long', angle: 90 };
  return plan.kind === 'corner' || plan.kind === 'tee'
    ? { grain: 'end', angle: 45 }
    : { grain: 'long', angle: 0 };
}

/** How far B's face reaches across the joint, from where A's reference face is meant to be. */
function acrossOfB(plan: JointPlan): { from: number; to: number; breaks: [boolean, boolean] } {
  const { spec, kind } = plan;
  const pad = spec.a.thickness / 2;
  if (kind === 'corner' || kind === 'tee') {
    const above = kind === 'corner' ? spec.overhang : spec.at;
    const whole = above <= spec.a.thickness;
    return { from: whole ? -above : -pad, to: spec.a.thickness + pad, breaks: [!whole, true] };
  }
  const from = kind === 'leg' ? -spec.setback : kind === 'miter' ? 0 : -spec.reveal;
  return { from, to: from + spec.b.thickness, breaks: [false, false] };
}

/** The row of pins as it came out. @param seated how far the boards went together */
export function trialRow(trial: Trial, plan: JointPlan, outcome: DryFit, seated: Seated): TrialRow {
  const { opening, seats } = seated;
  // B's edge, which tilts where it rests on pins at one end only.
  const slope = (opening.end - opening.start) / trial.length;
  const edgeOfB = (along: number) => opening.start + slope * along;
  const slid = outcome.shift.along;
  const place = plan.holes[0] ? plan.holes[0].alongB - plan.holes[0].along : 0;
  const [a0, a1] = [slid, slid + reachAlong(plan, 'a')];
  const [b0, b1] = [-place, reachAlong(plan, 'b') - place];
  const pad = 0.06 * (a1 - a0) + 6;
  const view = [Math.min(0, a0) - pad, Math.max(trial.length, a1) + pad] as const;
  const [alongA, alongB] = [alongOf(a0, a1, view), alongOf(b0, b1, view)];
  const [farA, farB] = [
    depthShown(trial.pins.map(({ a }) => a)),
    depthShown(trial.pins.map(({ b }) => b)),
  ];

  const board = (
    member: 'a' | 'b',
    along: typeof alongA,
    edge: (along: number) => number,
    far: number,
    whole: boolean,
  ): Body => ({
    member,
    outline: [
      { x: along.from, y: edge(along.from) },
      { x: along.to, y: edge(along.to) },
      { x: along.to, y: edge(along.to) + far },
      { x: along.from, y: edge(along.from) + far },
    ],
    breaks: [
      ...(along.breaks.to ? [1] : []),
      ...(whole ? [] : [2]),
      ...(along.breaks.from ? [3] : []),
    ],
    ...grainAlongRow(plan, member),
    letter: {
      text: member.toUpperCase(),
      at: { x: along.from + 8, y: edge(along.from) + far / 2 },
    },
  });
  const cutPieces: Piece[] = trial.pins.flatMap(({ pin, a, b }, j) => {
    const mouthA = { x: a.along + slid, y: 0 };
    const mouthB = { x: b.along, y: edgeOfB(b.along) };
    const angleA = -90 + degrees(a.lean.along);
    const bores = [
      boreOfHole(plan, 'a', a, mouthA, angleA, (p) => p.y + a.limit),
      boreOfHole(
        plan,
        'b',
        b,
        mouthB,
        90 + degrees(slope) - degrees(b.lean.along),
        (p) => edgeOfB(p.x) + b.limit - p.y,
      ),
    ].filter((bore) => bore !== null);
    const held = seats[j]!.inA;
    return [
      ...bores.flatMap(borePieces),
      dowelPiece(dowelOf(diameterOfPin(pin), pose(mouthA, angleA), held - pin.length, held)),
    ];
  });

  const reach = acrossOfB(plan);
  const behind = (along: number) => outcome.shift.across + outcome.turn * along;
  const ta = plan.spec.a.thickness;
  const faceB: Body = {
    member: 'b',
    outline: [
      { x: alongB.from, y: reach.from },
      { x: alongB.to, y: reach.from },
      { x: alongB.to, y: reach.to },
      { x: alongB.from, y: reach.to },
    ],
    breaks: [
      ...(reach.breaks[0] ? [0] : []),
      ...(alongB.breaks.to ? [1] : []),
      ...(reach.breaks[1] ? [2] : []),
      ...(alongB.breaks.from ? [3] : []),
    ],
    // The joint's face of B: long grain along it, but for the end of a miter's member.
    grain: 'long',
    angle: plan.kind === 'corner' || plan.kind === 'tee' ? 90 : 0,
    letter: { text: 'B', at: { x: alongB.from + 8, y: (reach.from + reach.to) / 2 } },
  };
  const outlineA: Piece = {
    pen: 'hidden',
    closed: true,
    points: [
      { x: a0, y: behind(0) },
      { x: a1, y: behind(a1 - a0) },
      { x: a1, y: behind(a1 - a0) + ta },
      { x: a0, y: behind(0) + ta },
    ],
  };
  const centerOf = {
    a: (hole: DrilledHole): Point => ({
      x: hole.along + slid,
      y: hole.across + behind(hole.along),
    }),
    b: (hole: DrilledHole): Point => ({ x: hole.along, y: hole.across }),
  };
  const facePieces: Piece[] = trial.pins.flatMap(({ a, b }): Piece[] => [
    ...(b.depth > 0
      ? [
          { pen: 'hole' as const, closed: true, points: circlePoints(centerOf.b(b), b.diameter) },
          {
            pen: 'outline' as const,
            closed: true,
            points: circlePoints(centerOf.b(b), b.diameter),
          },
        ]
      : []),
    ...(a.depth > 0
      ? [{ pen: 'hidden' as const, closed: true, points: circlePoints(centerOf.a(a), a.diameter) }]
      : []),
  ]);

  const misses = outcome.faults.find(({ code }) => code === 'misses');
  const worst = outcome.pins.reduce(
    (most, { miss }, j) => (miss > outcome.pins[most]!.miss ? j : most),
    0,
  );
  const small: SmallLength[] = [];
  if (misses !== undefined) {
    const { a, b } = trial.pins[worst]!;
    const [from, to] = [centerOf.a(a), centerOf.b(b)];
    const axis = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y) ? 'x' : 'y';
    // The rims of the two holes, on one side: their middles lie in air.
    const rim = (center: Point, hole: DrilledHole) => center[axis] + hole.diameter / 2;
    const ends = [rim(from, a), rim(to, b)].toSorted((p, q) => p - q) as [number, number];
    const [along, across] = [(from.x + to.x) / 2, (from.y + to.y) / 2];
    const middle = (ends[0] + ends[1]) / 2;
    small.push({
      fault: 'misses',
      axis,
      from: ends[0],
      to: ends[1],
      at: axis === 'x' ? { x: middle, y: across } : { x: along, y: middle },
      text: reading((length) => `${length(ends[1] - ends[0])} apart`),
    });
  }
  const off = outcome.fits && outcome.faults.some(({ code }) => code === 'off-place');
  return {
    cut: {
      bodies: [
        board('a', alongA, () => 0, -farA.at, farA.whole),
        board('b', alongB, edgeOfB, farB.at, farB.whole),
      ],
      pieces: cutPieces,
    },
    face: { bodies: [faceB], pieces: [outlineA, ...facePieces] },
    pins: trial.pins.map(({ a }) => ({ x: a.along + slid, y: -farA.at })),
    opening: Math.max(opening.start, opening.end) > 1e-6 ? opening : null,
    outOfPlace: off ? { from: Math.min(0, slid), to: Math.max(0, slid) } : null,
    small,
  };
}
