import { type Mm, mm } from '../../../core/length/mm.ts';
import { evaluate } from '../../../core/working/expression.ts';
import type { WorkingUnit } from '../../../core/working/types.ts';
import { readFormula, unitOf } from '../formula.ts';
import type { Numbers } from '../numbers.ts';
import type { DrawnRule, LengthQuestion, Mistake, RuleQuestion } from '../types.ts';
import { USUAL_TOLERANCE } from '../usualTolerance.ts';
import type { YamlEntry } from '../yamlEntry.ts';
import {
  type Base,
  type ReadHead,
  aboutOf,
  at,
  filled,
  namedMistake,
  readWorking,
  wrongUnit,
} from './ground.ts';

/** What can be typed. */
const TYPED: readonly WorkingUnit[] = ['length', 'inches', 'millimeters'];

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

function readTyped(entry: YamlEntry, base: Base, answer: YamlEntry, formula: string, usual: Mm) {
  const { numbers, ground } = base;
  const value = at(answer, () => readFormula(formula, { numbers }));
  if (!TYPED.includes(unitOf(value))) {
    answer.fail(`only a length can be typed; ask for '${formula}' with choices`);
  }
  const right = mm(evaluate(value));
  const tolerance = entry.find('tolerance')?.length() ?? usual;
  const entries = entry.get('mistakes').items();
  const mistakes = entries.map((each) => readMistake(each, base));
  checkApart([answer, ...entries], [right, ...mistakes.map(({ length }) => length)], tolerance);
  return {
    system: numbers.system,
    right,
    tolerance,
    why: filled(entry.get('why'), { numbers }),
    hint: filled(entry.get('hint'), { numbers }),
    mistakes,
    wrongUnit: wrongUnit(ground),
  };
}

/** A length to be worked out. */
export function readLengthQuestion(entry: YamlEntry, head: ReadHead, base: Base): LengthQuestion {
  const answer = entry.get('answer');
  return {
    ...head,
    kind: 'length',
    ...readTyped(entry, base, answer, answer.text(), USUAL_TOLERANCE[base.numbers.system]),
    working: readWorking(entry, base.numbers, answer.text()),
  };
}

/** Rules that there are, by their finest division. */
const DIVISIONS: readonly DrawnRule['division'][] = [
  { unit: 'in', denominator: 16 },
  { unit: 'in', denominator: 32 },
  { unit: 'in', denominator: 64 },
  { unit: 'mm', step: 0.5 },
  { unit: 'mm', step: 1 },
];

/** From one number of a rule to the next. */
const NUMBERED = { in: 25.4, mm: 10 } as const;

/** The rule that a `ruleReading` is about, drawn around its line. */
function drawnRule(setup: YamlEntry, { quantities, system }: Numbers): DrawnRule {
  const number = (name: string): number => {
    const found = quantities.get(name);
    return found ? evaluate(found) : setup.fail(`a 'rule' question needs a setup of 'ruleReading'`);
  };
  const [line, apart, last] = [number('line'), number('division'), number('number')];
  const division = DIVISIONS.find(
    (each) =>
      each.unit === system &&
      Math.abs(apart - (each.unit === 'in' ? 25.4 / each.denominator : each.step)) < 1e-6,
  );
  if (!division) setup.fail(`there is no rule in ${system} with marks ${apart} mm apart`);
  const numbered = NUMBERED[division.unit];
  return {
    division,
    from: mm(Math.max(0, last - numbered)),
    to: mm(last + 2 * numbered),
    line: mm(line),
  };
}

/** A line on a rule to be read. */
export function readRuleQuestion(entry: YamlEntry, head: ReadHead, base: Base): RuleQuestion {
  const setup: YamlEntry = entry.get('setup');
  const rule = drawnRule(setup, base.numbers);
  const { division } = rule;
  const apart = division.unit === 'in' ? 25.4 / division.denominator : division.step;
  return {
    ...head,
    kind: 'rule',
    rule,
    ...readTyped(entry, base, setup, 'line', mm(apart / 4)),
    working: readWorking(entry, base.numbers, 'line'),
  };
}
