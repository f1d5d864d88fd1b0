import type { EventStorage } from '../../practice/progress/storage.ts';

/** The layout of the database: events by id, and found by learner. */
const LAYOUT = 1;
const EVENTS = 'events';
const BY_LEARNER = 'learner';

function result<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error!);
  });
}

/**
 * Opened for one purpose and closed again: a tab that stays open stands in no other's way.
 * @throws DOMException `VersionError` where a later edition laid the database out; others where
 *   the browser keeps nothing
 */
async function opened(name: string): Promise<IDBDatabase> {
  const request = indexedDB.open(name, LAYOUT);
  request.onupgradeneeded = () => {
    request.result.createObjectStore(EVENTS, { keyPath: 'id' }).createIndex(BY_LEARNER, BY_LEARNER);
  };
  return result(request);
}

/** Keeps events in the browser's database of this name. */
export function indexedDbStorage(name: string): EventStorage {
  async function within<T>(
    mode: IDBTransactionMode,
    work: (events: IDBObjectStore) => Promise<T>,
  ): Promise<T> {
    const database = await opened(name);
    try {
      const transaction = database.transaction(EVENTS, mode);
      const done = new Promise<void>((resolve, reject) => {
        transaction.oncomplete = () => resolve();
        // A full disk shows only here.
        transaction.onabort = () => reject(transaction.error ?? new Error('aborted'));
      });
      const [worked] = await Promise.all([work(transaction.objectStore(EVENTS)), done]);
      return worked;
    } finally {
      database.close();
    }
  }

  return {
    add: (added) =>
      within('readwrite', async (events) => {
        for (const event of added) {
          events.add(event).onerror = (failure) => {
            // There already: left as it was. Anything else ends the transaction.
            const { error } = failure.target as IDBRequest;
            if (error?.name === 'ConstraintError') failure.preventDefault();
          };
        }
      }),
    read: (learner) =>
      within('readonly', (events) =>
        result<unknown[]>(
          learner === undefined ? events.getAll() : events.index(BY_LEARNER).getAll(learner),
        ),
      ),
    clear: async () => void (await result(indexedDB.deleteDatabase(name))),
  };
}
