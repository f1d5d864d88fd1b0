/** Storage names carry the site's folder: two sites may share one address. */
const name = (key: string) => `${document.documentElement.dataset['base'] ?? '/'}${key}`;

/** In a learning system's package nothing is kept here: students share the school's address. */
const isPacked = () => document.documentElement.dataset['package'] !== undefined;

/**
 * What a page kept on this machine, as it was written; undefined where there is nothing, or where
 * the browser doesn't keep anything. Whoever reads it checks it: it may be another version's.
 */
export function readKept(key: string): unknown {
  if (isPacked()) return undefined;
  try {
    const text = localStorage.getItem(name(key));
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** @returns whether it is kept; a private window and a full disk don't */
export function keep(key: string, value: unknown): boolean {
  if (isPacked()) return false;
  try {
    localStorage.setItem(name(key), JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}
