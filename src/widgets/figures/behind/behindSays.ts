import type { PointEnd } from '../../../core/joint/pointBehind.ts';
import { type Sentence, say } from '../../../core/working/sentence.ts';
import type { Drilled } from '../../../diagrams/behind-the-board/geometry.ts';

/** Less wood than any rule leaves under a point: it breaks out by itself, mm. */
const CLOSE = 0.75;

/** Where the point ends, in a sentence or two. */
export function behindSentence(drilled: Drilled, end: PointEnd): Sentence {
  const slipped =
    drilled.slip > 0
      ? say`The collar was set to ${drilled.stop} and has slipped by ${drilled.slip}. `
      : say`The collar is where it was set, at ${drilled.stop}. `;
  if (end.reach <= 0) return [...slipped, ...say`The bit doesn't reach the board.`];
  if (end.beyond > 0) {
    const into = {
      board: 'the board',
      waste: 'the waste board, which is there for that',
      bench: 'the bench',
      hand: 'whatever is there. Here it is a hand',
    }[end.ends];
    return [...slipped, ...say`The point is through the far face by ${end.beyond}, in ${into}.`];
  }
  if (end.woodLeft < CLOSE) {
    return [
      ...slipped,
      ...say`Only ${Math.max(0, end.woodLeft)} of wood is left under the point. It may break out by itself.`,
    ];
  }
  return [...slipped, ...say`The point stops ${end.woodLeft} short of the far face.`];
}

/** What is wrong with what is behind the board, and how bad that is; null where nothing is. */
export function behindCaution(
  drilled: Drilled,
  end: PointEnd,
): { readonly severity: 'error' | 'caution' | 'note'; readonly says: Sentence } | null {
  if (drilled.behind === 'hand') {
    return {
      severity: 'error',
      says: say`Take the hand away, however much wood is left. A bit that breaks through is in it before it is felt: a drill turns on while you stop. Hold the board with a clamp.`,
    };
  }
  if (end.ends === 'bench') {
    return {
      severity: 'caution',
      says: say`The point is in the bench. There may be a nail, a screw or a vise in it, and a bit that meets steel breaks or kicks.`,
    };
  }
  if (drilled.behind === 'bench') {
    return {
      severity: 'note',
      says: say`Without a waste board only the wood under the point keeps the bit out of the bench. Lay one under.`,
    };
  }
  if (end.beyond > 0) {
    return {
      severity: 'caution',
      says: say`The waste board keeps the far face from splintering and the point from the bench. The hole shows all the same: stop, mend the stop and start again in a scrap.`,
    };
  }
  return null;
}
