import { type Expression } from '../../../core/working/expression.ts';
import type { Sentence } from '../../../core/working/sentence.ts';
import { fillIn } from '../fillIn.ts';
import { FormulaError, type FormulaNumbers } from '../formula.ts';
import type { Misconceptions } from '../misconceptions.ts';
import type { Numbers } from '../numbers.ts';
import type { Setup } from '../setupKinds.ts';
import { type Setups, changedNumbers } from '../setups.ts';
import { showStep } from '../showStep.ts';
import type { NamedMistake, QuestionPart, ShownStep } from '../types.ts';
import { workingOf } from '../workingOf.ts';
import { WRONG_UNIT } from '../wrongUnit.ts';
import type { YamlEntry } from '../yamlEntry.ts';

/** What questions are made from, besides their own file. */
export interface QuestionGround {
  readonly setups: Setups;
  readonly misconceptions: Misconceptions;
}

/** What a question's answers stand on. */
export interface Base {
  readonly setup: Setup;
  readonly numbers: Numbers;
  readonly ground: QuestionGround;
}

/** What is read alike of every kind of question. */
export interface ReadHead {
  readonly identity: string;
  readonly part: QuestionPart;
  readonly ask: Sentence;
}

/** Runs what may find a fault in a formula, and reports that at the entry it stands in. */
export function at<Value>(entry: YamlEntry, read: () => Value): Value {
  try {
    return read();
  } catch (error) {
    if (error instanceof FormulaError) entry.fail(error.message);
    throw error;
  }
}

/** A text with its numbers put in. */
export function filled(entry: YamlEntry, about: FormulaNumbers, own?: Expression): Sentence {
  return at(entry, () => fillIn(entry.text(), about, own));
}

/** A misconception, by the id that the entry has. */
export function namedMistake(entry: YamlEntry, { misconceptions }: QuestionGround): NamedMistake {
  const id = entry.id();
  const found = misconceptions.get(id);
  if (!found) {
    entry.fail(
      `no misconception '${id}' in content/misconceptions.yaml; add it there, or mend the name`,
    );
  }
  return { id, name: found.name };
}

/** What the right number in the wrong unit is called. */
export function wrongUnit({ misconceptions }: QuestionGround): NamedMistake {
  return { id: WRONG_UNIT, name: misconceptions.get(WRONG_UNIT)?.name ?? WRONG_UNIT };
}

/** The numbers that one answer may speak of: the question's, and what the answer's `with` changes. */
export function aboutOf(entry: YamlEntry, { setup, numbers, ground }: Base): FormulaNumbers {
  const change = entry.find('with');
  return { numbers, changed: change && changedNumbers(change, setup, ground.setups) };
}

/**
 * The working that the question names, or else that leads to its answer.
 * @param answer its formula; without it a question that names none has no working
 */
export function readWorking(
  entry: YamlEntry,
  numbers: Numbers,
  answer?: string,
): readonly ShownStep[] {
  const named = entry.find('working');
  const formula = named?.text() ?? answer;
  if (formula === undefined) return [];
  return at(named ?? entry, () => workingOf(formula, { numbers }).map(showStep));
}
