import { readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { readMisconceptions } from '../../src/practice/questions/misconceptions.ts';
import { readQuestions } from '../../src/practice/questions/readQuestions.ts';
import { readSetups } from '../../src/practice/questions/setups.ts';
import type { Question } from '../../src/practice/questions/types.ts';

const root = resolve(import.meta.dirname, '../..');

/** A file's text. @param name from the project's root */
export function textOf(name: string): string {
  return readFileSync(join(root, name), 'utf8');
}

/** The files of a folder of content, from the project's root. */
export function filesIn(folder: string, ending: string): readonly string[] {
  return readdirSync(join(root, folder))
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => `${folder}/${name}`);
}

export const setups = readSetups('content/setups.yaml', textOf('content/setups.yaml'));
export const misconceptions = readMisconceptions(
  'content/misconceptions.yaml',
  textOf('content/misconceptions.yaml'),
);

/** The project's own questions, all lessons together. */
export const questions: readonly Question[] = filesIn('content/questions', '.yaml').flatMap(
  (file) => {
    const lesson = file.replace(/^.*\/|\.yaml$/g, '');
    return readQuestions(file, textOf(file), lesson, { setups, misconceptions });
  },
);

/** One of them. @param id as in its file */
export function questionCalled(id: string): Question {
  const found = questions.find(({ identity }) => identity.includes(`/${id}@`));
  if (!found) throw new Error(`no question '${id}'`);
  return found;
}
