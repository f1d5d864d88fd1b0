import type { JointPlan } from '../../core/joint/types.ts';
import type { Point } from '../drafting/point.ts';
import { reading, words } from '../drafting/reading.ts';
import { boreOf, dowelOf, pose } from './bore.ts';
import { pinText, woodLeftText } from './measures.ts';
import { ROW_NAMES } from './rowNames.ts';
import type { Body, Measure, SectionShapes, SlantedMeasure } from './shapes.ts';

const CLEAR = 8;
const HALF_ROOT = Math.SQRT1_2;

/** A member of the frame from the miter down to a square break; `side` −1 is A, 1 is B. */
function member(plan: JointPlan, side: -1 | 1, dx: number): Body {
  const { spec, a } = plan;
  const line = spec.jointLength;
  const first = plan.positions[0] ?? 0;
  const reach = (a.holeDepth + spec.bit.tip + spec.bit.diameter / 2 - first) * HALF_ROOT;
  // The letter stands clear of the holes, halfway across the member.
  const past = a.holeDepth + spec.bit.tip + 6;
  const letter = { x: dx + side * past, y: past - line / 2 };
  const inner = Math.max(
    reach + Math.max(10, spec.a.width * 0.2),
    (past + letter.y) * HALF_ROOT + 9,
  );
  const outer = inner + line * HALF_ROOT;
  const heel = { x: dx, y: 0 };
  const toe = { x: dx, y: -line };
  const along = (from: Point, distance: number): Point => ({
    x: from.x + side * distance * HALF_ROOT,
    y: from.y + distance * HALF_ROOT,
  });
  return {
    member: side === -1 ? 'a' : 'b',
    outline: [heel, toe, along(toe, outer), along(heel, inner)],
    breaks: [2],
    grain: 'long',
    angle: side * 45,
    letter: { text: side === -1 ? 'A' : 'B', at: letter },
  };
}

/**
 * A miter joint from above, cut along its pins, in mm: the joint stands upright at x = 0, the
 * heel (inside corner) at y = 0 and the toe (outside corner) over it; A falls away to the left,
 * B to the right. Every pin lies square to the joint.
 */
export function miterSection(plan: JointPlan, apart: number): SectionShapes {
  const { spec, a, b, pin, positions } = plan;
  const line = spec.jointLength;
  const length = pin?.length ?? 0;
  const moves = { pin: apart * (a.engagement + CLEAR), b: apart * (length + 2 * CLEAR) };
  const insideA = (p: Point) => Math.min(-(p.x + p.y), p.x + p.y + line);
  const insideB = (p: Point) => insideA({ x: -(p.x - moves.b), y: p.y });
  const bodies = [member(plan, -1, 0), member(plan, 1, moves.b)];
  const bores = positions.flatMap((along) => [
    boreOf(plan, 'a', pose({ x: 0, y: -along }, 180), insideA),
    boreOf(plan, 'b', pose({ x: moves.b, y: -along }, 0), insideB),
  ]);
  const hasPins = pin !== null && pin.diameter > 0 && pin.length > 0;
  const dowels = hasPins
    ? positions.map((along) =>
        dowelOf(
          pin.diameter,
          pose({ x: moves.pin, y: -along }, 0),
          -a.engagement,
          pin.length - a.engagement,
        ),
      )
    : [];
  const last = positions.at(-1);
  const first = positions[0];
  const measures: Measure[] = [];
  const slanted: SlantedMeasure[] = [];
  const row = (measure: Omit<Measure, 'text'>) => {
    if (measure.value > 0) {
      measures.push({ text: reading((show) => show(measure.value)), ...measure });
    }
  };
  if (hasPins && last !== undefined && first !== undefined) {
    const radius = pin.diameter / 2;
    const bit = spec.bit.diameter / 2;
    const jointA = { x: 0, y: -line };
    const jointB = { x: moves.b, y: -line };
    if (apart === 0) {
      const end = { y: -last - radius, x: a.engagement };
      row({
        id: 'a.engagement',
        value: a.engagement,
        from: { ...end, x: -end.x },
        to: jointA,
        side: 'above',
        tier: 0,
        outside: 'before',
      });
      row({
        id: 'b.engagement',
        value: b.engagement,
        from: jointB,
        to: end,
        side: 'above',
        tier: 0,
        outside: 'after',
      });
    }
    row({
      id: 'a.holeDepth',
      value: a.holeDepth,
      from: { x: -a.holeDepth, y: -last - bit },
      to: jointA,
      side: 'above',
      tier: 1,
      outside: 'before',
    });
    row({
      id: 'b.holeDepth',
      value: b.holeDepth,
      from: jointB,
      to: { x: moves.b + b.holeDepth, y: -last - bit },
      side: 'above',
      tier: 1,
      outside: 'after',
    });
    measures.push({
      id: 'pin',
      value: pin.length,
      text: pinText(pin),
      from: { x: moves.pin - a.engagement, y: -first + radius },
      to: { x: moves.pin + pin.length - a.engagement, y: -first + radius },
      side: 'below',
      // A row farther down than need be, so that the heel's name has room.
      tier: 1,
      outside: 'over',
    });
    for (const [id, side, plans] of [
      ['a.woodLeft', -1, a],
      ['b.woodLeft', 1, b],
    ] as const) {
      if (plans.holeDepth <= 0) continue;
      const dx = side === 1 ? moves.b : 0;
      // The corner of the full diameter or the point, whichever comes nearest the outer edge.
      const nearest =
        spec.bit.tip > bit
          ? { x: dx + side * (plans.holeDepth + spec.bit.tip), y: -last }
          : { x: dx + side * plans.holeDepth, y: -last - bit };
      const edge = {
        x: nearest.x + side * plans.woodLeft * HALF_ROOT,
        y: nearest.y - plans.woodLeft * HALF_ROOT,
      };
      const text = woodLeftText(plans.woodLeft);
      slanted.push({
        id,
        value: plans.woodLeft,
        text: plans.woodLeft < 0 ? text : { in: `wood ${text.in}`, mm: `wood ${text.mm}` },
        from: plans.woodLeft < 0 ? edge : nearest,
        to: plans.woodLeft < 0 ? nearest : edge,
        offset: 0,
        ...(plans.woodLeft < 0 && { caution: true }),
      });
    }
  }
  const farA = bodies[0]!.outline;
  slanted.push({
    id: 'a.width',
    value: spec.a.width,
    text: reading((show) => show(spec.a.width)),
    from: farA[3]!,
    to: farA[2]!,
    offset: 18,
  });
  return {
    bodies,
    bores: bores.filter((bore) => bore !== null),
    dowels,
    axes: hasPins
      ? positions.map((along) => [
          { x: -(a.holeDepth + spec.bit.tip), y: -along },
          { x: moves.b + b.holeDepth + spec.bit.tip, y: -along },
        ])
      : [],
    measures,
    steps: [],
    slanted,
    notes: [
      {
        text: words('heel'),
        at: { x: 0, y: 0 },
        dx: apart > 0 ? 6 : 0,
        dy: 27,
        anchor: 'middle',
        kind: 'word',
      },
      { text: words('toe'), at: { x: 0, y: -line }, dx: -8, dy: -8, anchor: 'end', kind: 'word' },
    ],
    rowNames: {
      'above 0': ROW_NAMES.held,
      'above 1': ROW_NAMES.hole,
      'below 1': ROW_NAMES.pin,
    },
    marks: [],
    cautions: [],
  };
}
