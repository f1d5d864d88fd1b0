import { TOLERANCE } from '../../../core/length/mm.ts';
import { evaluate } from '../../../core/working/expression.ts';
import { plainText } from '../../../core/working/plainText.ts';
import type { Sentence } from '../../../core/working/sentence.ts';
import { pieceOf } from '../fillIn.ts';
import { type FormulaNumbers, readFormula } from '../formula.ts';
import type { Choice, ChoiceQuestion } from '../types.ts';
import type { YamlEntry } from '../yamlEntry.ts';
import {
  type Base,
  type ReadHead,
  aboutOf,
  at,
  filled,
  namedMistake,
  readWorking,
} from './ground.ts';

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

/** What a choice says and why it is right or wrong. */
export function readSays(
  entry: YamlEntry,
  about: FormulaNumbers,
): { readonly says: Sentence; readonly why: Sentence } {
  const of = entry.find('of');
  const own = of && at(of, () => readFormula(of.text(), about));
  const says = entry.find('says');
  if (!own && !says) entry.fail(`a choice needs 'says', or 'of' with a number of the setup`);
  return {
    says: says ? filled(says, about, own) : [pieceOf(own!)],
    why: filled(entry.get('why'), about, own),
  };
}

function readChoice(entry: YamlEntry, kind: ChoiceQuestion['kind'], base: Base): Choice {
  entry.only('id', 'of', 'says', 'with', 'right', 'misconception', 'why');
  const about = aboutOf(entry, base);
  const mark = entry.find('right');
  const right = mark !== undefined && isRight(mark, about);
  const misconception = entry.find('misconception');
  if (!misconception && (kind === 'several' || !right)) {
    entry.fail(`add 'misconception': what whoever gets this choice wrong has in mind`);
  }
  return {
    id: entry.get('id').id(),
    right,
    ...readSays(entry, about),
    ...(misconception && { misconception: namedMistake(misconception, base.ground) }),
  };
}

/** Refuses choices that have one id, or that a reader can't tell apart in one of the units. */
export function checkApart(
  entry: YamlEntry,
  choices: readonly { readonly id: string; readonly says: Sentence }[],
): void {
  for (const unit of ['in', 'mm'] as const) {
    const shown = new Map<string, string>();
    for (const { id, says } of choices) {
      const text = plainText(says, unit);
      const twin = shown.get(text);
      if (twin) entry.fail(`'${twin}' and '${id}' both read '${text}'`);
      shown.set(text, id);
    }
  }
  const ids = new Set(choices.map(({ id }) => id));
  if (ids.size < choices.length) entry.fail('two of these have the same id');
}

/** One of several, or several of several. */
export function readChoiceQuestion(
  entry: YamlEntry,
  head: ReadHead,
  kind: ChoiceQuestion['kind'],
  base: Base,
): ChoiceQuestion {
  const list: YamlEntry = entry.get('choices');
  const choices = list.items().map((each) => readChoice(each, kind, base));
  const count = choices.filter(({ right }) => right).length;
  if (kind === 'one' && count !== 1) list.fail(`exactly one choice should be right; ${count} are`);
  if (kind === 'several' && (count === 0 || count === choices.length)) {
    list.fail('some choices should be right and some not');
  }
  checkApart(list, choices);
  return { ...head, kind, choices, working: readWorking(entry, base.numbers) };
}
