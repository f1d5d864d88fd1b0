import type { JointPlan } from '../../core/joint/types.ts';
import { type Unit, spoken } from '../drafting/reading.ts';

const JOINT: Record<JointPlan['kind'], string> = {
  edge: 'edge joint: the edges of boards A and B meet',
  corner: 'corner joint: board A meets the face of board B at its end',
  tee: 'tee joint: board A meets the face of board B away from its ends',
  frame: 'frame joint: the end of rail A meets the edge of stile B',
  miter: 'miter joint: members A and B meet at 45 degrees',
  leg: 'leg joint: apron A meets leg B, with a second apron from the next side',
};

/** The name of the drawing. */
export function titleOfSection(plan: JointPlan): string {
  return `Section through the ${plan.kind} joint at a pin`;
}

/** The section in sentences: its values, and what would change them. */
export function describeSection(plan: JointPlan, unit: Unit): string {
  const { a, b, pin, spec } = plan;
  const length = spoken(unit);
  const head = `Section of a ${JOINT[plan.kind]}.`;
  if (pin === null || b.holeDepth <= 0) return `${head} No pin fits, so no hole is drawn.`;
  const holds = `The pin is ${length(pin.diameter)} across and ${length(pin.length)} long: ${length(a.engagement)} of it in A and ${length(b.engagement)} in B.`;
  const holes = `The hole in A is ${length(a.holeDepth)} deep and the hole in B ${length(b.holeDepth)}, each deeper than the pin by ${length(spec.allowance)}.`;
  const left = (['a', 'b'] as const)
    .map((member) => {
      const wood = plan[member].woodLeft;
      const name = member.toUpperCase();
      return wood < 0
        ? `In ${name} the bit comes through by ${length(-wood)}.`
        : `Beyond the point of the bit ${length(wood)} of wood is left in ${name}.`;
    })
    .join(' ');
  return `${head} ${holds} ${holes} ${left} A thicker B leaves room for a deeper hole and more of the pin; a longer point on the bit takes room away.`;
}
