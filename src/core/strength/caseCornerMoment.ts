import { atMost, inches, type Mm } from '../length/mm.ts';
import { requirePositive } from '../trial/require.ts';
import { say, type Sentence } from '../working/sentence.ts';
import { type Source, sources } from '../working/sources.ts';

const newtonMetersPerPoundInch = 0.1129848290276167;

/** Where the formulas come from. The moment's unit, pound-inches, is from memory. */
export const caseCornerSource: Source = sources['case-corner'];

/** The sizes that were tested, mm. */
export const caseCornerRange = {
  diameter: { from: inches(1 / 4), to: inches(3 / 8) },
  faceDepth: { from: inches(1 / 4), to: inches(5 / 8) },
} as const;

export type CaseCornerMoment =
  | {
      readonly ok: true;
      /** Newton-meters that force the corner open. */
      readonly opening: number;
      /** Newton-meters that force it closed. */
      readonly closing: number;
    }
  | { readonly ok: false; readonly reason: Sentence };

/**
 * Bending moment that breaks a one-dowel case corner in particleboard, by the dowel's diameter
 * and its depth in the face member (mm): opening 614.6 D^0.591 E^1.180, closing
 * 460.4 D^0.452 E^1.140, inches and pound-inches. For comparing, never a rating. Refuses, with a
 * reason, sizes that were not tested (`caseCornerRange`); throws a TypeError or a RangeError for
 * what is not more than 0.
 *
 * Source: `caseCornerSource` (read in the abstract).
 */
export function caseCornerMoment({
  diameter,
  faceDepth,
}: {
  readonly diameter: Mm;
  readonly faceDepth: Mm;
}): CaseCornerMoment {
  requirePositive('diameter', diameter);
  requirePositive('faceDepth', faceDepth);
  if (!within(diameter, caseCornerRange.diameter)) {
    const { from, to } = caseCornerRange.diameter;
    return { ok: false, reason: say`Only dowels from ${from} to ${to} thick were tested.` };
  }
  if (!within(faceDepth, caseCornerRange.faceDepth)) {
    const { from, to } = caseCornerRange.faceDepth;
    return { ok: false, reason: say`Only depths in the face from ${from} to ${to} were tested.` };
  }
  const D = diameter / 25.4;
  const E = faceDepth / 25.4;
  return {
    ok: true,
    opening: newtonMetersPerPoundInch * 614.6 * D ** 0.591 * E ** 1.18,
    closing: newtonMetersPerPoundInch * 460.4 * D ** 0.452 * E ** 1.14,
  };
}

function within(value: Mm, { from, to }: { readonly from: Mm; readonly to: Mm }): boolean {
  return atMost(from, value) && atMost(value, to);
}
