import type { Fit, FitVerdict } from '../../../core/fit/fit.ts';
import type { LengthUnit } from '../../../core/length/parseLength.ts';
import { bothUnits } from '../../../diagrams/fit/bothUnits.ts';

const CONSEQUENCES: Record<FitVerdict, string> = {
  'ease the pin':
    'Ease the pin until it slides in by hand. Driven in as it is, it scrapes the glue off the wall, or splits the board.',
  starved: 'Starved: the pin wipes the wall dry on its way in, and little glue is left to hold it.',
  good: 'Good: room for a thin line of glue all around.',
  thick:
    'Thick: the glue has to bridge a gap. A thicker line of white or yellow glue is a weaker one.',
};

/** A fit in words: how much, and what comes of it. */
export function fitSentence({ clearance, glueLine, verdict }: Fit, unit: LengthUnit): string {
  const size =
    verdict === 'ease the pin'
      ? `The pin is ${bothUnits(-clearance, unit)} larger than its hole.`
      : `The pin has ${bothUnits(clearance, unit)} of clearance, half of it on each side: a glue line of ${bothUnits(glueLine, unit)}.`;
  return `${size} ${CONSEQUENCES[verdict]}`;
}
