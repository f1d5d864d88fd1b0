/** What the site's pages keep besides the log, by its name in the browser's storage. */
const CALLED: Readonly<Record<string, string>> = {
  learner: 'Who is learning here',
  unit: 'Inches or millimeters',
  theme: 'Light or dark',
  'my-tools': 'Your tools as measured',
  'class-order': 'The order for a class',
  'sign-off': 'The sign-off list of a class',
  'station-plan': 'The station plan',
};

/** Names carry the site's folder; one with a further slash belongs to a site in a folder of it. */
function ownKeys(): readonly string[] {
  const base = document.documentElement.dataset['base'] ?? '/';
  return Object.keys(localStorage).filter(
    (key) => key.startsWith(base) && !key.slice(base.length).includes('/'),
  );
}

function called(key: string): string {
  const name = key.slice(key.lastIndexOf('/') + 1);
  return CALLED[name] ?? `What a page keeps as “${name}”`;
}

/** What is kept besides the log, in words; nothing where the browser keeps nothing. */
export function keptOnMachine(): readonly string[] {
  try {
    return ownKeys().map(called).sort();
  } catch {
    return [];
  }
}

/** Deletes all that is kept besides the log. @returns what was deleted, in words */
export function forgetKept(): readonly string[] {
  const kept = keptOnMachine();
  try {
    for (const key of ownKeys()) localStorage.removeItem(key);
  } catch {
    // Then nothing was kept, either.
  }
  return kept;
}
