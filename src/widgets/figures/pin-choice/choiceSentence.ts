import { TOLERANCE } from '../../../core/length/mm.ts';
import type { JointPlan, Pin, System } from '../../../core/joint/types.ts';
import { type Sentence, say } from '../../../core/working/sentence.ts';
import { candidatesOf, sizeName } from '../../../diagrams/candidates/geometry.ts';

/** A pin by its name, in the unit that it is sold in. */
function pinName({ diameter, length }: Pin, system: System): string {
  return `${sizeName(diameter, system)} × ${sizeName(length, system)}\u00a0${system}`;
}

/** Which pin was taken, by which rule, and how many others would do. */
export function choiceSentence(plan: JointPlan): Sentence {
  const { pin, considered } = plan;
  if (pin === null) return say`These numbers make no joint.`;
  const { thickness, rule, least, most } = candidatesOf(plan);
  const range = most - least > TOLERANCE ? say`${least} to ${most}` : say`${least}`;
  const by =
    rule === 'ratio'
      ? say`A third to a half of a board ${thickness} thick is `
      : say`For a board ${thickness} thick the shop table says `;
  const chosen = considered.some(({ verdict }) => verdict === 'chosen');
  if (!chosen) return [...by, ...range, ...say`. No pin in the drawer fits both boards.`];
  const fitting = considered.filter(({ verdict }) => verdict === 'fits').length;
  const others = ['No other would do.', 'One other fits.'][fitting] ?? `${fitting} others fit.`;
  return [
    ...by,
    ...range,
    ...say` across. Taken: the pin of ${pinName(pin, plan.system)}. ${others}`,
  ];
}
