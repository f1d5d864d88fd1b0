import type { JointPlan } from '../../core/joint/types.ts';
import { TOLERANCE } from '../../core/length/mm.ts';

/** A place on the tool, in mm: along the bit from the wood's face, across from its axis. */
export interface ToolPoint {
  readonly along: number;
  readonly across: number;
}

/** A bit in its guide, pushed in as far as its collar lets it, in mm along the bit; the wood's face is at 0. */
export interface StopShapes {
  readonly member: 'a' | 'b';
  /** Whether the bit runs along the fibers, into an end, or across them. */
  readonly grain: 'along' | 'across';
  readonly radius: number;
  readonly bushing: { readonly from: number; readonly to: number };
  /** The face of the collar that comes to rest on the bushing. */
  readonly collar: number;
  /** Where the corner of the full diameter comes to rest; negative where it stays in the guide. */
  readonly reach: number;
  readonly holeDepth: number;
  /** How deep the hole was meant to be. */
  readonly meant: number;
  /** How far the wood goes: to its far face, or on past the drawing. */
  readonly wood: { readonly depth: number; readonly whole: boolean };
  /** The bit from the collar to its point along one side and back along the other. */
  readonly bit: readonly ToolPoint[];
  readonly tip: number;
  readonly stop: number;
  readonly stopFromPoint: number;
  readonly standoff: number;
  readonly through: boolean;
}

function grainOf(plan: JointPlan, member: 'a' | 'b'): StopShapes['grain'] {
  const intoEnd = member === 'a' && plan.kind !== 'edge' && plan.spec.drilled === 'end';
  return intoEnd ? 'along' : 'across';
}

/**
 * The stop on the bit for one board, in mm of the real tool.
 * @param stop from the collar to the corner of the full diameter; as planned where it is left out
 */
export function stopShapes(plan: JointPlan, member: 'a' | 'b', stop?: number): StopShapes {
  const { holeDepth: meant, limit } = plan[member];
  const { bushing, standoff } = plan.spec.guide;
  const { diameter, tip, point } = plan.spec.bit;
  const radius = diameter / 2;
  const collar = -(bushing + standoff);
  const root = point.kind === 'twist' ? radius : radius * (point.kind === 'brad' ? 0.3 : 0.24);
  const reach = stop === undefined ? meant : stop - bushing - standoff;
  const end = reach + tip;
  const shown = Math.max(end, meant + tip) + Math.max(6, radius * 1.2);
  return {
    member,
    grain: grainOf(plan, member),
    radius,
    bushing: { from: collar, to: -standoff },
    collar,
    reach,
    holeDepth: Math.max(0, reach),
    meant,
    wood: limit <= shown * 1.15 ? { depth: limit, whole: true } : { depth: shown, whole: false },
    bit: [
      { along: collar, across: -radius },
      { along: reach, across: -radius },
      ...(tip > 0
        ? [
            { along: reach, across: -root },
            { along: end, across: 0 },
            { along: reach, across: root },
          ]
        : []),
      { along: reach, across: radius },
      { along: collar, across: radius },
    ],
    tip,
    stop: reach - collar,
    stopFromPoint: end - collar,
    standoff,
    through: end > limit + TOLERANCE,
  };
}
