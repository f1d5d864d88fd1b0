import type { JointKind, JointPlan } from '../../core/joint/types.ts';
import { type Unit, spoken } from '../drafting/reading.ts';

const BOARDS: Record<JointKind, string> = {
  edge: 'The edge of board A faces the edge of board B; both lie flat.',
  corner: 'Board A lies flat and points at the face of board B, which stands upright, at B’s end.',
  tee: 'Board A lies flat and points at the face of board B, which stands upright, away from B’s ends.',
  frame: 'The end of rail A points at the edge of stile B; both lie flat.',
  miter: 'Members A and B lie flat, their ends cut at 45 degrees and facing each other.',
  leg: 'Apron A points at one side of leg B, and a second apron, A2, at the next side.',
};

/** The name of the drawing. */
export function titleOfPictorial(plan: JointPlan): string {
  return `The ${plan.kind} joint in space`;
}

/**
 * The drawing in sentences.
 * @param apart from 0, pushed home, to 1, pulled off the pins
 */
export function describePictorial(plan: JointPlan, apart: number, unit: Unit): string {
  const length = spoken(unit);
  const { pin, positions } = plan;
  const head = `Isometric view of the ${plan.kind} joint. ${BOARDS[plan.kind]}`;
  if (pin === null || positions.length === 0) return `${head} No pin fits, so no hole is drawn.`;
  const several = positions.length > 1 || plan.kind === 'leg';
  const count = positions.length === 1 ? 'One pin' : `${positions.length} pins`;
  const each = plan.kind === 'leg' ? ' for each apron' : '';
  const pins = `${count}${each}, ${length(pin.diameter)} across and ${length(pin.length)} long,`;
  const where =
    apart === 0
      ? several
        ? 'are hidden in their holes: the boards have met.'
        : 'is hidden in its holes: the boards have met.'
      : apart === 1
        ? several
          ? 'stand between the boards, each on the line of its two holes.'
          : 'stands between the boards, on the line of its two holes.'
        : several
          ? 'are on their way into their holes.'
          : 'is on its way into its holes.';
  const depth = `The holes in A are ${length(plan.a.holeDepth)} deep, those in B ${length(plan.b.holeDepth)}.`;
  return `${head} ${pins} ${where} ${depth}`;
}
