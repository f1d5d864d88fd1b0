import { pointBehind } from '../../../core/joint/pointBehind.ts';
import { planJoint } from '../../../core/joint/planJoint.ts';
import { mm } from '../../../core/length/mm.ts';
import { named } from '../numbers.ts';
import { calculation, joint, length, optional, setting } from './calculation.ts';

/** Where the point ends in board B of a joint, drilled with a stop that was set and may have slipped. */
export const behindOf = calculation(
  {
    joint: setting(joint),
    /** As it was set; if left out, as worked out for B. */
    stop: optional(length),
    slip: optional(length),
    /** Thickness of the board behind B. */
    waste: setting(length),
  },
  ({ joint: spec, stop, slip = mm(0), waste }) => {
    const plan = planJoint(spec);
    const { guide, bit } = plan.spec;
    const drilling = {
      bushing: guide.bushing,
      standoff: guide.standoff,
      stop: stop ?? plan.b.stop,
      slip,
      tip: bit.tip,
      thickness: plan.spec.b.thickness,
      behind: 'waste',
      waste,
    } as const;
    const { beyond, working } = pointBehind(drilling);
    return {
      ...named(
        [
          ['bushing', 'bushing', drilling.bushing],
          ['gap', 'gap', drilling.standoff],
          ['stop', 'stop', drilling.stop],
          ['slip', 'slip', slip],
          ['tip', 'tip', drilling.tip],
          ['thickness', 't', drilling.thickness],
          ['waste', 'waste', waste],
          ['beyond', 'beyond', beyond],
        ],
        working,
      ),
      errors: [],
    };
  },
);
