import type { JointPlan, ResolvedSpec } from '../../../core/joint/types.ts';
import { TOLERANCE } from '../../../core/length/mm.ts';
import { type Sentence, say } from '../../../core/working/sentence.ts';

/** What each board is drilled in. */
function drilledIn(spec: ResolvedSpec): readonly [a: string, b: string] {
  switch (spec.kind) {
    case 'edge':
      return ['A’s edge', 'B’s edge'];
    case 'corner':
    case 'tee':
      return [`A’s ${spec.drilled}`, 'B’s face'];
    case 'frame':
      return ['the rail’s end', 'the stile’s edge'];
    case 'miter':
      return ['A’s cut', 'B’s cut'];
    case 'leg':
      return ['the apron’s end', 'the leg’s side'];
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
  const held =
    Math.abs(a.engagement - b.engagement) < TOLERANCE
      ? say`A and B each hold ${a.engagement}.`
      : say`A holds ${a.engagement} of each and B ${b.engagement}.`;
  const depth =
    Math.abs(a.holeDepth - b.holeDepth) < TOLERANCE
      ? say`Drill ${inA} and ${inB} ${a.holeDepth} deep.`
      : say`Drill ${inA} ${a.holeDepth} deep and ${inB} ${b.holeDepth}.`;
  return [...say`${count}${each}, ${pin.diameter} by ${pin.length}. `, ...held, ' ', ...depth];
}
