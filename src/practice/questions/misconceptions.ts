import { WRONG_UNIT } from './wrongUnit.ts';
import { readYaml } from './yamlEntry.ts';

/** A mistake that learners make again and again, by name. */
export interface Misconception {
  readonly id: string;
  /** What it is called in feedback and in the mark sheet: 'Forgot the point'. */
  readonly name: string;
  /** One sentence for the instructor: what the student believes. */
  readonly belief: string;
}

/** content/misconceptions.yaml, read. */
export type Misconceptions = ReadonlyMap<string, Misconception>;

/** @throws ContentError with file and line */
export function readMisconceptions(file: string, text: string): Misconceptions {
  const root = readYaml(file, text);
  const found = new Map(
    root.fields().map(([id, entry]) => {
      entry.only('name', 'belief');
      return [id, { id, name: entry.get('name').text(), belief: entry.get('belief').text() }];
    }),
  );
  if (!found.has(WRONG_UNIT)) root.fail(`'${WRONG_UNIT}' is missing; marking gives it by itself`);
  return found;
}
