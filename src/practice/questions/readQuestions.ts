import { type Mm, TOLERANCE, mm } from '../../core/length/mm.ts';
import { plainText } from '../../core/working/plainText.ts';
import { type Expression, evaluate } from '../../core/working/expression.ts';
import type { Sentence } from '../../core/working/sentence.ts';
import type { WorkingUnit } from '../../core/working/types.ts';
import { fillIn, pieceOf } from './fillIn.ts';
import { FormulaError, type FormulaNumbers, readFormula, unitOf } from './formula.ts';
import type { Misconceptions } from './misconceptions.ts';
import type { Numbers } from './numbers.ts';
import type { Setup } from './setupKinds.ts';
import { type Setups, changedNumbers, numbersAt, readSetup } from './setups.ts';
import { showStep } from './showStep.ts';
import {
  type Choice,
  type ChoiceQuestion,
  type LengthQuestion,
  type Mistake,
  type NamedMistake,
  QUESTION_PARTS,
  type Question,
  type ShownStep,
} from './types.ts';
import { USUAL_TOLERANCE } from './usualTolerance.ts';
import { workingOf } from './workingOf.ts';
import { WRONG_UNIT } from './wrongUnit.ts';
import { type YamlEntry, readYaml } from './yamlEntry.ts';

/** What questions are made from, besides their own file. */
export interface QuestionGround {
  readonly setups: Setups;
  readonly misconceptions: Misconceptions;
}

/** Runs what may find a fault in a formula, and reports that at the entry it stands in. */
function at<Value>(entry: YamlEntry, read: () => Value): Value {
  try {
    return read();
  } catch (error) {
    if (error instanceof FormulaError) entry.fail(error.message);
    throw error;
  }
}

function filled(entry: YamlEntry, about: FormulaNumbers, own?: Expression): Sentence {
  return at(entry, () => fillIn(entry.text(), about, own));
}

function namedMistake(entry: YamlEntry, { misconceptions }: QuestionGround): NamedMistake {
  const id = entry.id();
  const found = misconceptions.get(id);
  if (!found) {
    entry.fail(
      `no misconception '${id}' in content/misconceptions.yaml; add it there, or mend the name`,
    );
  }
  return { id, name: found.name };
}

/** What a question's answers stand on. */
interface Base {
  readonly setup: Setup;
  readonly numbers: Numbers;
  readonly ground: QuestionGround;
}

/** The numbers that one answer may speak of: the question's, and what the answer's `with` changes. */
function aboutOf(entry: YamlEntry, { setup, numbers, ground }: Base): FormulaNumbers {
  const change = entry.find('with');
  return { numbers, changed: change && changedNumbers(change, setup, ground.setups) };
}

/** True or false as it is written, or as a comparison such as 'changed.b.most > b.most' works out. */
function isRight(entry: YamlEntry, about: FormulaNumbers): boolean {
  const flag = entry.flag();
  if (flag !== undefined) return flag;
  const [left = '', sign = '', right = '', ...rest] = entry.text().split(/\s([<>=])\s/);
  if (!/^[<>=]$/.test(sign) || rest.length > 0) {
    entry.fail(`'right' should be true, false or a comparison such as 'changed.b.most > b.most'`);
  }
  return at(entry, () => {
    const more = evaluate(readFormula(left, about)) - evaluate(readFormula(right, about));
    if (sign === '=') return Math.abs(more) <= TOLERANCE;
    return sign === '>' ? more > TOLERANCE : more < -TOLERANCE;
  });
}

function readChoice(entry: YamlEntry, kind: ChoiceQuestion['kind'], base: Base): Choice {
  entry.only('id', 'of', 'says', 'with', 'right', 'misconception', 'why');
  const about = aboutOf(entry, base);
  const of = entry.find('of');
  const own = of && at(of, () => readFormula(of.text(), about));
  const says = entry.find('says');
  if (!own && !says) entry.fail(`a choice needs 'says', or 'of' with a number of the setup`);
  const mark = entry.find('right');
  const right = mark !== undefined && isRight(mark, about);
  const misconception = entry.find('misconception');
  if (!misconception && (kind === 'several' || !right)) {
    entry.fail(`add 'misconception': what whoever gets this choice wrong has in mind`);
  }
  return {
    id: entry.get('id').id(),
    says: says ? filled(says, about, own) : [pieceOf(own!)],
    right,
    why: filled(entry.get('why'), about, own),
    ...(misconception && { misconception: namedMistake(misconception, base.ground) }),
  };
}

/** Refuses choices that a reader can't tell apart in one of the units, or none or two right ones. */
function checkChoices(entry: YamlEntry, kind: ChoiceQuestion['kind'], choices: readonly Choice[]) {
  const count = choices.filter(({ right }) => right).length;
  if (kind === 'one' && count !== 1) entry.fail(`exactly one choice should be right; ${count} are`);
  if (kind === 'several' && (count === 0 || count === choices.length)) {
    entry.fail('some choices should be right and some not');
  }
  for (const unit of ['in', 'mm'] as const) {
    const shown = new Map<string, string>();
    for (const { id, says } of choices) {
      const text = plainText(says, unit);
      const twin = shown.get(text);
      if (twin) entry.fail(`choices '${twin}' and '${id}' both read '${text}'`);
      shown.set(text, id);
    }
  }
  const ids = new Set(choices.map(({ id }) => id));
  if (ids.size < choices.length) entry.fail('two choices have the same id');
}

