import type { BitPoint, JointPlan } from '../../core/joint/types.ts';
import type { Point } from '../drafting/point.ts';
import type { Bore, Dowel } from './shapes.ts';

/** A place and direction to build a hole or a pin along: `along` from the mouth, `across` from the axis. */
export type Pose = (along: number, across: number) => Point;

/** A pose at `mouth` that runs towards `degrees` (0 to the right, 90 down). */
export function pose(mouth: Point, degrees: number): Pose {
  const cos = Math.round(Math.cos((degrees * Math.PI) / 180) * 1e12) / 1e12;
  const sin = Math.round(Math.sin((degrees * Math.PI) / 180) * 1e12) / 1e12;
  return (along, across) => ({
    x: mouth.x + along * cos - across * sin,
    y: mouth.y + along * sin + across * cos,
  });
}

/** Half the width of a point where it leaves the full diameter, as a part of the radius. */
function rootOf(point: BitPoint): number {
  return point.kind === 'twist' ? 1 : point.kind === 'brad' ? 0.3 : 0.24;
}

/** Outline of the hole that a bit leaves, as [along, across] from the mouth, in mm. */
function profile(bit: JointPlan['spec']['bit'], depth: number): [number, number][] {
  const radius = bit.diameter / 2;
  const root = radius * rootOf(bit.point);
  const point: [number, number][] =
    bit.tip <= 0
      ? []
      : [
          [depth, -root],
          [depth + bit.tip, 0],
          [depth, root],
        ];
  return [[0, -radius], [depth, -radius], ...point, [depth, radius], [0, radius]];
}

/** Halvings after which two points of a joint are the same point. */
const HALVINGS = 60;

/**
 * Where `inside` changes its sign between two points. It has a kink where another face comes
 * nearer, so the place is closed in on and not read off a straight line.
 */
function crossing(from: Point, to: Point, inside: (point: Point) => number): Point {
  const starts = inside(from) >= 0;
  let [near, far] = [from, to];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = { x: (near.x + far.x) / 2, y: (near.y + far.y) / 2 };
    if (inside(middle) >= 0 === starts) near = middle;
    else far = middle;
  }
  return far;
}

/** Splits an open line where `inside` changes its sign. */
function divide(
  line: readonly Point[],
  inside: (point: Point) => number,
): { kept: Point[][]; lost: Point[][] } {
  const kept: Point[][] = [];
  const lost: Point[][] = [];
  let run: Point[] = [];
  line.forEach((point, i) => {
    const before = line[i - 1];
    if (before === undefined) {
      run = [point];
      return;
    }
    const [was, is] = [inside(before), inside(point)];
    if (was >= 0 !== is >= 0) {
      const edge = crossing(before, point, inside);
      (was >= 0 ? kept : lost).push([...run, edge]);
      run = [edge];
    }
    run.push(point);
  });
  const last = line.at(-1);
  if (last !== undefined) (inside(last) >= 0 ? kept : lost).push(run);
  return { kept, lost };
}

/**
 * The hole as drilled from its mouth, in mm. `inside` is positive in the wood of the member and
 * negative beyond the face that the bit must not come out of. Null without a depth.
 */
export function boreOf(
  plan: JointPlan,
  member: Bore['member'],
  from: Pose,
  inside: (point: Point) => number,
  hidden = false,
): Bore | null {
  const depth = (member === 'b' ? plan.b : plan.a).holeDepth;
  const { bit } = plan.spec;
  if (depth <= 0 || bit.diameter <= 0) return null;
  const outline = profile(bit, depth).map(([along, across]) => from(along, across));
  const { kept, lost } = divide(outline, inside);
  const radius = bit.diameter / 2;
  return {
    member,
    outline,
    inWood: kept,
    through: lost,
    shoulder:
      bit.tip > 0 && inside(from(depth, 0)) >= 0
        ? [from(depth, -radius), from(depth, radius)]
        : null,
    mouth: [from(0, -radius), from(0, radius)],
    hidden,
  };
}

/** The pin from `start` to `end` along a pose, both ends eased, in mm. */
export function dowelOf(
  diameter: number,
  from: Pose,
  start: number,
  end: number,
  hidden = false,
): Dowel {
  const radius = diameter / 2;
  const ease = Math.min(diameter / 8, (end - start) / 6);
  const outline = [
    from(start, -(radius - ease)),
    from(start + ease, -radius),
    from(end - ease, -radius),
    from(end, -(radius - ease)),
    from(end, radius - ease),
    from(end - ease, radius),
    from(start + ease, radius),
    from(start, radius - ease),
  ];
  return { outline, hidden };
}
