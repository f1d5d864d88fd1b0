import { diameterOfPin } from '../../core/fit/fit.ts';
import type { JointPlan } from '../../core/joint/types.ts';
import type { DryFit } from '../../core/trial/dryFit.ts';
import type { FaultCode } from '../../core/trial/faults.ts';
import type { DrilledHole, Member, Trial } from '../../core/trial/trial.ts';
import type { Point } from '../drafting/point.ts';
import { type Reading, reading } from '../drafting/reading.ts';
import { boreOf, dowelOf, pose } from '../section/bore.ts';
import type { Body, Bore, Measure, SectionShapes } from '../section/shapes.ts';
import { type Figure, type Piece, borePieces, dowelPiece } from './figure.ts';
import type { Seated } from './seat.ts';

/** A place worth enlarging, and the small length there, mm. */
export interface SmallLength {
  readonly fault: FaultCode;
  readonly at: Point;
  /** Along which axis of the drawing the length runs, and from where to where. */
  readonly axis: 'x' | 'y';
  readonly from: number;
  readonly to: number;
  readonly text: Reading;
}

/** The joint as it came out, cut along one pin, in mm: x along the pin, A to the left of 0. */
export interface TrialSection extends Figure {
  readonly marks: SectionShapes['marks'];
  /** Where a point came through. */
  readonly cautions: readonly Point[];
  readonly measures: readonly Measure[];
  readonly small: readonly SmallLength[];
  /** What the drawing must leave room for, wherever B stands. */
  readonly reach: { readonly left: number; readonly right: number };
}

/** Beyond the far face a bit is drawn no farther than this, mm. */
const BEYOND = 14;

/** So much of a board is shown even where its hole has no depth, mm. */
const LEAST_SHOWN = 24;

/** Boards nearer than this, mm, look as if they met. */
const TOUCHING = 2;

/** How far the boards stand apart before they are pushed together, mm. */
export const APART = 10;

function degrees(slope: number): number {
  return (Math.atan(slope) * 180) / Math.PI;
}

/** A hole as it was drilled, for the drawing of bores; `pose` gives it place and direction. */
export function boreOfHole(
  plan: JointPlan,
  member: Member,
  hole: DrilledHole,
  mouth: Point,
  angle: number,
  inside: (point: Point) => number,
  hidden = false,
): Bore | null {
  const holeDepth = Math.min(hole.depth, hole.limit + BEYOND) as DrilledHole['depth'];
  const asDrilled: JointPlan = {
    ...plan,
    [member]: { ...plan[member], holeDepth },
    spec: { ...plan.spec, bit: { ...plan.spec.bit, diameter: hole.diameter, tip: hole.tip } },
  };
  return boreOf(asDrilled, member, pose(mouth, angle), inside, hidden);
}

/** How far a board is shown past its hole: to its own end if that is near, else to a break line. */
export function shownTo(deepest: number, own: number): { at: number; whole: boolean } {
  const needed = Math.max(deepest + 10, LEAST_SHOWN);
  return own <= needed * 1.3 ? { at: own, whole: true } : { at: needed, whole: false };
}

function deepest(hole: DrilledHole): number {
  return Math.min(hole.depth, hole.limit) + hole.tip;
}

function bodyA(plan: JointPlan, hole: DrilledHole, top: number, right: number): Body {
  const far = shownTo(deepest(hole), hole.limit);
  const bottom = top + plan.spec.a.thickness;
  const end = plan.kind === 'edge' || plan.kind === 'miter' || plan.spec.drilled === 'edge';
  return {
    member: 'a',
    outline: [
      { x: right, y: top },
      { x: right, y: bottom },
      { x: -far.at, y: bottom },
      { x: -far.at, y: top },
    ],
    breaks: far.whole ? [] : [2],
    grain: end ? 'end' : 'long',
    angle: end ? 45 : 0,
    letter: { text: 'A', at: { x: -far.at + 5, y: (top + bottom) / 2 } },
  };
}

function bodyB(plan: JointPlan, hole: DrilledHole, left: number): Body {
  const { spec, kind } = plan;
  const ta = spec.a.thickness;
  const pad = Math.max(9, ta / 2);
  if (kind === 'corner' || kind === 'tee') {
    const above = kind === 'corner' ? spec.overhang : spec.at;
    const top = above <= ta ? { at: above, whole: true } : { at: pad, whole: false };
    const right = left + spec.b.thickness;
    return {
      member: 'b',
      outline: [
        { x: left, y: -top.at },
        { x: right, y: -top.at },
        { x: right, y: ta + pad },
        { x: left, y: ta + pad },
      ],
      breaks: [...(top.whole ? [] : [0]), 2],
      grain: 'long',
      angle: 90,
      letter: { text: 'B', at: { x: (left + right) / 2, y: ta + pad / 2 } },
    };
  }
  const top = kind === 'leg' ? -spec.setback : kind === 'miter' ? 0 : -spec.reveal;
  const far =
    kind === 'leg' ? { at: spec.b.thickness, whole: true } : shownTo(deepest(hole), hole.limit);
  const bottom = top + spec.b.thickness;
  return {
    member: 'b',
    outline: [
      { x: left, y: top },
      { x: left + far.at, y: top },
      { x: left + far.at, y: bottom },
      { x: left, y: bottom },
    ],
    breaks: far.whole ? [] : [1],
    grain: 'end',
    angle: kind === 'frame' || kind === 'leg' ? 45 : -45,
    letter: { text: 'B', at: { x: left + far.at - 5, y: (top + bottom) / 2 } },
  };
}