function readMistake(entry: YamlEntry, base: Base): Mistake {
  entry.only('of', 'with', 'misconception', 'why');
  const about = aboutOf(entry, base);
  const of = entry.get('of');
  const own = at(of, () => readFormula(of.text(), about));
  return {
    length: mm(evaluate(own)),
    misconception: namedMistake(entry.get('misconception'), base.ground),
    why: filled(entry.get('why'), about, own),
  };
}

/** Refuses lengths so near to each other that an answer could mean either. */
function checkApart(entries: readonly YamlEntry[], lengths: readonly Mm[], tolerance: Mm) {
  lengths.forEach((length, i) => {
    const close = lengths.slice(0, i).find((other) => Math.abs(length - other) < 2 * tolerance);
    if (close !== undefined) {
      entries[i]?.fail(
        `this mistake gives ${length.toFixed(2)} mm, too near to ${close.toFixed(2)} mm of another answer (tolerance ${tolerance.toFixed(2)} mm); choose other numbers`,
      );
    }
  });
}

/** Units of what can be typed and marked as a length. */
const TYPED: readonly WorkingUnit[] = ['length', 'inches', 'millimeters'];

const SHARED = ['id', 'revision', 'part', 'kind', 'setup', 'with', 'ask', 'working'];

function readWorking(
  entry: YamlEntry,
  numbers: Numbers,
  fallback: YamlEntry | undefined,
): readonly ShownStep[] {
  const wanted = entry.find('working') ?? fallback;
  if (!wanted) return [];
  return at(wanted, () => workingOf(wanted.text(), { numbers }).map(showStep));
}

function readQuestion(entry: YamlEntry, lesson: string, ground: QuestionGround): Question {
  const kind = entry.get('kind').oneOf(['one', 'several', 'length']);
  // Before anything is asked for: a misspelled field is told by its own line.
  entry.only(
    ...SHARED,
    ...(kind === 'length' ? ['answer', 'tolerance', 'why', 'hint', 'mistakes'] : ['choices']),
  );
  // The type is written out: only then does the compiler see that `fail` never returns.
  const name: YamlEntry = entry.get('setup');
  const start = ground.setups.get(name.text());
  if (!start) name.fail(`no setup '${name.text()}' in content/setups.yaml`);
  const change = entry.find('with');
  const setup = change ? readSetup(change, start, ground.setups) : start;
  const numbers = numbersAt(change ?? name, setup);
  const [error] = numbers.errors;
  if (error !== undefined) (change ?? name).fail(`this joint can't be made: ${error}`);
  const base = { setup, numbers, ground };
  const asked = {
    identity: `${lesson}/${entry.get('id').id()}@${entry.get('revision').count()}`,
    part: entry.get('part').oneOf(QUESTION_PARTS),
    ask: filled(entry.get('ask'), { numbers }),
  };
  if (kind !== 'length') {
    const list = entry.get('choices');
    const choices = list.items().map((each) => readChoice(each, kind, base));
    checkChoices(list, kind, choices);
    return { ...asked, kind, choices, working: readWorking(entry, numbers, undefined) };
  }
  const answer: YamlEntry = entry.get('answer');
  const formula = at(answer, () => readFormula(answer.text(), { numbers }));
  if (!TYPED.includes(unitOf(formula))) {
    answer.fail(`only a length can be typed; ask for '${answer.text()}' with choices`);
  }
  const right = mm(evaluate(formula));
  const tolerance = entry.find('tolerance')?.length() ?? USUAL_TOLERANCE[numbers.system];
  const entries = entry.get('mistakes').items();
  const mistakes = entries.map((each) => readMistake(each, base));
  checkApart([answer, ...entries], [right, ...mistakes.map(({ length }) => length)], tolerance);
  return {
    ...asked,
    kind,
    system: numbers.system,
    right,
    tolerance,
    why: filled(entry.get('why'), { numbers }),
    hint: filled(entry.get('hint'), { numbers }),
    mistakes,
    wrongUnit: { id: WRONG_UNIT, name: ground.misconceptions.get(WRONG_UNIT)?.name ?? WRONG_UNIT },
    working: readWorking(entry, numbers, answer),
  } satisfies LengthQuestion;
}

/**
 * Reads a lesson's questions and works every number of them out.
 * @param file as errors call it: `content/questions/<lesson>.yaml`
 * @throws ContentError for whatever is wrong in the file, with its line and what to do
 */
export function readQuestions(
  file: string,
  text: string,
  lesson: string,
  ground: QuestionGround,
): readonly Question[] {
  const seen = new Set<string>();
  return readYaml(file, text)
    .items()
    .map((entry) => {
      const id = entry.get('id').id();
      if (seen.has(id))
        entry.fail(`a question '${id}' stands above this one; ids are never reused`);
      seen.add(id);
      return readQuestion(entry, lesson, ground);
    });
}
