import text from '../../content/misconceptions.yaml?raw';
import { readMisconceptions } from '../practice/questions/misconceptions.ts';
import type { NamedMistake } from '../practice/questions/types.ts';

/** Every misconception with its name, as the pages want them that make questions: plain data. */
export const misconceptionNames: readonly NamedMistake[] = [
  ...readMisconceptions('content/misconceptions.yaml', text).values(),
].map(({ id, name }) => ({ id, name }));
