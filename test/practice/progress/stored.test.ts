import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { memoryStorage } from '../../../src/practice/progress/storage.ts';
import {
  type VersionedEvent,
  broughtUp,
  readStored,
  union,
} from '../../../src/practice/progress/stored.ts';
import { anyEvents, eventsOf, LEARNER } from './someEvents.ts';

describe('union', () => {
  it('keeps each id once, whatever comes first, and as often as it is done', () => {
    fc.assert(
      fc.property(anyEvents, anyEvents, fc.nat(), (some, others, cut) => {
        const shared = some.slice(0, cut % (some.length + 1));
        const both = union(some, [...shared, ...others]);
        const ids = both.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(new Set(ids)).toEqual(new Set([...some, ...others].map(({ id }) => id)));
        expect(union(both, some)).toEqual(both);
        expect(union([...others].reverse(), both)).toEqual(
          union(others, both), // the order of a list doesn't matter
        );
      }),
    );
  });

  it('puts events in the order in which they happened, and leaves its input as it was', () => {
    const [one, two, three] = eventsOf([
      { kind: 'opened', lesson: 'one' },
      { kind: 'opened', lesson: 'two' },
      { kind: 'opened', lesson: 'three' },
    ]);
    const some = Object.freeze([three!, one!]);
    expect(union(some, [two!])).toEqual([one, two, three]);
  });

  it('keeps the first of two with the same id: nothing that is brought replaces what is here', () => {
    const [here] = eventsOf([{ kind: 'name', name: 'Bench 3' }]);
    const [brought] = eventsOf([{ kind: 'name', name: 'Bench 4' }]);
    expect(union([here!], [brought!])).toEqual([here]);
  });
});

describe('events of another version', () => {
  const steps = {
    1: (event: VersionedEvent) => ({ ...event, lesson: event['chapter'] }),
    2: ({ chapter: _, ...event }: VersionedEvent & { chapter?: unknown }) => event,
  };

  it('are brought up step by step', () => {
    expect(broughtUp({ version: 1, chapter: 'glue' }, steps, 3)).toEqual({
      version: 3,
      lesson: 'glue',
    });
    expect(broughtUp({ version: 3, lesson: 'glue' }, steps, 3)).toEqual({
      version: 3,
      lesson: 'glue',
    });
  });

  it('are left alone where they are later, or no step leads on from them', () => {
    expect(broughtUp({ version: 4 }, steps, 3)).toBeNull();
    expect(broughtUp({ version: 0 }, steps, 3)).toBeNull();
  });

  it('are not counted, and not lost', () => {
    const known = eventsOf([{ kind: 'opened', lesson: 'one' }]);
    const later = { version: 2, id: 'x', learner: LEARNER, at: 'whenever' };
    expect(readStored([later, ...known])).toEqual({ events: known, later: [later] });
  });
});

describe('memoryStorage', () => {
  it('adds, reads by learner, leaves what is there, and forgets', async () => {
    const other = 'b'.repeat(24);
    const events = eventsOf([
      { kind: 'opened', lesson: 'one' },
      { kind: 'opened', lesson: 'two', learner: other },
    ]);
    const storage = memoryStorage();
    await storage.add(events);
    await storage.add([{ ...events[0]!, at: 0 }]);
    expect(await storage.read()).toEqual(events);
    expect(await storage.read(other)).toEqual([events[1]]);
    await storage.clear();
    expect(await storage.read()).toEqual([]);
  });
});
