import type { JointPlan } from '../../core/joint/types.ts';
import { type Unit, spoken } from '../drafting/reading.ts';
import { layoutShapes } from './geometry.ts';

/** The name of the drawing. */
export function titleOfLayout(plan: JointPlan): string {
  return `Layout of the pins along the ${plan.kind} joint`;
}

/** The layout in sentences: its values, and what would change them. */
export function describeLayout(
  plan: JointPlan,
  unit: Unit,
  marksOnB: readonly number[] = [],
): string {
  const length = spoken(unit);
  const { marks, positions, spec } = plan;
  const start = plan.kind === 'miter' ? 'the heel' : 'the reference end';
  if (positions.length === 0) return 'No pin fits, so no hole is marked.';
  const count = positions.length === 1 ? 'One pin' : `${positions.length} pins`;
  const head = `${count} on a joint ${length(spec.jointLength)} long.`;
  const list = `Marks from ${start}: ${marks.map((mark) => length(mark)).join('; ')}.`;
  const onB =
    plan.kind === 'frame' && spec.at > 0
      ? ` On B each mark lies ${length(spec.at)} farther from its end.`
      : '';
  const second =
    plan.secondRow.length === 0
      ? ''
      : ` The second apron's marks: ${plan.secondRow.map((mark) => length(mark)).join('; ')}.`;
  const astray = layoutShapes(plan, marksOnB).strips[1]!.holes.flatMap(
    ({ mark, along, meant }, i) =>
      meant === undefined
        ? []
        : [
            ` On B the mark of pin ${i + 1} is at ${length(mark)}, off by ${length(Math.abs(along - meant))}.`,
          ],
  );
  return `${head} ${list}${onB}${second}${astray.join('')} A longer joint takes more pins; a smaller end margin spreads them farther apart.`;
}
