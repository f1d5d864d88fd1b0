import type { JointPlan, ResolvedSpec } from '../../core/joint/types.ts';
import { type Sentence, say } from '../../core/working/sentence.ts';

/** What each board is drilled in. */
function drilledIn(spec: ResolvedSpec): readonly [a: string, b: string] {
  switch (spec.kind) {
    case 'edge':
      return ['A’s edge', 'B’s edge'];
    case 'corner':
    case 'tee':
      return [`A’s ${spec.drilled}`, 'B’s face'];
    case 'frame':
      return ['the rail’s end, A', 'the stile’s edge, B'];
    case 'miter':
      return ['A’s cut', 'B’s cut'];
    case 'leg':
      return ['the apron’s end, A', 'the leg’s side, B'];
  }
}

/** A joint in a sentence or two: how many pins, what each board holds, how deep to drill. */
export function jointSentence(plan: JointPlan): Sentence {
  const { a, b, pin, positions, spec } = plan;
  if (pin === null || positions.length === 0) return say`These numbers make no joint.`;
  if (!plan.ok) return say`The joint can’t be made like this. The boxes below say why.`;
  const count = positions.length === 1 ? 'One pin' : `${String(positions.length)} pins`;
  const each = plan.kind === 'leg' ? ' in each apron' : '';
  const [inA, inB] = drilledIn(spec);
  return say`${count}${each}, ${pin.diameter} by ${pin.length}: A holds ${a.engagement} of each and B ${b.engagement}. Drill ${inA} ${a.holeDepth} deep and ${inB} ${b.holeDepth}.`;
}
