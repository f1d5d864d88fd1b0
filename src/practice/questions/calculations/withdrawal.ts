import type { PulledPin } from '../../../core/strength/compare.ts';
import { withdrawal } from '../../../core/strength/withdrawal.ts';
import { named } from '../numbers.ts';
import { type ValuesOf, calculation, length, setting, wood, yesOrNo } from './calculation.ts';

const fields = {
  diameter: setting(length),
  engagement: setting(length),
  wood: setting(wood),
  pinWood: setting(wood),
  grain: setting((entry) => entry.oneOf(['side', 'end'])),
  thinGlue: setting(yesOrNo),
  clearance: setting(length),
  grooved: setting(yesOrNo),
};

/** The pin of a `withdrawal` that was read; undefined where the shear of one of its woods was not. */
export function pinOf(values: unknown): PulledPin | undefined {
  const { wood: member, pinWood, ...rest } = values as ValuesOf<typeof fields>;
  if (member.shear === null || pinWood.shear === null) return undefined;
  return { ...rest, memberShear: member.shear, dowelShear: pinWood.shear };
}

/** The pull that draws a glued pin out: for comparing one choice with another, never a rating. */
export const withdrawalOf = calculation(
  fields,
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
