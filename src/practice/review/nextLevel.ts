import { attemptsOf } from '../progress/attempts.ts';
import { type ProgressEvent, levelOf } from '../progress/events.ts';
import { LEVELS, type Level } from '../questions/types.ts';

/** A question of a template that was met. */
export interface Tried {
  readonly level: Level;
  /** The first answer to it was right; of a worked example, that it was read. */
  readonly right: boolean;
}

/**
 * The questions of a template that were answered, in the order in which they were. Only the first
 * answer to each counts: after it the student has read what was wrong.
 * @param events of one learner, in the order in which they happened
 */
export function triedOf(template: string, events: readonly ProgressEvent[]): readonly Tried[] {
  return attemptsOf(events).flatMap(({ answers: [first] }) =>
    first?.made?.template === template ? [{ level: levelOf(first), right: first.right }] : [],
  );
}

/**
 * How much of the next question is worked out for the student: less of it after one that was right,
 * more of it after one that was not. The first one has a step left blank, for whoever comes to it
 * has been shown a worked example, in the lesson or right before it.
 */
export function nextLevel(tried: readonly Tried[]): Level {
  const last = tried.at(-1);
  if (!last) return 'blank';
  const step = LEVELS.indexOf(last.level) + (last.right ? 1 : -1);
  return LEVELS[Math.min(Math.max(step, 0), LEVELS.length - 1)]!;
}
