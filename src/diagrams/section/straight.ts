import type { JointPlan } from '../../core/joint/types.ts';
import type { Point } from '../drafting/point.ts';
import { reading } from '../drafting/reading.ts';
import { boreOf, dowelOf, pose } from './bore.ts';
import { memberMeasures, pinText } from './measures.ts';
import { ROW_NAMES } from './rowNames.ts';
import type { Body, Measure, SectionShapes, Step } from './shapes.ts';

/** How far the boards are moved from home, along the pin, in mm. */
interface Moves {
  readonly pin: number;
  readonly b: number;
}

/** One side of a board on the drawing: where it is cut, and whether that is its real end. */
interface Side {
  readonly at: number;
  readonly whole: boolean;
}

/** Free air on either side of the pin when the boards are apart, in mm. */
const CLEAR = 8;

/** How far a board is shown: to its own end if that is near, else to a break line. */
function shown(needed: number, own: number): Side {
  return own <= needed * 1.2 ? { at: own, whole: true } : { at: needed, whole: false };
}

function movesOf(plan: JointPlan, apart: number): Moves {
  const length = plan.pin?.length ?? 0;
  return { pin: apart * (plan.a.engagement + CLEAR), b: apart * (length + 2 * CLEAR) };
}

/** Room that is shown past the point of the bit and past the joint, in mm. */
function margin(thickness: number): number {
  return Math.min(24, Math.max(7, thickness * 0.42));
}

function boardA(plan: JointPlan): { body: Body; far: Side } {
  const { spec, a } = plan;
  const reach = a.holeDepth + spec.bit.tip;
  const far = shown(reach + margin(spec.a.thickness) * 1.3, Math.max(a.limit, 1));
  const t = spec.a.thickness;
  const endGrain = plan.kind === 'edge' || spec.drilled === 'edge';
  return {
    far,
    body: {
      member: 'a',
      outline: [
        { x: 0, y: 0 },
        { x: 0, y: t },
        { x: -far.at, y: t },
        { x: -far.at, y: 0 },
      ],
      breaks: far.whole ? [] : [2],
      grain: endGrain ? 'end' : 'long',
      angle: endGrain ? 45 : 0,
      letter: { text: 'A', at: { x: -(reach + far.at) / 2, y: t / 2 } },
    },
  };
}

/** B where its face receives the pin: it runs across, from its reference end downward. */
function boardAcross(plan: JointPlan): { body: Body; top: Side; bottom: number } {
  const { spec } = plan;
  const ta = spec.a.thickness;
  const pad = Math.max(margin(ta), 9);
  const above = plan.kind === 'corner' ? spec.overhang : spec.at;
  const top = above <= Math.max(ta, 12) ? { at: above, whole: true } : { at: pad, whole: false };
  const below = shown(ta + pad, Math.max(spec.b.length - above, ta));
  const tb = spec.b.thickness;
  return {
    top,
    bottom: below.at,
    body: {
      member: 'b',
      outline: [
        { x: 0, y: -top.at },
        { x: tb, y: -top.at },
        { x: tb, y: below.at },
        { x: 0, y: below.at },
      ],
      breaks: [...(top.whole ? [] : [0]), ...(below.whole ? [] : [2])],
      grain: 'long',
      angle: 90,
      letter: { text: 'B', at: { x: tb / 2, y: (ta + below.at) / 2 } },
    },
  };
}

/** B where its edge receives the pin: it lies in line with A. */
function boardInLine(plan: JointPlan): { body: Body; far: Side } {
  const { spec, b } = plan;
  const reach = b.holeDepth + spec.bit.tip;
  const far = shown(reach + margin(spec.b.thickness) * 1.3, Math.max(b.limit, 1));
  const top = -spec.reveal;
  return {
    far,
    body: {
      member: 'b',
      outline: [
        { x: 0, y: top },
        { x: far.at, y: top },
        { x: far.at, y: top + spec.b.thickness },
        { x: 0, y: top + spec.b.thickness },
      ],
      breaks: far.whole ? [] : [1],
      grain: 'end',
      angle: plan.kind === 'edge' ? -45 : 45,
      letter: { text: 'B', at: { x: (reach + far.at) / 2, y: top + spec.b.thickness / 2 } },
    },
  };
}

function moved(body: Body, dx: number): Body {
  const by = (p: Point) => ({ x: p.x + dx, y: p.y });
  return {
    ...body,
    outline: body.outline.map(by),
    letter: { ...body.letter, at: by(body.letter.at) },
  };
}

function stepOf(plan: JointPlan, top: Side | null): Step[] {
  const { spec } = plan;
  const step = (id: string, value: number): Step[] =>
    Math.abs(value) < 1e-6
      ? []
      : [
          {
            id,
            value,
            text: reading((length) => length(Math.abs(value))),
            x: 0,
            from: Math.min(-value, 0),
            to: Math.max(-value, 0),
          },
        ];
  // Measured from an end that a break line cuts off, it can't be shown here.
  if (top?.whole === false) return [];
  if (plan.kind === 'corner') return step('overhang', spec.overhang);
  if (plan.kind === 'tee') return step('at', spec.at);
  return step('reveal', spec.reveal);
}

