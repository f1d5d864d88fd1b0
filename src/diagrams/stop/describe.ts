import type { JointPlan } from '../../core/joint/types.ts';
import { type Mm, TOLERANCE } from '../../core/length/mm.ts';
import { type Unit, spoken } from '../drafting/reading.ts';

export type Members = 'a' | 'b' | 'both';

/** The boards that a choice stands for. */
export function membersOf(choice: Members): readonly ('a' | 'b')[] {
  return choice === 'both' ? ['a', 'b'] : [choice];
}

/** Collars that were set to something else than the plan: from the collar to the corner of the full diameter, mm. */
export type Collars = Partial<Record<'a' | 'b', Mm>>;

/** The name of the drawing. */
export function titleOfStop(choice: Members): string {
  return choice === 'both'
    ? 'The stop on the bit for boards A and B'
    : `The stop on the bit for board ${choice.toUpperCase()}`;
}

/** The stop in sentences: its values, and what would change them. */
export function describeStop(
  plan: JointPlan,
  choice: Members,
  unit: Unit,
  collars: Collars = {},
): string {
  const { guide, bit } = plan.spec;
  const say = spoken(unit);
  const one = (member: 'a' | 'b') => {
    const { holeDepth, stop, limit } = plan[member];
    const set = collars[member] ?? guide.bushing + guide.standoff + holeDepth;
    const reach = set - guide.bushing - guide.standoff;
    const off = reach - holeDepth;
    const gap = guide.standoff > 0 ? `, gap ${say(guide.standoff)}` : '';
    const point = bit.tip > 0 ? ` Measured to the bit's point it is ${say(set + bit.tip)}.` : '';
    const past = reach + bit.tip - limit;
    const through =
      past > TOLERANCE ? ` The point comes through by ${say(past)}: do not drill so deep.` : '';
    const wrong =
      Math.abs(off) <= TOLERANCE
        ? ''
        : ` But the collar is set at ${say(set)}, and the hole comes out ${say(Math.abs(off))} too ${off > 0 ? 'deep' : 'shallow'}${reach > 0 ? '' : ': the bit never leaves the guide'}.`;
    return `Board ${member.toUpperCase()}: bushing ${say(guide.bushing)}${gap} and hole ${say(holeDepth)} make a stop of ${say(stop)} from the collar to the full-diameter corner of the bit.${wrong}${point}${through}`;
  };
  return `${membersOf(choice).map(one).join(' ')} A longer bushing, a wider gap or a deeper hole moves the collar up the bit by as much.`;
}
