import type { CheckGroup } from '../../checks/checkRow.ts';
import type { SourceId } from '../../core/working/sources.ts';
import type { WorkingStep } from '../../core/working/types.ts';

/** A lesson's text and its questions', as they were written. */
export interface LessonContent {
  readonly id: string;
  readonly text: string;
}

/**
 * The sources that a lesson's workings name: those of every setup that the lesson or its
 * questions refer to.
 * @param setups the working of every setup by its name
 */
export function sourcesOf(
  { text }: LessonContent,
  setups: ReadonlyMap<string, readonly WorkingStep[]>,
): ReadonlySet<SourceId> {
  const names = new Set(text.match(/[a-z][\w-]*/g));
  return new Set(
    [...setups].flatMap(([name, working]) =>
      names.has(name) ? working.map(({ source }) => source) : [],
    ),
  );
}

/** The subjects of the checks in which a source is held against the calculator. */
export function checksOf(
  name: string | undefined,
  groups: readonly CheckGroup[],
): readonly CheckGroup[] {
  if (name === undefined) return [];
  return groups.filter(({ rows }) => rows.some(({ source }) => source.includes(name)));
}

/** What the checks cite that is none of the named sources. */
export function otherSources(
  named: readonly string[],
  groups: readonly CheckGroup[],
): readonly {
  readonly title: string;
  readonly standing: string;
  readonly groups: readonly CheckGroup[];
}[] {
  const titles = new Map<string, { standing: string; groups: Set<CheckGroup> }>();
  for (const group of groups) {
    for (const { source, standing } of group.rows) {
      if (named.some((name) => source.includes(name))) continue;
      const found = titles.get(source) ?? { standing, groups: new Set() };
      titles.set(source, { ...found, groups: found.groups.add(group) });
    }
  }
  return [...titles].map(([title, { standing, groups: some }]) => ({
    title,
    standing,
    groups: [...some],
  }));
}
