import type { Expression } from './expression.ts';
import type { SourceId } from './sources.ts';

/**
 * Unit of a result that is shown. What it is kept in: lengths, `caliper` ones (diameters as measured),
 * `fine` ones (clearances, glue lines) and those that a rule shows, in its own `inches` or
 * `millimeters` whoever reads it, mm, `area` mm², `volume` mm³, `force` N, `moment` N·m, `pressure` MPa, `temperature` °C,
 * `percent` 0 to 100, `probability` 0 to 1. `formatQuantity` writes each for its reader.
 */
export type WorkingUnit =
  | 'length'
  | 'caliper'
  | 'fine'
  | 'inches'
  | 'millimeters'
  | 'area'
  | 'volume'
  | 'force'
  | 'moment'
  | 'pressure'
  | 'temperature'
  | 'degrees'
  | 'percent'
  | 'probability'
  | 'count'
  | 'ratio';

/** One number and how it came about, made together so that they can't disagree. */
export interface WorkingStep {
  /** Names the number: 'b.engagement', 'tip', 'layout.pitch'. */
  readonly id: string;
  /** In plain words: 'Engagement in B'. */
  readonly label: string;
  /** As it stands in formulas: 'e_B' (an underscore starts a subscript). */
  readonly symbol: string;
  /** The formula; `toMathML` shows it in symbols or with this joint's numbers put in. */
  readonly formula: Expression;
  /** The formula's value: mm for a length. */
  readonly result: number;
  readonly unit: WorkingUnit;
  /** Where the formula or rule comes from; its standing is with it in `sources`. */
  readonly source: SourceId;
  /** Which branch of a rule served, in words, where there was a choice. */
  readonly rule?: string;
}
