import type { JointPlan } from '../../../core/joint/types.ts';
import { mm } from '../../../core/length/mm.ts';
import { type Sentence, say } from '../../../core/working/sentence.ts';
import { faultSays } from '../../../diagrams/trial/says.ts';
import type { MarkedRow, Slips } from './row.ts';

/** Faults that come of marks and faces; others are another lesson's. */
const OF_PLACE = new Set(['step', 'off-place', 'tight']);

/** Where the pins stand, and whether they all find their holes. */
export function rowSentence(plan: JointPlan, row: MarkedRow | null, { by }: Slips): Sentence {
  if (row === null) return say`These numbers make no joint.`;
  const { positions } = plan;
  const count = positions.length;
  const first = positions[0]!;
  const head =
    count === 1
      ? say`One pin, ${first} from the end. `
      : say`${String(count)} pins: the first ${first} from the end, then ${mm(positions[1]! - first)} from one to the next. `;
  // Boards that don't go together don't lie anywhere yet.
  const misses = row.outcome.faults.filter(({ code }) => code === 'misses');
  const faults =
    misses.length > 0 ? misses : row.outcome.faults.filter(({ code }) => OF_PLACE.has(code));
  const all = faults.flatMap((fault): Sentence => [' ', ...faultSays(fault, row.outcome)]);
  if (by === 0) {
    return faults.length === 0
      ? [...head, 'Both boards carry the same marks, so every pin finds its hole.']
      : [...head, 'Both boards carry the same marks.', ...all];
  }
  const size = mm(Math.abs(by));
  const mark = say`On B the mark of pin ${String(row.pin + 1)} is off by ${size}.`;
  // The row can give way to either side by the play of one pin.
  const forgives = mm(2 * row.outcome.pins[row.pin]!.play);
  const verdict =
    count === 1
      ? ''
      : row.outcome.fits
        ? say` Two pins forgive ${forgives} between them, so the boards still close.`
        : say` Two pins forgive ${forgives} between them, and no more: the boards do not close.`;
  return [...head, ...mark, ...verdict, ...all];
}
