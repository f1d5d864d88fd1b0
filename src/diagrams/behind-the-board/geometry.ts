import type { Drilling, PointEnd } from '../../core/joint/pointBehind.ts';
import { pointBehind } from '../../core/joint/pointBehind.ts';

/** A board being drilled, and the bit in it. */
export interface Drilled extends Drilling {
  /** Diameter of the bit, mm. */
  readonly diameter: number;
}

/**
 * The bit at full depth, in mm: `down` from the board's upper face, up is negative; `across` from the
 * bit's axis.
 */
export interface BehindShapes {
  readonly radius: number;
  /** The bushing, from its upper end to its lower. */
  readonly bushing: { readonly from: number; readonly to: number };
  /** The face of the collar, which rests on the bushing. */
  readonly collar: number;
  /** Where the collar was when it was set: its mark on the bit, now lower by the slip. */
  readonly mark: number;
  /** The corner of the full diameter, and the point. */
  readonly corner: number;
  readonly point: number;
  readonly thickness: number;
  /** What lies under the board, each from where to where. */
  readonly waste: { readonly from: number; readonly to: number } | null;
  readonly bench: { readonly from: number; readonly to: number };
  /** Whether the hole is over the bench: a hand fits only where it is not. */
  readonly overBench: boolean;
  readonly end: PointEnd;
}

/** How much of the bench top is shown, mm. */
const BENCH = 16;

/** The board, what is behind it and the bit, to scale. */
export function behindShapes(drilled: Drilled): BehindShapes {
  const { bushing, standoff, stop, slip, tip, thickness, behind, waste } = drilled;
  const top = -(bushing + standoff);
  const corner = top + stop + slip;
  const under = behind === 'waste' ? thickness + waste : thickness;
  return {
    radius: drilled.diameter / 2,
    bushing: { from: top, to: -standoff },
    collar: top,
    mark: top + slip,
    corner,
    point: corner + tip,
    thickness,
    waste: behind === 'waste' ? { from: thickness, to: under } : null,
    bench: { from: under, to: under + BENCH },
    overBench: behind !== 'hand',
    end: pointBehind(drilled),
  };
}
