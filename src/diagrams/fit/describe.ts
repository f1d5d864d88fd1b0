import type { Fit } from '../../core/fit/fit.ts';
import { formatWorking } from '../../core/length/formatLength.ts';
import type { Mm } from '../../core/length/mm.ts';
import type { Unit } from '../drafting/reading.ts';
import { bothUnits } from './bothUnits.ts';

/** A diameter as a caliper gives it. @example diameterText(mm(9.425), 'in') // '0.371 in' */
export function diameterText(diameter: Mm, unit: Unit): string {
  return `${formatWorking(diameter, unit)} ${unit}`;
}

/** The drawing in sentences: its values, and what more or less clearance would do. */
export function describeFit(hole: Mm, pin: Mm, fit: Fit, unit: Unit): string {
  const clearance = bothUnits(fit.clearance, unit);
  const line =
    fit.verdict === 'ease the pin'
      ? `The pin is the larger, by ${bothUnits(-fit.clearance, unit)}.`
      : `Clearance ${clearance}, a glue line of ${bothUnits(fit.glueLine, unit)} on each side.`;
  const say = (diameter: Mm) =>
    `${formatWorking(diameter, unit)} ${unit === 'in' ? 'inch' : 'millimeters'}`;
  return `Hole ${say(hole)}, pin ${say(pin)}. ${line} Verdict: ${fit.verdict}. A thinner pin moves the mark to the right, from tight through starved and good to thick.`;
}
