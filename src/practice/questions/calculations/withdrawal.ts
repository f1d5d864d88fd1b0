import { withdrawal } from '../../../core/strength/withdrawal.ts';
import { named } from '../numbers.ts';
import { calculation, length, setting, wood, yesOrNo } from './calculation.ts';

/** The pull that draws a glued pin out: for comparing one choice with another, never a rating. */
export const withdrawalOf = calculation(
  {
    diameter: setting(length),
    engagement: setting(length),
    wood: setting(wood),
    pinWood: setting(wood),
    grain: setting((entry) => entry.oneOf(['side', 'end'])),
    thinGlue: setting(yesOrNo),
    clearance: setting(length),
    grooved: setting(yesOrNo),
  },
  ({ diameter, engagement, wood: member, pinWood, ...rest }) => {
    if (member.shear === null || pinWood.shear === null) {
      const unknown = member.shear === null ? member : pinWood;
      return { ...named([]), errors: [`The shear strength of ${unknown.name} was not read.`] };
    }
    const found = withdrawal({
      diameter,
      engagement,
      memberShear: member.shear,
      dowelShear: pinWood.shear,
      ...rest,
    });
    return {
      ...named([
        ['diameter', 'D', diameter],
        ['engagement', 'L', engagement],
        ['clearance', 'δ', rest.clearance, 'fine'],
        ['memberShear', 'S_member', member.shear, 'pressure'],
        ['pinShear', 'S_pin', pinWood.shear, 'pressure'],
        ['force', 'F', found.force, 'force'],
      ]),
      errors: found.inStatedRange ? [] : ['The two woods lie outside the range of the formula.'],
    };
  },
);
