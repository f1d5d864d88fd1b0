import { atMost, lessThan, mm, type Mm } from '../length/mm.ts';
import { requirePositive } from '../trial/require.ts';
import type { Source } from '../working/sources.ts';

/** What a clearance means for glue: ease the pin, a starved line, a good one, a thick one. */
export type FitVerdict = 'ease the pin' | 'starved' | 'good' | 'thick';

/** The bands of clearance, mm, that `fit` judges by; closed at `good`. */
export const fitBands = { starvedFrom: mm(0), goodFrom: mm(0.05), goodTo: mm(0.2) } as const;

/** A range that was published, for drawing beside a clearance. */
export interface PublishedRange extends Source {
  /** Which of the two the range is about. */
  readonly of: 'clearance' | 'glue line';
  readonly from: Mm;
  readonly to: Mm;
}

/** What others say about clearance and glue line. */
export const publishedRanges: readonly PublishedRange[] = [
  {
    title:
      "Hoadley, 'The Dowel Joint', Fine Woodworking 21, 1980: several thousandths of an inch, read here as 2 to 8",
    standing: 'read',
    of: 'clearance',
    from: mm(0.0508),
    to: mm(0.2032),
  },
  {
    title: 'EN 205:2016: a thin glue line, nominally 0.1 mm',
    standing: 'read',
    of: 'glue line',
    from: mm(0.1),
    to: mm(0.1),
  },
];

/** How much smaller than its name a pin is taken to be until it is measured, mm (from memory). */
export const unmeasuredPinUndersize = mm(0.1);

/** A pin by its name, and its diameter by caliper where someone measured it. */
export interface PinDiameter {
  readonly diameter: Mm;
  readonly measured?: Mm;
}

/** The diameter to reckon with: as measured, else 0.1 mm under the nominal (from memory). */
export function diameterOfPin({ diameter, measured }: PinDiameter): Mm {
  return measured ?? mm(diameter - unmeasuredPinUndersize);
}

export interface Fit {
  /** Hole less pin, across both sides, mm; negative where the pin is the larger. */
  readonly clearance: Mm;
  /** Half the clearance: the glue on each side of a pin in the middle, mm. */
  readonly glueLine: Mm;
  readonly verdict: FitVerdict;
}

/**
 * How a pin fits its hole. Both are diameters as they are, in mm, more than 0 (`diameterOfPin`
 * for a pin that nobody measured); throws a TypeError or a RangeError for anything else.
 *
 * Source: the bands follow Hoadley and EN 205 (`publishedRanges`); their edges are ours.
 * @example fit({ hole: mm(8), pin: mm(7.9) }) // clearance 0.1, glueLine 0.05, 'good'
 */
export function fit({ hole, pin }: { readonly hole: Mm; readonly pin: Mm }): Fit {
  requirePositive('hole', hole);
  requirePositive('pin', pin);
  const clearance = mm(hole - pin);
  return { clearance, glueLine: mm(clearance / 2), verdict: verdictOf(clearance) };
}

function verdictOf(clearance: Mm): FitVerdict {
  if (lessThan(clearance, fitBands.starvedFrom)) return 'ease the pin';
  if (lessThan(clearance, fitBands.goodFrom)) return 'starved';
  return atMost(clearance, fitBands.goodTo) ? 'good' : 'thick';
}
