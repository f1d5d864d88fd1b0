import type { JointPlan } from '../../../core/joint/types.ts';
import { type Sentence, say } from '../../../core/working/sentence.ts';

/** A plan's split in a sentence or two: who holds how much, how deep to drill, what is left. */
export function splitSentence(plan: JointPlan): Sentence {
  const { a, b, pin } = plan;
  if (pin === null) return say`These numbers make no joint.`;
  if (!plan.ok) {
    return say`This pin can't be split between these boards: B can hold ${mostOf(plan, 'b')} of its ${pin.length}, and A ${mostOf(plan, 'a')}.`;
  }
  const shared =
    Math.abs(a.engagement - b.engagement) < 1e-6
      ? say`A and B each hold half of the pin, ${b.engagement}.`
      : say`B holds ${b.engagement} of the pin and A the other ${a.engagement}.`;
  return [
    ...shared,
    ...say` Drill B ${b.holeDepth} deep and A ${a.holeDepth}, at full diameter; the bit's point then stops ${b.woodLeft} short of B's far side.`,
  ];
}

function mostOf(plan: JointPlan, side: 'a' | 'b'): number {
  return plan.working.find(({ id }) => id === `${side}.most`)?.result ?? 0;
}
