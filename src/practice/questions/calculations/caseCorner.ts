import { plainText } from '../../../core/working/plainText.ts';
import { caseCornerMoment } from '../../../core/strength/caseCornerMoment.ts';
import { named } from '../numbers.ts';
import { calculation, length, setting } from './calculation.ts';

/** The moment that breaks a one-dowel case corner in particleboard: for comparing, never a rating. */
export const caseCornerOf = calculation(
  { diameter: setting(length), faceDepth: setting(length) },
  ({ diameter, faceDepth }) => {
    const found = caseCornerMoment({ diameter, faceDepth });
    if (!found.ok) return { ...named([]), errors: [plainText(found.reason, 'in')] };
    return {
      ...named([
        ['diameter', 'D', diameter],
        ['faceDepth', 'E', faceDepth],
        ['opening', 'M_opening', found.opening, 'moment'],
        ['closing', 'M_closing', found.closing, 'moment'],
      ]),
      errors: [],
    };
  },
);
