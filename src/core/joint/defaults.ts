import { type Mm, inches, mm } from '../length/mm.ts';
import { difference, fixedLength, greatest } from '../working/expression.ts';
import { reckon, taken } from '../working/reckon.ts';
import type { WorkingStep } from '../working/types.ts';
import type { Guide, JointSpec, System } from './types.ts';

/** Lengths that serve where the user sets none, per system. In mm. */
export const defaults: Record<
  System,
  {
    /** Free depth past the pin's end in each hole; common practice. */
    readonly allowance: Mm;
    /** Least wood beyond the bit's point; from memory. */
    readonly leaveAtPoint: Mm;
    /** Least wood beyond the bit's full diameter; from memory. */
    readonly leaveAtHole: Mm;
    readonly bushing: Mm;
    /** Most that the first pin stands from the end of the joint line. */
    readonly endMargin: Mm;
    readonly maxPitch: Mm;
    /** For edge, corner and tee; frame, miter and leg take 2 D. */
    readonly minPitch: Mm;
    /** Finest division of the rule that marks are laid out with. */
    readonly graduation: Mm;
    readonly setback: Mm;
    /** Least wood beside a hole without a caution: 3 mm in both systems. */
    readonly wall: Mm;
  }
> = {
  in: {
    allowance: inches(1 / 8),
    leaveAtPoint: inches(1 / 32),
    leaveAtHole: inches(1 / 8),
    bushing: inches(1),
    endMargin: inches(3 / 2),
    maxPitch: inches(6),
    minPitch: inches(1),
    graduation: inches(1 / 32),
    setback: inches(1 / 8),
    wall: mm(3),
  },
  mm: {
    allowance: mm(3),
    leaveAtPoint: mm(1),
    leaveAtHole: mm(3),
    bushing: mm(25),
    endMargin: mm(38),
    maxPitch: mm(150),
    minPitch: mm(25),
    graduation: mm(0.5),
    setback: mm(3),
    wall: mm(3),
  },
};

/** The guide with what was not set filled in. */
export function resolveGuide(spec: JointSpec): Required<Guide> {
  const { bushing, standoff, offset, centering } = spec.guide ?? {};
  return {
    bushing: bushing ?? defaults[spec.system].bushing,
    standoff: standoff ?? mm(0),
    offset: offset ?? mm(0),
    centering: centering ?? false,
  };
}

/** Free depth past the pin's end in each hole, and by which rule. */
export function reckonAllowance(spec: JointSpec): WorkingStep {
  const usual = defaults[spec.system].allowance;
  const step = { id: 'allowance', label: "Free depth past the pin's end", symbol: 'c' } as const;
  const value = spec.allowance ?? usual;
  if (value === usual) {
    return reckon({
      ...step,
      formula: fixedLength(value),
      source: 'shop-practice',
      rule: 'the same in each hole',
    });
  }
  if (value === usual / 2) {
    return reckon({
      ...step,
      formula: fixedLength(value),
      source: 'school-shop-texts',
      rule: 'half in each hole, so that both holes together are deeper than the pin by the whole',
    });
  }
  return reckon({ ...step, formula: fixedLength(value), source: 'setting' });
}

/** Wood to leave beyond the bit's point, and by which rule. */
export function reckonLeave(spec: JointSpec, tip: WorkingStep): WorkingStep {
  const step = { id: 'leave', label: "Wood to leave beyond the bit's point", symbol: 'leave' };
  if (spec.leave !== undefined) {
    return reckon({ ...step, formula: fixedLength(spec.leave), source: 'setting' });
  }
  const { leaveAtPoint, leaveAtHole } = defaults[spec.system];
  return reckon({
    ...step,
    formula: greatest(fixedLength(leaveAtPoint), difference(fixedLength(leaveAtHole), taken(tip))),
    source: 'from-memory',
    rule:
      leaveAtHole - tip.result > leaveAtPoint
        ? 'the full hole stops short of the far face'
        : 'the point stops short of the far face',
  });
}