function measuresOf(
  holes: { readonly a: DrilledHole; readonly b: DrilledHole },
  seat: Seated['seats'][number],
  opening: number,
  lines: { topA: number; topB: number; bottom: number; axisA: number; axisB: number },
  outcome: DryFit['pins'][number],
): Measure[] {
  const out: Measure[] = [];
  const add = (
    id: string,
    from: Point,
    to: Point,
    side: Measure['side'],
    tier: number,
    outside: Measure['outside'],
    caution = false,
    text?: Reading,
  ) => {
    const value = to.x - from.x;
    if (value <= 1e-6) return;
    out.push({
      id,
      value,
      text: text ?? reading((length) => length(value)),
      from,
      to,
      side,
      tier,
      outside,
      ...(caution && { caution }),
    });
  };
  const { topA, topB, bottom, axisA, axisB } = lines;
  const [jointA, jointB] = [
    { x: 0, y: topA },
    { x: opening, y: topB },
  ];
  add('a.held', { x: -seat.inA, y: axisA }, jointA, 'above', 0, 'before');
  add('gap', jointA, jointB, 'above', 0, 'over', true);
  add('b.held', jointB, { x: opening + seat.inB, y: axisB }, 'above', 0, 'after');
  const [footA, footB] = [
    { x: 0, y: bottom },
    { x: opening, y: bottom },
  ];
  add('a.holeDepth', { x: -holes.a.depth, y: axisA }, footA, 'below', 0, 'before');
  add('b.holeDepth', footB, { x: opening + holes.b.depth, y: axisB }, 'below', 0, 'after');
  const left = outcome.woodLeft.b;
  const tip = { x: opening + holes.b.depth + holes.b.tip, y: axisB };
  const far = { x: opening + holes.b.limit, y: bottom };
  if (holes.b.depth > 0 && -left <= BEYOND) {
    if (left >= 0) {
      if (shownTo(deepest(holes.b), holes.b.limit).whole)
        add('b.woodLeft', tip, far, 'below', 1, 'after');
    } else {
      add(
        'b.woodLeft',
        far,
        tip,
        'below',
        1,
        'after',
        true,
        reading((length) => length(-left)),
      );
    }
  }
  return out;
}

function smallLengths(
  outcome: DryFit,
  pin: number,
  holes: { readonly a: DrilledHole; readonly b: DrilledHole },
  diameter: number,
  opening: number,
  lines: { topA: number; axisA: number; axisB: number },
): SmallLength[] {
  const { topA, axisA, axisB } = lines;
  return outcome.faults.flatMap(({ code, pins, member, size }): SmallLength[] => {
    if (!pins.includes(pin)) return [];
    // Boards that don't meet show no step.
    if (code === 'step' && opening > TOUCHING) return [];
    if (code === 'gap' || code === 'step') {
      const axis = code === 'gap' ? ('x' as const) : ('y' as const);
      const ends = code === 'gap' ? [0, opening] : [0, topA].toSorted((p, q) => p - q);
      const [from = 0, to = 0] = ends;
      const size = reading((length) => length(to - from));
      return [{ fault: code, axis, from, to, text: size, at: { x: opening / 2, y: topA / 2 } }];
    }
    if (member === undefined) return [];
    const hole = holes[member];
    const axis = member === 'a' ? axisA : axisB;
    if (code === 'breakthrough') {
      const past = outcome.pins[pin]!.woodLeft[member];
      const [far, tip] =
        member === 'a'
          ? [-hole.limit, -hole.limit + past]
          : [opening + hole.limit, opening + hole.limit - past];
      const [from = 0, to = 0] = [far, tip].toSorted((p, q) => p - q);
      return [
        {
          fault: code,
          axis: 'x',
          from,
          to,
          text: reading((length) => length(-past)),
          at: { x: (from + to) / 2, y: axis },
        },
      ];
    }
    if ((code === 'tight' || code === 'loose') && member === 'a') {
      const edges = [axis - hole.diameter / 2, axis - diameter / 2].toSorted((p, q) => p - q);
      const [from = 0, to = 0] = edges;
      const aSide = reading((length) => `${length(size / 2)} a side`);
      return [{ fault: code, axis: 'y', from, to, text: aSide, at: { x: 0, y: (from + to) / 2 } }];
    }
    return [];
  });
}

/** Room to the far side, negative beyond it; where a hole left the board sideways, how far it did. */
function insideWood(toFarSide: number, ...toSides: readonly number[]): number {
  const side = Math.min(...toSides);
  return side >= 0 ? toFarSide : Math.min(side, toFarSide);
}

