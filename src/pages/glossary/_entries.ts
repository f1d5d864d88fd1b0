/** A word of the trade, as content/glossary.yaml has it. */
export interface Word {
  readonly term: string;
  readonly says: string;
}

/** A lesson as the course numbers it, with its text as it was written. */
export interface LessonText {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly body: string;
}

/** A word with its address on the page and the lessons that use it, in the course's order. */
export interface Entry extends Word {
  readonly id: string;
  readonly lessons: readonly LessonText[];
}

/** What a word is looked up under: 'To bind' stands under B. @example lookedUpUnder('To bind') // 'bind' */
export function lookedUpUnder(term: string): string {
  return term.replace(/^to /i, '').toLowerCase();
}

/** The glossary from A to Z, with the lessons in which each word opens. */
export function entriesOf(
  words: Readonly<Record<string, Word>>,
  lessons: readonly LessonText[],
): readonly Entry[] {
  return Object.entries(words)
    .map(([id, word]) => ({
      id,
      ...word,
      lessons: lessons.filter(({ body }) => body.includes(`<Term id="${id}">`)),
    }))
    .toSorted((one, other) =>
      lookedUpUnder(one.term).localeCompare(lookedUpUnder(other.term), 'en'),
    );
}

/** Entries by the letter that they stand under. */
export function byLetter(
  entries: readonly Entry[],
): readonly { readonly letter: string; readonly entries: readonly Entry[] }[] {
  const letters = Map.groupBy(entries, ({ term }) => lookedUpUnder(term).charAt(0).toUpperCase());
  return [...letters].map(([letter, some]) => ({ letter, entries: some }));
}
