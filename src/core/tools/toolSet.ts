import type { Bit, BitPoint, Guide, Pin } from '../joint/types.ts';
import { type Mm, mm } from '../length/mm.ts';
import { type Readings, summarize } from './readings.ts';

/** Tools as someone measured them; what was not measured is left out. Lengths in mm. */
export interface ToolSet {
  /** What its owner calls it. */
  readonly name: string;
  readonly guide: Guide;
  readonly bit: {
    /** Diameter of a hole that it makes: what the joint gets, whatever the bit is called. */
    readonly hole?: Mm;
    readonly point?: BitPoint;
  };
  readonly pins: {
    /** What the pins are sold as. */
    readonly nominal?: Mm;
    /** One caliper reading for each pin. */
    readonly readings: readonly Mm[];
  };
}

/** Longest name of a set of tools; most sets; most readings of one set. */
export const toolLimits = { name: 40, sets: 20, readings: 200 } as const;

/** A set of tools that nobody has measured yet. */
export function unmeasured(name: string): ToolSet {
  return { name, guide: {}, bit: {}, pins: { readings: [] } };
}

/** True where nothing of a set was measured. */
export function isUnmeasured({ guide, bit, pins }: ToolSet): boolean {
  return (
    Object.keys(guide).length === 0 &&
    Object.keys(bit).length === 0 &&
    pins.nominal === undefined &&
    pins.readings.length === 0
  );
}

/** Pins whose names lie no farther apart may be taken for each other, mm: 10 mm for 3/8 in. */
const LOOKS_ALIKE = 0.6;

/**
 * What the readings of a set say about a joint's pins; null where there are none, or where they
 * are of pins of another size.
 */
export function readingsOf(
  { pins }: ToolSet,
  { diameter }: Pick<Pin, 'diameter'>,
): Readings | null {
  const summary = summarize(pins.readings);
  if (summary === null) return null;
  return Math.abs((pins.nominal ?? summary.mean) - diameter) <= LOOKS_ALIKE ? summary : null;
}

/** Tools as measured, in the planner's and the trial run's own terms; what was not measured is left out. */
export interface MeasuredTools {
  readonly guide: Guide;
  readonly bit: Bit;
  /** Diameter of the pins: their name, and the mean of the readings. */
  readonly pin: { readonly diameter?: Pin['diameter']; readonly measured?: Mm };
  /** Sample standard deviation of the pins' diameters, mm; left out under two readings. */
  readonly pinSpread?: Mm;
}

/**
 * A set of tools in the terms of `JointSpec` and of the trial run. The bit's diameter is the hole
 * that it makes.
 */
export function measuredTools({ guide, bit, pins }: ToolSet): MeasuredTools {
  const summary = summarize(pins.readings);
  const { hole, point } = bit;
  return {
    guide,
    bit: { ...(hole !== undefined && { diameter: hole }), ...(point && { point }) },
    pin: {
      ...(pins.nominal !== undefined && { diameter: pins.nominal }),
      ...(summary && { measured: mm(summary.mean) }),
    },
    ...(summary && summary.spread !== null && { pinSpread: summary.spread }),
  };
}
