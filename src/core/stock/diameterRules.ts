import { type Mm, TOLERANCE, atMost, inches, mm } from '../length/mm.ts';
import type { Pin, System } from '../joint/types.ts';

/** A row of the shop table: boards from `from` to `to`, both included, take `diameter`. */
export interface ShopTableRow {
  readonly from: Mm;
  readonly to: Mm;
  readonly diameter: Mm;
}

/** Dowel for the board by the shop table: inches common practice, metric from memory. */
export const shopTable: Record<System, readonly ShopTableRow[]> = {
  in: [
    { from: inches(1 / 2), to: inches(5 / 8), diameter: inches(1 / 4) },
    { from: inches(5 / 8), to: inches(3 / 4), diameter: inches(5 / 16) },
    { from: inches(3 / 4), to: inches(3 / 2), diameter: inches(3 / 8) },
  ],
  mm: [
    { from: mm(12), to: mm(15), diameter: mm(6) },
    { from: mm(15), to: mm(20), diameter: mm(8) },
    { from: mm(20), to: mm(40), diameter: mm(10) },
  ],
};

/** A pin of the other system serves where its diameter is this near the table's, in mm. */
const NEAR_ENOUGH = 0.6;

/** Diameters a rule allows for a board, and why. */
export interface AllowedDiameters {
  readonly rule: 'shop-table' | 'ratio';
  /** True where the table has no band for the board, so that the ratio serves instead. */
  readonly outsideTable: boolean;
  /** Smallest diameter allowed, mm. */
  readonly least: Mm;
  /** Largest diameter allowed, mm. */
  readonly most: Mm;
  /** Whether a pin is allowed. */
  readonly allows: (pin: Pin) => boolean;
}

/**
 * Which dowel diameters a rule allows for a board.
 *
 * @param thickness of the board drilled in its edge or end (the thinner where both are), mm
 * @param rule the shop table (bands closed at both ends), or 1/3 to 1/2 of the thickness
 *   (second-hand: summary of IS 3845:1966). Outside the table's bands the ratio serves.
 */
export function allowedDiameters(
  thickness: Mm,
  rule: 'shop-table' | 'ratio',
  system: System,
): AllowedDiameters {
  const bands = shopTable[system].filter(
    (row) => atMost(row.from, thickness) && atMost(thickness, row.to),
  );
  if (rule === 'shop-table' && bands.length > 0) {
    const diameters = bands.map((row) => row.diameter);
    return {
      rule: 'shop-table',
      outsideTable: false,
      least: mm(Math.min(...diameters)),
      most: mm(Math.max(...diameters)),
      allows: (pin) =>
        diameters.some((each) => Math.abs(pin.diameter - each) <= NEAR_ENOUGH + TOLERANCE),
    };
  }
  const least = mm(thickness / 3);
  const most = mm(thickness / 2);
  return {
    rule: 'ratio',
    outsideTable: rule === 'shop-table',
    least,
    most,
    allows: (pin) => atMost(least, pin.diameter) && atMost(pin.diameter, most),
  };
}
