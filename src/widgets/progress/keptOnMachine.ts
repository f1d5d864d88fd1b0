/** What the site's pages keep besides the log, by its name in the browser's storage. */
const CALLED: Readonly<Record<string, string>> = {
  assignment: 'Answers to assignments',
  learner: 'Who is learning here',
  unit: 'Inches or millimeters',
  theme: 'Light or dark',
  'my-tools': 'Your tools as measured',
  'class-order': 'The order for a class',
  'sign-off': 'The sign-off list of a class',
  'station-plan': 'The station plan',
  piece: 'The piece that is being planned',
  'piece-on-bench': 'Which joint of it is on the bench',
  'piece-ticks': 'Ticks in its drill list',
  'kept-pieces': 'Pieces that were kept',
  'kept-joints': 'Joints that were kept',
  'joint-aside': 'The joint set aside to compare with',
};

/**
 * The site's own keys without its folder, which every one begins with. What has a further slash
 * belongs to a site in a folder of this one, unless a page here is known to keep it.
 */
function ownNames(): readonly string[] {
  const base = document.documentElement.dataset['base'] ?? '/';
  return Object.keys(localStorage)
    .filter((key) => key.startsWith(base))
    .map((key) => key.slice(base.length))
    .filter((name) => !name.includes('/') || headOf(name) in CALLED);
}

/** 'assignment' of 'assignment/7K2M9QXB'. */
function headOf(name: string): string {
  return name.split('/', 1)[0]!;
}

function called(name: string): string {
  return CALLED[headOf(name)] ?? `What a page keeps as “${name}”`;
}

/** What is kept besides the log, in words; nothing where the browser keeps nothing. */
export function keptOnMachine(): readonly string[] {
  try {
    return [...new Set(ownNames().map(called))].sort();
  } catch {
    return [];
  }
}

/** Deletes all that is kept besides the log. @returns what was deleted, in words */
export function forgetKept(): readonly string[] {
  const kept = keptOnMachine();
  try {
    const base = document.documentElement.dataset['base'] ?? '/';
    for (const name of ownNames()) localStorage.removeItem(`${base}${name}`);
  } catch {
    // Then nothing was kept, either.
  }
  return kept;
}
