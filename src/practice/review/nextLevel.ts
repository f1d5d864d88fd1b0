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
 */
export function triedOf(template: string, events: readonly ProgressEvent[]): readonly Tried[] {
  const tried = new Map<string, Tried>();
  for (const event of events) {
    if (event.kind !== 'answer' || event.made?.template !== template) continue;
    if (tried.has(event.question)) continue;
    tried.set(event.question, { level: levelOf(event), right: event.right });
  }
  return [...tried.values()];
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
