import { LearningSystem, findApi } from '../../../class/scorm/learningSystem.ts';
import type { Keeper } from './keeper.ts';

/**
 * Keeps answers in the learning system that this page was opened by, and reports how far the
 * student is after each.
 * @returns undefined where there is none: the page was opened by itself
 * @throws Error a sentence for the student, where the learning system refuses
 */
export function learningSystemKeeper(): Keeper | undefined {
  const api = findApi(window as unknown as Parameters<typeof findApi>[0]);
  if (!api) return undefined;
  const system = new LearningSystem(api);
  // Whichever the browser has time for; the second finds it closed.
  addEventListener('pagehide', () => system.close());
  addEventListener('beforeunload', () => system.close());
  return {
    student: system.student || 'student',
    students: [],
    load: () => system.kept,
    keep: (_student, text, progress) => system.keep(text, progress),
  };
}
