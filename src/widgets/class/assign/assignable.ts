import { templates } from '../../../practice/made/index.ts';

/** A lesson that can be assigned, with what makes its questions. */
export interface AssignableLesson {
  /** Unit and place in it: '2.3'. */
  readonly number: string;
  readonly title: string;
  /** Its templates, by their ids. */
  readonly templates: readonly string[];
}

/** A title as the name of its lesson's file: planned lessons have templates already. */
function fileName(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^a-z -]/g, '')
    .replaceAll(' ', '-');
}

/**
 * The lessons that questions can be made for, in the course's order.
 * @param lessons of the course: title, number, and the file's name where it is written
 */
export function assignableLessons(
  lessons: readonly { readonly number: string; readonly title: string; readonly id?: string }[],
): readonly AssignableLesson[] {
  return lessons.flatMap(({ number, title, id = fileName(title) }) => {
    const own = templates.filter(({ lesson }) => lesson === id);
    return own.length === 0 ? [] : [{ number, title, templates: own.map((each) => each.id) }];
  });
}

/** A template's id as words: 'stop-for-a-board' is 'Stop for a board'. */
export function templateName(id: string): string {
  return id[0]!.toUpperCase() + id.slice(1).replaceAll('-', ' ');
}
