import type { JointPlan } from '../joint/types.ts';
import { type Mm, mm } from '../length/mm.ts';
import { requireAtLeast, requireCount, requireNumber, requirePositive } from './require.ts';
import type { DrilledHole, Member, Trial, TrialPin } from './trial.ts';

/** What decides the depth of a board's holes. */
export type Stop =
  /** A collar on the bit: from the collar to the full-diameter corner, mm. */
  | { readonly collar: Mm }
  /** No collar: the depths that came of it, hole by hole, mm. */
  | { readonly byEye: readonly Mm[] };

/** How one board was set up and drilled. Lengths in mm. */
export interface MemberSetup {
  readonly bit: { readonly diameter: Mm; readonly tip: Mm };
  readonly stop: Stop;
  /**
   * The face that the guide is held against. 'other': the board was turned over. A board drilled
   * in its face (B of a corner or tee joint) is then drilled in the wrong face, which shows
   * along the joint and not across it.
   */
  readonly face: 'reference' | 'other';
  /** The end that the rule is hooked on. */
  readonly end: 'reference' | 'other';
  /** Where the holes were marked, from the end hooked on. */
  readonly marks: readonly Mm[];
  /** From the face (corner, tee: B's end) to the bit, as set on the guide. */
  readonly across: Mm;
  /** How far the guide was rocked, degrees: along the joint and across it. */
  readonly lean: { readonly along: number; readonly across: number };
}

/** A joint as a student set it up: everything that decides what is drilled. Lengths in mm. */
export interface BenchSetup {
  /** What was to be made. */
  readonly plan: JointPlan;
  /** The pin in the hand. */
  readonly pin: TrialPin;
  /** The guide really in use; `offset` is how far its bit lies off where it is set. */
  readonly guide: {
    readonly bushing: Mm;
    readonly standoff: Mm;
    readonly offset: Mm;
    readonly centering: boolean;
  };
  readonly a: MemberSetup;
  readonly b: MemberSetup;
  /** The board that is drilled first. */
  readonly first: Member;
  /** The collar slips by that much (up the bit is positive: deeper) after so many holes in all, until it is set anew. */
  readonly slip: { readonly after: number; readonly by: Mm } | null;
  /** Whether the boards are free to turn on their pins. */
  readonly mayTurn: boolean;
}

/**
 * The setup that drills exactly what the plan says. Throws a TypeError for a plan that has
 * nothing to drill.
 */
export function soundSetup(plan: JointPlan): BenchSetup {
  const first = plan.holes[0];
  if (plan.pin === null || first === undefined) {
    throw new TypeError('plan must have a pin and holes');
  }
  const { guide, bit } = plan.spec;
  const square = { along: 0, across: 0 };
  const shared = {
    bit: { diameter: bit.diameter, tip: bit.tip },
    face: 'reference',
    end: 'reference',
    lean: square,
  } as const;
  return {
    plan,
    pin: plan.pin,
    guide,
    a: {
      ...shared,
      stop: { collar: plan.a.stop },
      marks: plan.marks,
      across: mm(first.acrossA - guide.offset),
    },
    b: {
      ...shared,
      stop: { collar: plan.b.stop },
      marks: plan.marks.map((mark) => mm(mark + first.alongB - first.along)),
      across: mm(first.acrossB - guide.offset),
    },
    first: 'a',
    slip: null,
    mayTurn: true,
  };
}

/** Whether a board is drilled in its face: B of a corner or tee joint. */
export function drilledInFace({ kind }: JointPlan, member: Member): boolean {
  return member === 'b' && (kind === 'corner' || kind === 'tee');
}

/** The collar that drills a board's hole as planned with the guide really in use. */
export function rightCollar({ guide, plan }: BenchSetup, member: Member): Mm {
  return mm(guide.bushing + guide.standoff + plan[member].holeDepth);
}

/** Whether the two boards share one setting of the collar, so that it is not touched between them. */
function collarStays({ a, b }: BenchSetup): boolean {
  return 'collar' in a.stop && 'collar' in b.stop && a.stop.collar === b.stop.collar;
}

/** The holes of a board, counted from 0, that are drilled after the collar has slipped. */
export function slippedHoles(setup: BenchSetup, member: Member): readonly number[] {
  const { slip, first, plan } = setup;
  if (slip === null || !('collar' in setup[member].stop)) return [];
  const count = plan.holes.length;
  const before = member === first ? 0 : count;
  if (slip.after < count && before > 0 && !collarStays(setup)) return [];
  return plan.holes.map((_, j) => j).filter((j) => before + j >= slip.after);
}

