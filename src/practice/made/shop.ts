import type { BitPoint, Guide, Pin, System } from '../../core/joint/types.ts';
import { type Mm, inches, mm } from '../../core/length/mm.ts';
import { stockPins } from '../../core/stock/pins.ts';
import type { Draws } from './draws.ts';

/** Sizes that a shop really has, in the steps that it counts in. */
interface Sizes {
  /** Boards as they come from the yard or the planer. */
  readonly thicknesses: readonly Mm[];
  readonly widths: readonly Mm[];
  readonly lengths: readonly Mm[];
  /** Rails, stiles, mitered members and aprons. */
  readonly narrow: readonly Mm[];
  /** Sides of a square leg. */
  readonly legs: readonly Mm[];
  readonly allowances: readonly Mm[];
  readonly leaves: readonly Mm[];
  readonly spurs: readonly Mm[];
  /** Bushings and gaps come in these steps, from the least to the most. */
  readonly bushing: readonly [step: Mm, least: number, most: number];
  readonly standoff: readonly [step: Mm, least: number, most: number];
}

const inch = (...sizes: readonly number[]) => sizes.map(inches);
const metric = (...sizes: readonly number[]) => sizes.map(mm);

export const shop: Readonly<Record<System, Sizes>> = {
  in: {
    thicknesses: inch(5 / 8, 3 / 4, 13 / 16, 7 / 8, 1, 1.0625),
    widths: inch(5.5, 7.25, 8, 9.25, 10, 11.25),
    lengths: inch(18, 20, 24, 27, 30, 36),
    narrow: inch(2, 2.25, 2.5, 2.75, 3, 3.5),
    legs: inch(1.5, 1.625, 1.75, 2, 2.25, 2.5),
    allowances: inch(1 / 16, 1 / 8, 3 / 16),
    leaves: inch(1 / 32, 1 / 16, 1 / 8),
    spurs: inch(3 / 32, 1 / 8, 5 / 32),
    bushing: [inches(1 / 16), 8, 24],
    standoff: [inches(1 / 16), 1, 5],
  },
  mm: {
    thicknesses: metric(15, 16, 18, 20, 22, 25),
    widths: metric(140, 180, 200, 240, 260, 285),
    lengths: metric(450, 500, 600, 700, 750, 900),
    narrow: metric(50, 55, 60, 65, 70, 80),
    legs: metric(38, 40, 44, 48, 50, 60),
    allowances: metric(2, 3, 4),
    leaves: metric(1, 2, 3),
    spurs: metric(2.5, 3, 4),
    bushing: [mm(0.5), 25, 76],
    standoff: [mm(0.5), 3, 14],
  },
};

function counted(draws: Draws, [step, least, most]: Sizes['bushing']): Mm {
  return mm(Math.round(step * draws.whole(least, most) * 1e6) / 1e6);
}

/** A drilling guide, as somebody has measured it; `gap` where its bushing stands off the wood. */
export function guideAtHand(draws: Draws, system: System, gap: 'gap' | 'no gap'): Guide {
  const { bushing, standoff } = shop[system];
  return {
    bushing: counted(draws, bushing),
    standoff: gap === 'gap' ? counted(draws, standoff) : mm(0),
  };
}

/** A bit with a point on it. */
export function pointedBit(draws: Draws, system: System): BitPoint {
  return draws.pick([
    { kind: 'twist', angle: 118 },
    { kind: 'twist', angle: 118 },
    { kind: 'brad', spur: draws.pick(shop[system].spurs) },
  ]);
}

/** One of the pins in stock. */
export function pinInStock(draws: Draws, system: System): Pin {
  return draws.pick(stockPins(system));
}

/** A whole number of shop steps: sixteenths of an inch or millimeters. */
export function steps(system: System, inSixteenths: number, inMillimeters: number): Mm {
  return system === 'in' ? inches(inSixteenths / 16) : mm(inMillimeters);
}
