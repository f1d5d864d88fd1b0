import { mm, type Mm } from '../length/mm.ts';
import { requirePositive } from '../trial/require.ts';
import { coefficientsHold, dimensionalChange } from './dimensionalChange.ts';
import type { Species } from './species.ts';

/** The wood of a hole or a pin, as far as it moves with moisture. */
export type MovingWood = Pick<Species, 'name' | 'radial' | 'tangential'>;

/** A hole as drilled, at the moisture that its board then had. */
export interface SeasonedHole {
  /** mm, more than 0. */
  readonly diameter: Mm;
  readonly wood: MovingWood;
  /** The surface that it is drilled into. */
  readonly surface: 'face' | 'edge' | 'end';
  /** Flat-sawn: the rings run along the face; quarter-sawn: they stand on it. */
  readonly sawn: 'flat' | 'quarter';
  /** Percent, when it was drilled. */
  readonly moisture: number;
}

/** A pin as measured, at the moisture that it then had. */
export interface SeasonedPin {
  /** mm, more than 0. */
  readonly diameter: Mm;
  readonly wood: MovingWood;
  /** Percent, when it was measured. */
  readonly moisture: number;
}

/** One width of a hole or a pin in the new season. */
export interface SeasonedWidth {
  readonly direction: 'along the grain' | 'across the rings' | 'along the rings';
  readonly width: Mm;
}

export type HoleAndPin =
  | {
      readonly ok: true;
      /** The hole's two widths: it is no longer round. */
      readonly hole: readonly [SeasonedWidth, SeasonedWidth];
      /** The pin's two widths, across and along its rings. */
      readonly pin: readonly [SeasonedWidth, SeasonedWidth];
      /** Hole less pin, mm: nobody knows how the pin is turned, so both ends of it. Negative is tight. */
      readonly clearance: { readonly least: Mm; readonly greatest: Mm };
      /** True where every moisture lies in the range for which the coefficients are said to hold. */
      readonly coefficientsHold: boolean;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * A hole and its pin after the air has brought both to another moisture (percent).
 *
 * Wood hardly moves along its grain, so a hole in a face or an edge keeps its width that way
 * and moves only across: along the rings in a flat-sawn face or a quarter-sawn edge, across
 * them in the others. A hole in an end moves both ways, and so does a pin.
 *
 * Refuses, with a reason, a wood whose movement across the rings was not found where it is
 * needed. Throws a TypeError or a RangeError for a diameter that is not more than 0 and for a
 * moisture that is negative or not a number.
 *
 * Source: Wood Handbook, FPL-GTR-190, Eq. 13-2 (read), applied to each width.
 */
export function holeAndPin(hole: SeasonedHole, pin: SeasonedPin, toMoisture: number): HoleAndPin {
  requirePositive('hole.diameter', hole.diameter);
  requirePositive('pin.diameter', pin.diameter);
  const tangentialOnly = hole.surface !== 'end' && alongRings(hole);
  if (pin.wood.radial === null) return unknownRadial(pin.wood.name);
  if (hole.wood.radial === null && !tangentialOnly) return unknownRadial(hole.wood.name);

  const across = (part: SeasonedHole | SeasonedPin): SeasonedWidth => ({
    direction: 'across the rings',
    width: seasonedWidth(part, part.wood.radial ?? 0, toMoisture),
  });
  const along = (part: SeasonedHole | SeasonedPin): SeasonedWidth => ({
    direction: 'along the rings',
    width: seasonedWidth(part, part.wood.tangential, toMoisture),
  });
  const holeWidths: [SeasonedWidth, SeasonedWidth] =
    hole.surface === 'end'
      ? [across(hole), along(hole)]
      : [
          { direction: 'along the grain', width: hole.diameter },
          alongRings(hole) ? along(hole) : across(hole),
        ];
  const pinWidths: [SeasonedWidth, SeasonedWidth] = [across(pin), along(pin)];
  const [h0, h1] = holeWidths.map(({ width }) => width) as [Mm, Mm];
  const [p0, p1] = pinWidths.map(({ width }) => width) as [Mm, Mm];
  return {
    ok: true,
    hole: holeWidths,
    pin: pinWidths,
    clearance: {
      least: mm(Math.min(h0, h1) - Math.max(p0, p1)),
      greatest: mm(Math.max(h0, h1) - Math.min(p0, p1)),
    },
    coefficientsHold: coefficientsHold(hole.moisture, pin.moisture, toMoisture),
  };
}

/** Whether the width across the grain, in a face or an edge, runs along the rings. */
function alongRings({ surface, sawn }: SeasonedHole): boolean {
  return (surface === 'face') === (sawn === 'flat');
}

function seasonedWidth(
  { diameter, moisture }: SeasonedHole | SeasonedPin,
  coefficient: number,
  toMoisture: number,
): Mm {
  const change = dimensionalChange({
    size: diameter,
    coefficient,
    fromMoisture: moisture,
    toMoisture,
  });
  return mm(diameter + change);
}

function unknownRadial(name: string): HoleAndPin {
  return {
    ok: false,
    reason: `How much ${name} moves across its rings was not found. Choose another wood.`,
  };
}
