import type { JointPlan } from '../../../core/joint/types.ts';
import { type Mm, TOLERANCE, lessThan, mm } from '../../../core/length/mm.ts';
import { type Sentence, say } from '../../../core/working/sentence.ts';
import type { Drilled, Side } from './collar.ts';

/** What a collar makes of the hole, and the hole of the joint, in two or three sentences. */
export function stopSentence(
  plan: JointPlan,
  side: Side,
  collar: Mm,
  drilled: Drilled | null,
): Sentence {
  if (drilled === null) return say`These numbers make no joint.`;
  const { guide } = plan.spec;
  const board = side.toUpperCase();
  const meant = plan[side].holeDepth;
  const reach = collar - guide.bushing - guide.standoff;
  const off = mm(Math.abs(reach - meant));
  const left = mm(drilled.outcome.pins[0]!.woodLeft[side]);

  if (off <= TOLERANCE) {
    const gap = guide.standoff > 0 ? say`, gap ${guide.standoff}` : '';
    return [
      ...say`Bushing ${guide.bushing}`,
      ...gap,
      ...say` and hole ${meant}: the collar stands ${collar} from the corner of the full diameter. The hole in ${board} comes out as planned.`,
    ];
  }
  if (reach > meant) {
    const end = lessThan(left, 0)
      ? say`The point comes ${mm(-left)} out of the far side.`
      : say`Of the wood past the point ${left} is left.`;
    return [...say`The hole in ${board} comes out ${off} too deep. `, ...end];
  }
  const hole =
    reach > 0
      ? say`The hole in ${board} comes out ${mm(reach)} deep, ${off} too shallow.`
      : say`The bit never comes out of the guide, so ${board} gets no hole. The collar is ${off} too low.`;
  return [...hole, ' ', ...closing(drilled)];
}

/** How far the joint closes, and what room is left past its pins. */
function closing({ outcome }: Drilled): Sentence {
  if (outcome.gap > 0) return say`Pushed together, the boards stay ${outcome.gap} apart.`;
  return say`The boards still close, but past the ends of a pin only ${outcome.endRoom} is left for glue and chips, both holes together.`;
}