/**
 * The joint as it came out, cut along pin `pin`, in mm.
 * @param seated how far it went together; null: drilled, and no pin in it yet
 * @param away how far B still stands from where it comes to rest
 */
export function trialSection(
  trial: Trial,
  plan: JointPlan,
  outcome: DryFit,
  pin: number,
  seated: Seated | null,
  away: number,
): TrialSection {
  const { pin: dowel, a, b } = trial.pins[pin]!;
  const rest = seated?.seats[pin]?.opening ?? 0;
  const opening = rest + away;
  const topA = seated === null ? 0 : outcome.shift.across + outcome.turn * a.along;
  const axisA = topA + a.across;
  const axisB = b.across;
  const boardA = bodyA(plan, a, topA, 0);
  const boardB = bodyB(plan, b, opening);
  const ys = boardB.outline.map((point) => point.y);
  const [topB, bottomB] = [Math.min(...ys), Math.max(...ys)];
  const boreA = boreOfHole(plan, 'a', a, { x: 0, y: axisA }, 180 - degrees(a.lean.across), (p) =>
    insideWood(p.x + a.limit, p.y - topA, topA + plan.spec.a.thickness - p.y),
  );
  const inFace = plan.kind === 'tee' ? -Infinity : topB;
  const found = outcome.pins[pin]!;
  const boreB = boreOfHole(
    plan,
    'b',
    b,
    { x: opening, y: axisB },
    degrees(b.lean.across),
    (p) =>
      insideWood(
        opening + b.limit - p.x,
        p.y - inFace,
        Math.max(bottomB, axisB + b.diameter) - p.y,
      ),
    seated !== null && Math.abs(found.rest.along) > b.diameter / 2,
  );
  const diameter = diameterOfPin(dowel);
  const seat = seated?.seats[pin];
  const pins: Piece[] =
    seat === undefined
      ? []
      : [
          dowelPiece(
            dowelOf(
              diameter,
              pose({ x: 0, y: axisA }, 180 - degrees(a.lean.across)),
              seat.inA - dowel.length,
              seat.inA,
            ),
          ),
        ];
  const bores = [boreA, boreB].filter((bore) => bore !== null);
  const axes: Piece[] = [a, b].every((hole) => hole.depth === 0)
    ? []
    : [
        {
          pen: 'center',
          closed: false,
          points: [
            pose({ x: 0, y: axisA }, 180 - degrees(a.lean.across))(deepest(a) + 2, 0),
            { x: 0, y: axisA },
          ],
        },
        {
          pen: 'center',
          closed: false,
          points: [
            { x: opening, y: axisB },
            pose({ x: opening, y: axisB }, degrees(b.lean.across))(deepest(b) + 2, 0),
          ],
        },
      ];
  const lines = { topA, topB: plan.kind === 'tee' ? topA : topB, axisA, axisB };
  // Where nothing of B lies beside A's face, a line shows where that face was meant to be.
  const off = Math.abs(topA) > 0.05 && (plan.kind === 'tee' || plan.kind === 'leg');
  const meant: Piece[] = off
    ? [
        {
          pen: 'phantom',
          closed: false,
          points: [
            { x: Math.min(...boardA.outline.map((p) => p.x)), y: 0 },
            { x: opening, y: 0 },
          ],
        },
      ]
    : [];
  const done = seated !== null && away === 0;
  const beyond = (hole: DrilledHole) => Math.min(BEYOND, Math.max(0, deepest(hole) - hole.limit));
  const right = Math.max(...boardB.outline.map((point) => point.x)) + beyond(b) - away + APART;
  return {
    bodies: [boardA, boardB],
    pieces: [...bores.flatMap(borePieces), ...pins, ...axes, ...meant],
    marks: [
      {
        kind: 'face',
        at: { x: Math.min(...boardA.outline.map((p) => p.x)) + 5, y: topA },
        turn: 0,
      },
      ...(plan.kind === 'corner'
        ? [
            {
              kind: 'edge' as const,
              at: { x: opening + plan.spec.b.thickness / 2, y: topB },
              turn: 0,
            },
          ]
        : plan.kind === 'tee'
          ? []
          : [
              {
                kind: 'face' as const,
                at: { x: Math.max(...boardB.outline.map((p) => p.x)) - 9, y: topB },
                turn: 0,
              },
            ]),
    ],
    cautions: [
      ...(boreA !== null && a.depth + a.tip > a.limit + 1e-6
        ? [{ x: -a.limit - beyond(a), y: axisA }]
        : []),
      ...(boreB !== null && b.depth + b.tip > b.limit + 1e-6
        ? [{ x: opening + b.limit + beyond(b), y: axisB }]
        : []),
    ],
    measures: done
      ? measuresOf(
          { a, b },
          seat!,
          opening,
          { ...lines, bottom: Math.max(topA + plan.spec.a.thickness, bottomB) },
          found,
        )
      : [],
    small: done ? smallLengths(outcome, pin, { a, b }, diameter, opening, lines) : [],
    reach: { left: Math.min(...boardA.outline.map((p) => p.x)) - beyond(a), right },
  };
}
