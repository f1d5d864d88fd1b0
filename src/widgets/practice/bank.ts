import type { DrawnQuestion } from '../lesson/fresh-numbers/makeDrawn.ts';

const lessons = new Map<string, Promise<readonly DrawnQuestion[]>>();

async function fetched(address: string): Promise<readonly DrawnQuestion[]> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  // The site's own file, written by the same edition.
  return (await response.json()) as readonly DrawnQuestion[];
}

/**
 * A question of a lesson's own, with its drawing.
 * @param bank where the lessons' questions are
 * @param id `lesson/id`
 * @throws RangeError where there is no such question; others where it can't be loaded
 */
export async function questionFromBank(bank: string, id: string): Promise<DrawnQuestion> {
  const lesson = id.slice(0, id.indexOf('/'));
  const questions = lessons.get(lesson) ?? fetched(`${bank}${lesson}.json`);
  lessons.set(lesson, questions);
  // Not kept where it failed: the connection may be back at the next try.
  questions.catch(() => lessons.delete(lesson));
  const found = (await questions).find(({ question }) => question.identity.startsWith(`${id}@`));
  if (!found) throw new RangeError(`no question '${id}'`);
  return found;
}
