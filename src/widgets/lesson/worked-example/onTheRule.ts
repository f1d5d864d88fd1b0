import { formatReadable } from '../../../core/length/formatLength.ts';
import { type LengthUnit } from '../../../core/length/parseLength.ts';
import { mm } from '../../../core/length/mm.ts';
import type { WorkingStep } from '../../../core/working/types.ts';

/** What to look for on a rule, where a step's result is not a mark of it: `≈31/64 in on the rule`. */
export function onTheRule(step: WorkingStep, unit: LengthUnit): string | null {
  if (step.unit !== 'length') return null;
  const read = formatReadable(mm(step.result), unit);
  if (unit === 'mm' || !read.startsWith('≈') || !read.includes('/')) return null;
  return `${read} in on the rule`;
}
