import type { ProgressEvent } from './events.ts';

/** Where events are kept. What comes out may be another edition's: `readStored` sorts it. */
export interface EventStorage {
  /**
   * Adds events; one whose id is there already is left as it was.
   * @throws where nothing can be kept; then none of them is
   */
  add(events: readonly ProgressEvent[]): Promise<void>;
  /** Everything, or what one learner did, in no order. @throws where nothing can be read */
  read(learner?: string): Promise<readonly unknown[]>;
  /** Forgets everything. @throws where that fails */
  clear(): Promise<void>;
}

/** Keeps events for as long as the page is open. */
export function memoryStorage(): EventStorage {
  const kept = new Map<string, ProgressEvent>();
  return {
    async add(events) {
      for (const event of events) if (!kept.has(event.id)) kept.set(event.id, event);
    },
    async read(learner) {
      return [...kept.values()].filter(
        (event) => learner === undefined || event.learner === learner,
      );
    },
    async clear() {
      kept.clear();
    },
  };
}
