import { decidingThickness } from '../../core/joint/choosePin.ts';
import type { ConsideredPin, JointPlan, System } from '../../core/joint/types.ts';
import { formatReadable } from '../../core/length/formatLength.ts';
import { type Mm, mm } from '../../core/length/mm.ts';
import { type ShopTableRow, allowedDiameters, shopTable } from '../../core/stock/diameterRules.ts';

/** A diameter of the pins in stock, and what became of it. */
export interface Candidate {
  readonly diameter: Mm;
  /** The best that became of a pin of this diameter, whatever its length. */
  readonly verdict: ConsideredPin['verdict'];
  /** Which way it misses what the rule allows; null where it is allowed. */
  readonly misses: 'thin' | 'thick' | null;
  /** Wood on either side of it in the middle of the board, mm; negative where it is thicker than the board. */
  readonly beside: Mm;
}

/** Pins in stock drawn in the board that decides, mm. */
export interface Candidates {
  /** Of the board that decides which pin is taken. */
  readonly thickness: Mm;
  readonly system: System;
  /** What is seen where the hole goes in: the end of a board, or its edge. */
  readonly grain: 'end' | 'long';
  readonly candidates: readonly Candidate[];
  /** The rule that the choice went by; outside the shop table's rows that is the ratio. */
  readonly rule: 'shop-table' | 'ratio';
  /** The thinnest and the thickest pin that it allows, mm. */
  readonly least: Mm;
  readonly most: Mm;
  readonly table: readonly ShopTableRow[];
}

const BEST = ['chosen', 'fits', 'rejected'] as const;

/** The pins that a plan considered, by their diameters. */
export function candidatesOf(plan: JointPlan): Candidates {
  const { spec, system, considered } = plan;
  const thickness = mm(decidingThickness(spec));
  const { rule, least, most, allows } = allowedDiameters(thickness, spec.diameterRule, system);
  const diameters = [...new Set(considered.map(({ pin }) => pin.diameter))];
  return {
    thickness,
    system,
    grain: plan.kind === 'edge' || spec.drilled === 'edge' ? 'long' : 'end',
    candidates: diameters.map((diameter) => {
      const same = considered.filter(({ pin }) => pin.diameter === diameter);
      const allowed = same.some(({ pin }) => allows(pin));
      const middle = (least + most) / 2;
      return {
        diameter,
        verdict: BEST.find((verdict) => same.some((each) => each.verdict === verdict))!,
        misses: allowed ? null : diameter < middle ? 'thin' : 'thick',
        beside: mm((thickness - diameter) / 2),
      };
    }),
    rule,
    least,
    most,
    table: shopTable[system],
  };
}

/** A size by its name, on one line: in the unit that it is sold in, whoever reads it. */
export function sizeName(size: Mm, system: System): string {
  return formatReadable(size, system).replace(' ', '\u00a0');
}

/** What is said of a candidate in a word or two. */
export function verdictText({ verdict, misses }: Candidate): string {
  if (verdict === 'chosen') return 'taken';
  if (verdict === 'fits') return 'fits too';
  return misses === null ? 'no room' : `too ${misses}`;
}
