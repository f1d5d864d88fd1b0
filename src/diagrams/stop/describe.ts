import type { JointPlan } from '../../core/joint/types.ts';
import { type Unit, reading } from '../drafting/reading.ts';

export type Members = 'a' | 'b' | 'both';

/** The boards that a choice stands for. */
export function membersOf(choice: Members): readonly ('a' | 'b')[] {
  return choice === 'both' ? ['a', 'b'] : [choice];
}

/** The name of the drawing. */
export function titleOfStop(choice: Members): string {
  return choice === 'both'
    ? 'The stop on the bit for boards A and B'
    : `The stop on the bit for board ${choice.toUpperCase()}`;
}

/** The stop in sentences: its values, and what would change them. */
export function describeStop(plan: JointPlan, choice: Members, unit: Unit): string {
  const { guide, bit } = plan.spec;
  const one = (member: 'a' | 'b') =>
    reading((length) => {
      const say = (value: number) => `${length(value)} ${unit}`;
      const { holeDepth, stop, stopFromPoint, woodLeft } = plan[member];
      const gap = guide.standoff > 0 ? `, gap ${say(guide.standoff)}` : '';
      const point = bit.tip > 0 ? ` Measured to the bit's point it is ${say(stopFromPoint)}.` : '';
      const through =
        woodLeft < 0 ? ` The point comes through by ${say(-woodLeft)}: do not drill so deep.` : '';
      return `Board ${member.toUpperCase()}: bushing ${say(guide.bushing)}${gap} and hole ${say(holeDepth)} make a stop of ${say(stop)} from the collar to the full-diameter corner of the bit.${point}${through}`;
    })[unit];
  return `${membersOf(choice).map(one).join(' ')} A longer bushing, a wider gap or a deeper hole moves the collar up the bit by as much.`;
}