/**
 * Edge, corner, tee and frame joints, cut along the middle of a pin, in mm: x runs along the pin
 * with the joint at 0 and B to the right; y down from A's reference face. `apart` 0 is the
 * joint pushed home, 1 the boards pulled off the pin.
 */
export function straightSection(plan: JointPlan, apart: number): SectionShapes {
  const { spec, a, b, pin } = plan;
  const across = plan.kind === 'corner' || plan.kind === 'tee';
  const moves = movesOf(plan, apart);
  const axisY = plan.holes[0]?.acrossA ?? spec.a.thickness / 2;
  const left = boardA(plan);
  const standing = across ? boardAcross(plan) : null;
  const lying = across ? null : boardInLine(plan);
  const bodyB = (standing ?? lying)!.body;
  const bottomB = Math.max(...bodyB.outline.map((p) => p.y));
  const topB = Math.min(...bodyB.outline.map((p) => p.y));
  const limitB = across ? spec.b.thickness : b.limit;

  const poseA = pose({ x: 0, y: axisY }, 180);
  const poseB = pose({ x: moves.b, y: axisY }, 0);
  const boreA = boreOf(plan, 'a', poseA, (p) =>
    Math.min(p.x + a.limit, p.y, spec.a.thickness - p.y),
  );
  const boreB = boreOf(plan, 'b', poseB, (p) =>
    Math.min(moves.b + limitB - p.x, p.y - topB, bottomB - p.y),
  );
  const bores = [boreA, boreB].filter((bore) => bore !== null);
  const dowels =
    pin === null || pin.diameter <= 0 || pin.length <= 0
      ? []
      : [
          dowelOf(
            pin.diameter,
            pose({ x: moves.pin, y: axisY }, 0),
            -a.engagement,
            pin.length - a.engagement,
          ),
        ];

  const radius = (pin?.diameter ?? 0) / 2;
  const topOfJoint = Math.min(0, apart > 0 ? 0 : topB);
  const measures: Measure[] = [
    ...memberMeasures(plan, {
      axisY,
      jointTop: topOfJoint,
      bottomA: spec.a.thickness,
      bottomB,
      shiftB: moves.b,
      home: apart === 0,
      farA: left.far,
      limitB,
      showLeftB: standing !== null || lying!.far.whole,
      farB: lying?.far ?? null,
    }),
  ];
  if (pin !== null && dowels.length > 0) {
    measures.push({
      id: 'pin',
      value: pin.length,
      text: pinText(pin),
      from: { x: moves.pin - a.engagement, y: axisY - radius },
      to: { x: moves.pin + pin.length - a.engagement, y: axisY - radius },
      side: 'above',
      tier: 1,
      outside: 'over',
    });
  }
  measures.push({
    id: 'a.thickness',
    value: spec.a.thickness,
    text: reading((length) => length(spec.a.thickness)),
    from: { x: -left.far.at, y: 0 },
    to: { x: -left.far.at, y: spec.a.thickness },
    side: 'left',
    tier: 0,
    outside: 'before',
  });
  if (lying !== null) {
    const x = moves.b + lying.far.at;
    measures.push({
      id: 'b.thickness',
      value: spec.b.thickness,
      text: reading((length) => length(spec.b.thickness)),
      from: { x, y: topB },
      to: { x, y: bottomB },
      side: 'right',
      tier: 0,
      outside: 'after',
    });
  } else {
    measures.push({
      id: 'b.thickness',
      value: spec.b.thickness,
      text: reading((length) => length(spec.b.thickness)),
      from: { x: moves.b, y: bottomB },
      to: { x: moves.b + spec.b.thickness, y: bottomB },
      side: 'below',
      tier: 2,
      outside: 'after',
    });
  }

  const endA = -(a.holeDepth + spec.bit.tip);
  const endB = moves.b + b.holeDepth + spec.bit.tip;
  const markX = -(a.engagement + left.far.at) / 2;
  return {
    bodies: [left.body, moved(bodyB, moves.b)],
    bores,
    dowels,
    axes:
      bores.length === 0
        ? []
        : [
            [
              { x: endA, y: axisY },
              { x: endB, y: axisY },
            ],
          ],
    measures,
    steps: apart > 0 ? [] : stepOf(plan, standing?.top ?? null),
    slanted: [],
    notes: [],
    rowNames: {
      'above 0': ROW_NAMES.held,
      'above 1': ROW_NAMES.pin,
      'below 0': ROW_NAMES.hole,
      'below 1': ROW_NAMES.left,
      'below 2': ROW_NAMES.boardB,
    },
    marks: [
      { kind: 'face', at: { x: markX, y: 0 }, turn: 0 },
      ...(standing?.top.whole === true
        ? [
            {
              kind: 'edge' as const,
              at: { x: moves.b + spec.b.thickness / 2, y: -standing.top.at },
              turn: 0,
            },
          ]
        : []),
      ...(lying !== null
        ? [
            {
              kind: 'face' as const,
              at: { x: moves.b + (b.engagement + lying.far.at) / 2, y: topB },
              turn: 0,
            },
          ]
        : []),
    ],
    cautions: [
      ...(boreB !== null && b.woodLeft < 0 ? [{ x: endB, y: axisY }] : []),
      ...(boreA !== null && a.woodLeft < 0 ? [{ x: endA, y: axisY }] : []),
    ],
  };
}
