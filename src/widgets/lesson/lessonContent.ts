/**
 * The content folder's data as lessons' components need it, read when the site is built. Only
 * `.astro` files import this: an island gets its part as plain properties.
 */
import { z } from 'astro/zod';
import { parse } from 'yaml';
import glossaryText from '../../../content/glossary.yaml?raw';
import misconceptionsText from '../../../content/misconceptions.yaml?raw';
import setupsText from '../../../content/setups.yaml?raw';
import { planJoint } from '../../core/joint/planJoint.ts';
import type { JointPlan, JointSpec } from '../../core/joint/types.ts';
import { readMisconceptions } from '../../practice/questions/misconceptions.ts';
import { readQuestions } from '../../practice/questions/readQuestions.ts';
import type { Numbers } from '../../practice/questions/numbers.ts';
import { isJoint } from '../../practice/questions/setupKinds.ts';
import { numbersOf as numbersOfSetup } from '../../practice/questions/numbersOf.ts';
import { readSetups } from '../../practice/questions/setups.ts';
import type { Question } from '../../practice/questions/types.ts';

const questionTexts = import.meta.glob<string>('../../../content/questions/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const setups = readSetups('content/setups.yaml', setupsText);
/** content/misconceptions.yaml, read. */
export const misconceptions = readMisconceptions('content/misconceptions.yaml', misconceptionsText);

const joints = new Map(
  [...setups].flatMap(([name, setup]) => (isJoint(setup) ? [[name, setup]] : [])),
);

function nameIn(known: ReadonlyMap<string, unknown>, what: string) {
  return z.string().refine((name) => known.has(name), {
    error: ({ input }) =>
      `no ${what} '${String(input)}' in content/setups.yaml; it has ${[...known.keys()].join(', ')}`,
  });
}

/** Every name in content/setups.yaml. */
export const setupNames: readonly string[] = [...setups.keys()];

/** A property that names a joint of content/setups.yaml. */
export const setupName = nameIn(joints, 'joint');

/** A property that names anything of content/setups.yaml: a joint, a fit, room for glue. */
export const numbersName = nameIn(setups, 'setup');

/** @param name checked by `setupName` */
export function setupOf(name: string): JointSpec {
  return joints.get(name)!;
}

/** @param name checked by `setupName` */
export function planOf(name: string): JointPlan {
  return planJoint(setupOf(name));
}

/** @param name checked by `numbersName` */
export function numbersOf(name: string): Numbers {
  return numbersOfSetup(setups.get(name)!);
}

/**
 * The questions of the lesson that a component stands in.
 * @param props the component's, with `at` as lessons give it: file and line
 */
export function questionsFor(props: Record<string, unknown>): readonly Question[] {
  const at = String(props['at']);
  const lesson = /content\/lessons\/([\w-]+)\.mdx/.exec(at)?.[1];
  const file = `content/questions/${lesson}.yaml`;
  const text = questionTexts[`../../../${file}`];
  if (lesson === undefined || text === undefined) {
    throw new Error(`${at}: this lesson asks a question, but has no file ${file}`);
  }
  return readQuestions(file, text, lesson, { setups, misconceptions });
}

/** The lesson's question of this id. */
export function questionFor(props: Record<string, unknown>, id: string): Question {
  const questions = questionsFor(props);
  const found = questions.find(({ identity }) => identity.includes(`/${id}@`));
  if (!found) throw new Error(`${String(props['at'])}: no question '${id}' in this lesson's file`);
  return found;
}

const glossarySchema = z.record(
  z.string(),
  z.strictObject({ term: z.string().min(1), says: z.string().min(1) }),
);

/** content/glossary.yaml: words of the trade by id. */
export const glossary = glossarySchema.parse(parse(glossaryText));
