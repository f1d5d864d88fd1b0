import type { JointPlan } from '../../core/joint/types.ts';
import { TOLERANCE } from '../../core/length/mm.ts';

/** A side of a board along the joint line, with its holes, in mm. */
export interface Strip {
  readonly member: 'a' | 'b' | 'second';
  readonly letter: string;
  /** Along the joint line, 0 at A's reference end; `whole` is false where the board goes on. */
  readonly start: { readonly at: number; readonly whole: boolean };
  readonly end: { readonly at: number; readonly whole: boolean };
  /** Across, 0 at the reference face or end. */
  readonly near: { readonly at: number; readonly whole: boolean };
  readonly far: { readonly at: number; readonly whole: boolean };
  /** The edges of A where it stands on a face, across. */
  readonly footprint: readonly number[];
  /** From the reference face, end or outer face to the row. */
  readonly across: number;
  /** Whether across is measured from a face or from an end. */
  readonly from: 'face' | 'end';
  /** Its marks are not those of the strip before it. */
  readonly ownMarks: boolean;
  readonly holes: readonly StripHole[];
}

export interface StripHole {
  readonly along: number;
  readonly mark: number;
  /** Where it should have been, where its mark is off. */
  readonly meant?: number;
}

/** The joint along its line, in mm. */
export interface LayoutShapes {
  readonly length: number;
  readonly diameter: number;
  readonly strips: readonly Strip[];
  /** What measuring starts from. */
  readonly datum: 'the heel' | 'the reference end';
  readonly spaces: number;
  readonly pitch: number;
}

const whole = (at: number) => ({ at, whole: true });
const cut = (at: number) => ({ at, whole: false });

function holesAt(along: readonly number[], marks: readonly number[], beyond = 0): Strip['holes'] {
  return along.map((at, i) => ({ along: at, mark: (marks[i] ?? at) + beyond }));
}

function stripA(plan: JointPlan): Strip {
  return {
    member: 'a',
    letter: 'A',
    start: whole(0),
    end: whole(plan.spec.jointLength),
    near: whole(0),
    far: whole(plan.spec.a.thickness),
    footprint: [],
    across: plan.holes[0]?.acrossA ?? plan.spec.a.thickness / 2,
    from: 'face',
    ownMarks: false,
    holes: holesAt(plan.positions, plan.marks),
  };
}

function stripB(plan: JointPlan): Strip {
  const { spec } = plan;
  const ta = spec.a.thickness;
  const across = plan.holes[0]?.acrossB ?? ta / 2;
  const base: Strip = {
    ...stripA(plan),
    member: 'b',
    letter: 'B',
    far: whole(spec.b.thickness),
    across,
  };
  if (plan.kind === 'corner' || plan.kind === 'tee') {
    const from = plan.kind === 'corner' ? spec.overhang : spec.at;
    const pad = ta * 0.5;
    return {
      ...base,
      near: from <= ta ? whole(0) : cut(from - pad),
      far: cut(from + ta + pad),
      footprint: from > 0 ? [from, from + ta] : [ta],
      from: 'end',
    };
  }
  if (plan.kind === 'frame') {
    const pad = spec.jointLength * 0.12;
    return {
      ...base,
      start: spec.at <= spec.jointLength ? whole(-spec.at) : cut(-pad),
      ownMarks: spec.at > 0,
      end: cut(spec.jointLength + pad),
      holes: holesAt(plan.positions, plan.marks, spec.at),
    };
  }
  if (plan.kind === 'leg') return { ...base, end: cut(spec.jointLength * 1.12) };
  return base;
}

/** B with its marks as they were made, from its own reference end. */
function markedB(strip: Strip, marks: readonly number[]): Strip {
  const holes = strip.holes.map(({ along, mark }, i): StripHole => {
    const own = marks[i] ?? mark;
    const off = own - mark;
    return Math.abs(off) < TOLERANCE
      ? { along, mark }
      : { along: along + off, mark: own, meant: along };
  });
  return holes.some(({ meant }) => meant !== undefined)
    ? { ...strip, ownMarks: true, holes }
    : strip;
}

/**
 * The faces of the joint beside each other, as they lie when both boards are hooked on the same
 * end, in mm. A leg has its second face too, with the second apron's row.
 * @param marksOnB from B's reference end, where they are not those of the plan
 */
export function layoutShapes(plan: JointPlan, marksOnB: readonly number[] = []): LayoutShapes {
  const { positions } = plan;
  const b = markedB(stripB(plan), marksOnB);
  const second: Strip[] =
    plan.secondRow.length === 0
      ? []
      : [
          {
            ...b,
            member: 'second',
            letter: 'B2',
            ownMarks: true,
            holes: holesAt(plan.secondRow, plan.secondRow),
          },
        ];
  return {
    length: plan.spec.jointLength,
    diameter: plan.spec.bit.diameter,
    strips: [stripA(plan), b, ...second],
    datum: plan.kind === 'miter' ? 'the heel' : 'the reference end',
    spaces: Math.max(0, positions.length - 1),
    pitch: positions.length < 2 ? 0 : positions[1]! - positions[0]!,
  };
}
