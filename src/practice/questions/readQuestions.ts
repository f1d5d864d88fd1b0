import type { JointPlan, JointSpec } from '../../core/joint/types.ts';
import { type Mm, TOLERANCE, mm } from '../../core/length/mm.ts';
import { plainText } from '../../core/working/plainText.ts';
import { type Expression, evaluate } from '../../core/working/expression.ts';
import { reckon } from '../../core/working/reckon.ts';
import type { Sentence } from '../../core/working/sentence.ts';
import { fillIn, pieceOf } from './fillIn.ts';
import { FormulaError, type FormulaPlans, readFormula } from './formula.ts';
import { type Misconceptions, WRONG_UNIT } from './misconceptions.ts';
import { type Setups, planAt, readSpec } from './setups.ts';
import { showStep, stepsTo } from './showStep.ts';
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
import { type YamlEntry, readYaml } from './yamlEntry.ts';

/** What questions are made from, besides their own file. */
export interface QuestionGround {
  readonly setups: Setups;
  readonly misconceptions: Misconceptions;
}

/** How far off a typed length may be, where a question doesn't say: a shop step. */
const USUAL_TOLERANCE = { in: mm(25.4 / 64), mm: mm(0.5) } as const;

/** Runs what may find a fault in a formula, and reports that at the entry it stands in. */
function at<Value>(entry: YamlEntry, read: () => Value): Value {
  try {
    return read();
  } catch (error) {
    if (error instanceof FormulaError) entry.fail(error.message);
    throw error;
  }
}

function filled(entry: YamlEntry, plans: FormulaPlans, own?: Expression): Sentence {
  return at(entry, () => fillIn(entry.text(), plans, own));
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

/** The plans that one answer may speak of: the question's, and what the answer's `with` changes. */
function plansOf(entry: YamlEntry, plan: JointPlan, spec: JointSpec): FormulaPlans {
  const change = entry.find('with');
  // The pin stays the question's: a mistake about the depth doesn't choose another one.
  const kept = plan.pin ? { ...spec, pin: plan.pin } : spec;
  return { plan, changed: change && planAt(change, readSpec(change, kept)) };
}

/** True or false as it is written, or as a comparison such as 'changed.b.most > b.most' works out. */
function isRight(entry: YamlEntry, plans: FormulaPlans): boolean {
  const flag = entry.flag();
  if (flag !== undefined) return flag;
  const [left = '', sign = '', right = '', ...rest] = entry.text().split(/\s([<>=])\s/);
  if (!/^[<>=]$/.test(sign) || rest.length > 0) {
    entry.fail(`'right' should be true, false or a comparison such as 'changed.b.most > b.most'`);
  }
  return at(entry, () => {
    const more = evaluate(readFormula(left, plans)) - evaluate(readFormula(right, plans));
    if (sign === '=') return Math.abs(more) <= TOLERANCE;
    return sign === '>' ? more > TOLERANCE : more < -TOLERANCE;
  });
}

function readChoice(
  entry: YamlEntry,
  kind: ChoiceQuestion['kind'],
  plan: JointPlan,
  spec: JointSpec,
  ground: QuestionGround,
): Choice {
  entry.only('id', 'of', 'says', 'with', 'right', 'misconception', 'why');
  const plans = plansOf(entry, plan, spec);
  const of = entry.find('of');
  const own = of && at(of, () => readFormula(of.text(), plans));
  const says = entry.find('says');
  if (!own && !says) entry.fail(`a choice needs 'says', or 'of' with a number of the plan`);
  const mark = entry.find('right');
  const right = mark !== undefined && isRight(mark, plans);
  const misconception = entry.find('misconception');
  if (!misconception && (kind === 'several' || !right)) {
    entry.fail(`add 'misconception': what whoever gets this choice wrong has in mind`);
  }
  return {
    id: entry.get('id').id(),
    says: says ? filled(says, plans, own) : [pieceOf(own!)],
    right,
    why: filled(entry.get('why'), plans, own),
    ...(misconception && { misconception: namedMistake(misconception, ground) }),
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

function readMistake(
  entry: YamlEntry,
  plan: JointPlan,
  spec: JointSpec,
  ground: QuestionGround,
): Mistake {
  entry.only('of', 'with', 'misconception', 'why');
  const plans = plansOf(entry, plan, spec);
  const of = entry.get('of');
  const own = at(of, () => readFormula(of.text(), plans));
  return {
    length: mm(evaluate(own)),
    misconception: namedMistake(entry.get('misconception'), ground),
    why: filled(entry.get('why'), plans, own),
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

const SHARED = ['id', 'revision', 'part', 'kind', 'setup', 'with', 'ask', 'working'];

function readWorking(
  entry: YamlEntry,
  plan: JointPlan,
  fallback: YamlEntry | undefined,
): readonly ShownStep[] {
  const wanted = entry.find('working') ?? fallback;
  if (!wanted) return [];
  return at(wanted, () => {
    const formula = readFormula(wanted.text(), { plan });
    const own = plan.working.find(({ id }) => id === wanted.text());
    const last =
      own ??
      reckon({ id: 'answer', label: 'The answer', symbol: 'answer', formula, source: 'geometry' });
    return stepsTo(last, plan).map(showStep);
  });
}

function readQuestion(entry: YamlEntry, lesson: string, ground: QuestionGround): Question {
  const kind = entry.get('kind').oneOf(['one', 'several', 'length']);
  // The type is written out: only then does the compiler see that `fail` never returns.
  const setup: YamlEntry = entry.get('setup');
  const base = ground.setups.get(setup.text());
  if (!base) setup.fail(`no setup '${setup.text()}' in content/setups.yaml`);
  const change = entry.find('with');
  const spec = change ? readSpec(change, base) : base;
  const plan = planAt(change ?? setup, spec);
  const [error] = plan.cautions.filter(({ severity }) => severity === 'error');
  if (error) (change ?? setup).fail(`this joint can't be made: ${error.message}`);
  const asked = {
    identity: `${lesson}/${entry.get('id').id()}@${entry.get('revision').count()}`,
    part: entry.get('part').oneOf(QUESTION_PARTS),
    ask: filled(entry.get('ask'), { plan }),
  };
  if (kind !== 'length') {
    const list = entry.only(...SHARED, 'choices').get('choices');
    const choices = list.items().map((each) => readChoice(each, kind, plan, spec, ground));
    checkChoices(list, kind, choices);
    return { ...asked, kind, choices, working: readWorking(entry, plan, undefined) };
  }
  entry.only(...SHARED, 'answer', 'tolerance', 'why', 'hint', 'mistakes');
  const answer = entry.get('answer');
  const right = mm(evaluate(at(answer, () => readFormula(answer.text(), { plan }))));
  const tolerance = entry.find('tolerance')?.length() ?? USUAL_TOLERANCE[spec.system];
  const entries = entry.get('mistakes').items();
  const mistakes = entries.map((each) => readMistake(each, plan, spec, ground));
  checkApart([answer, ...entries], [right, ...mistakes.map(({ length }) => length)], tolerance);
  return {
    ...asked,
    kind,
    system: spec.system,
    right,
    tolerance,
    why: filled(entry.get('why'), { plan }),
    hint: filled(entry.get('hint'), { plan }),
    mistakes,
    wrongUnit: { id: WRONG_UNIT, name: ground.misconceptions.get(WRONG_UNIT)?.name ?? WRONG_UNIT },
    working: readWorking(entry, plan, answer),
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