/** Length of a board along the joint, mm: what a rule hooked on its other end measures from. */
export function reachAlong({ kind, spec }: JointPlan, member: Member): Mm {
  if (kind === 'miter') return spec.jointLength;
  if (member === 'a') return spec.drilled === 'end' ? spec.a.width : spec.a.length;
  return (kind === 'corner' || kind === 'tee') && spec.drilled === 'end'
    ? spec.b.width
    : spec.b.length;
}

/** Drills one board: its holes in the frame of the assembled joint. */
function drillMember(setup: BenchSetup, member: Member): readonly DrilledHole[] {
  const { plan, guide } = setup;
  const { bit, stop, face, end, marks, across, lean } = setup[member];
  const first = plan.holes[0];
  if (first === undefined) return [];
  const inFace = drilledInFace(plan, member);
  const thickness = plan.spec[member].thickness;
  const turned = face === 'other' && !inFace;
  // Turned over, a board that is drilled in its face runs the other way along the joint.
  const mirrored = (end === 'other') !== (face === 'other' && inFace);

  const set = guide.centering && !inFace ? thickness / 2 : across;
  const fromHeld = set + guide.offset;
  const fromReference = turned ? thickness - fromHeld : fromHeld;
  const shift =
    member === 'a'
      ? { along: 0, across: 0 }
      : { along: first.alongB - first.along, across: first.acrossB - first.acrossA };
  const slipped = new Set(slippedHoles(setup, member));
  const tilt = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

  return marks.map((mark, j) => {
    const along = (mirrored ? reachAlong(plan, member) - mark : mark) - shift.along;
    const reach =
      'collar' in stop
        ? stop.collar +
          (slipped.has(j) ? (setup.slip?.by ?? 0) : 0) -
          guide.bushing -
          guide.standoff
        : (stop.byEye[j] ?? 0);
    return {
      along: mm(along),
      across: mm(fromReference - shift.across),
      diameter: bit.diameter,
      depth: mm(Math.max(0, reach)),
      lean: { along: tilt(lean.along), across: turned ? -tilt(lean.across) : tilt(lean.across) },
      limit:
        plan.kind === 'miter'
          ? mm(plan.spec.jointLength - along - Math.max(0, bit.diameter / 2 - bit.tip))
          : plan[member].limit,
      tip: bit.tip,
    };
  });
}

/** Pins go in along the row: the first hole of one board meets the first of the other. */
function alongTheRow(holes: readonly DrilledHole[]): readonly DrilledHole[] {
  return holes.toSorted((one, other) => one.along - other.along);
}

/**
 * Drills both boards as they were set up. Depth from a stop: what the collar lets through beyond
 * bushing and standoff, at least 0. Throws a TypeError or a RangeError that names what is out of
 * range.
 */
export function drill(setup: BenchSetup): Trial {
  checkSetup(setup);
  const a = alongTheRow(drillMember(setup, 'a'));
  const b = alongTheRow(drillMember(setup, 'b'));
  return {
    kind: setup.plan.kind,
    length: setup.plan.spec.jointLength,
    mayTurn: setup.mayTurn,
    pins: a.map((hole, j) => ({ pin: setup.pin, a: hole, b: b[j] as DrilledHole })),
    setup,
  };
}

function checkSetup(setup: BenchSetup): void {
  const { plan, pin, guide, slip } = setup;
  requireCount('plan.holes.length', plan.holes.length, 1);
  requirePositive('pin.diameter', pin.diameter);
  if (pin.measured !== undefined) requirePositive('pin.measured', pin.measured);
  requirePositive('pin.length', pin.length);
  requireAtLeast('guide.bushing', guide.bushing, 0);
  requireAtLeast('guide.standoff', guide.standoff, 0);
  requireNumber('guide.offset', guide.offset);
  for (const member of ['a', 'b'] as const) {
    const { bit, stop, marks, across, lean } = setup[member];
    requirePositive(`${member}.bit.diameter`, bit.diameter);
    requireAtLeast(`${member}.bit.tip`, bit.tip, 0);
    requireNumber(`${member}.across`, across);
    requireNumber(`${member}.lean.along`, lean.along);
    requireNumber(`${member}.lean.across`, lean.across);
    marks.forEach((mark, j) => requireNumber(`${member}.marks[${j}]`, mark));
    if (marks.length !== plan.holes.length) {
      throw new RangeError(`${member}.marks must have one entry for each hole of the plan`);
    }
    if ('collar' in stop) {
      requireAtLeast(`${member}.stop.collar`, stop.collar, 0);
    } else {
      stop.byEye.forEach((depth, j) => requireAtLeast(`${member}.stop.byEye[${j}]`, depth, 0));
      if (stop.byEye.length !== marks.length) {
        throw new RangeError(`${member}.stop.byEye must have one entry for each hole`);
      }
    }
  }
  if (slip !== null) {
    requireCount('slip.after', slip.after, 0);
    requireNumber('slip.by', slip.by);
  }
}
