import type { System } from '../../core/joint/types.ts';
import { LEVELS, type Level, type Limits, type Question } from '../questions/types.ts';
import { Draws } from './draws.ts';
import { type MisconceptionNames, questionOf } from './questionOf.ts';
import type { Draft, Template } from './template.ts';
import { templates } from './templates/index.ts';
import { unfair } from './unfair.ts';

/** More drafts in a row than this are never unfair, unless the template is. */
const MOST_DRAFTS = 400;

/** A template found no fair question: with the boards of a class that can happen. */
export class NoFairDraft extends Error {
  override readonly name = 'NoFairDraft';
}

/** The largest seed: seeds are whole numbers of 32 bits. */
export const LARGEST_SEED = 0xffff_ffff;

export interface MakeOptions {
  /** Which stock, rules and steps serve; the reader's unit is another matter. */
  readonly system: System;
  /** How much is worked out for the student. */
  readonly level: Level;
  /** content/misconceptions.yaml as `readMisconceptions` gives it, or only the names. */
  readonly misconceptions: MisconceptionNames;
  /** What a class has, where that is less or other than any shop has. */
  readonly limits?: Limits;
}

/** @throws RangeError where there is no such template */
export function templateCalled(id: string): Template {
  const found = templates.find((template) => template.id === id);
  if (!found) throw new RangeError(`no template '${id}'`);
  return found;
}

/**
 * The first fair draft of a seed: those whose answers can't be told apart are passed over, always
 * the same ones.
 * @throws RangeError for a seed that is not a whole number from 0 to `LARGEST_SEED`
 * @throws NoFairDraft where a class's limits leave nothing fair to ask
 */
export function draftOf(
  template: Template,
  seed: number,
  system: System,
  limits: Limits = {},
): Draft {
  if (!Number.isInteger(seed) || seed < 0 || seed > LARGEST_SEED) {
    throw new RangeError(`seed must be a whole number from 0 to ${LARGEST_SEED}, got ${seed}`);
  }
  let reason: string | null = null;
  for (let next = 0; next < MOST_DRAFTS; next++) {
    const draws = new Draws(`${template.id}:${seed}:${next}`, limits);
    const drafted = template.draft(draws, system);
    const draft =
      limits.tolerance !== undefined && drafted.kind === 'length'
        ? { ...drafted, tolerance: limits.tolerance }
        : drafted;
    reason = unfair(draft);
    if (reason === null) return draft;
  }
  throw new NoFairDraft(
    `template '${template.id}', seed ${seed}, ${system}: no fair draft (${reason})`,
  );
}

/**
 * Makes a question: the same template, revision, seed, system, level and limits give the same
 * question on every machine. It is marked by `markAnswer` like those of the lessons' files.
 * @param seed a whole number from 0 to `LARGEST_SEED`
 * @throws RangeError for a template or a seed that there is not
 * @example makeQuestion('stop-for-b', 7, { system: 'in', level: 'own', misconceptions })
 */
export function makeQuestion(
  templateId: string,
  seed: number,
  { system, level, misconceptions, limits }: MakeOptions,
): Question {
  if (!LEVELS.includes(level)) throw new RangeError(`no level '${String(level)}'`);
  const template = templateCalled(templateId);
  const { id, revision } = template;
  const made = { template: id, revision, seed, system, level, ...(limits && { limits }) };
  return questionOf(draftOf(template, seed, system, limits), made, misconceptions);
}
