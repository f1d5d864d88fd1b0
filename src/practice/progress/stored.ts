import { EVENT_VERSION, type ProgressEvent } from './events.ts';

/** An event of some version; what it holds besides is that version's. */
export interface VersionedEvent {
  readonly version: number;
  readonly [field: string]: unknown;
}

/** How an event of a version becomes one of the next. */
export type Steps = Readonly<Record<number, (event: VersionedEvent) => VersionedEvent>>;

/** Version 1 is the first: there is nothing to bring up to it. */
const STEPS: Steps = {};

/**
 * Brings an event of an earlier version up to today's, step by step.
 * @returns null for a later version, or one that no step leads on from
 */
export function broughtUp(
  event: VersionedEvent,
  steps: Steps = STEPS,
  today: number = EVENT_VERSION,
): VersionedEvent | null {
  let now = event;
  while (now.version < today) {
    const step = steps[now.version];
    if (!step) return null;
    now = { ...step(now), version: now.version + 1 };
  }
  return now.version === today ? now : null;
}

/** What was kept, sorted. */
export interface Stored {
  /** In the order in which they happened. */
  readonly events: readonly ProgressEvent[];
  /**
   * What a later edition kept. It is not counted, for this one can't tell what it means; it is
   * left where it is, and goes along when progress is saved to a file.
   */
  readonly later: readonly VersionedEvent[];
}

/** Sorts what came out of a storage that only this workbook writes. */
export function readStored(kept: readonly unknown[]): Stored {
  const events: ProgressEvent[] = [];
  const later: VersionedEvent[] = [];
  for (const each of kept as readonly VersionedEvent[]) {
    const event = broughtUp(each);
    if (event) events.push(event as unknown as ProgressEvent);
    else later.push(each);
  }
  return { events: inOrder(events), later };
}

/** In the order in which they happened; two of the same moment always in the same order. */
export function inOrder(events: readonly ProgressEvent[]): readonly ProgressEvent[] {
  return [...events].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
}

/** All events of both, each id once; the first of two with the same id stays. */
export function union(
  some: readonly ProgressEvent[],
  others: readonly ProgressEvent[],
): readonly ProgressEvent[] {
  const known = new Map<string, ProgressEvent>();
  for (const event of [...some, ...others]) if (!known.has(event.id)) known.set(event.id, event);
  return inOrder([...known.values()]);
}
