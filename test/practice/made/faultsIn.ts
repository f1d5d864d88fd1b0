import { formatReadable } from '../../../src/core/length/formatLength.ts';
import { mm } from '../../../src/core/length/mm.ts';
import { plainText } from '../../../src/core/working/plainText.ts';
import type { Sentence } from '../../../src/core/working/sentence.ts';
import { markAnswer } from '../../../src/practice/questions/markAnswer.ts';
import type {
  Choice,
  LengthQuestion,
  OrderQuestion,
  Question,
  RuleQuestion,
} from '../../../src/practice/questions/types.ts';
import { rightAnswer } from './rightAnswer.ts';

const UNITS = ['in', 'mm'] as const;

function faultsOfLength(question: LengthQuestion | RuleQuestion): readonly string[] {
  const { kind, right, tolerance, mistakes } = question;
  const faults: string[] = [];
  const all = [right, ...mistakes.map(({ length }) => length)];
  if (mistakes.length === 0) faults.push('no mistake is recognized');
  for (const length of all) {
    if (!(length > 0 && length <= 2500)) faults.push(`${length} mm is absurd`);
  }
  for (const { length, misconception } of mistakes) {
    if (Math.abs(length - right) < 2 * tolerance - 1e-5) {
      faults.push(`${misconception.id} is too near to what is right`);
    }
  }
  for (const unit of UNITS) {
    const texts = all.map((length) => formatReadable(mm(length), unit));
    if (new Set(texts).size < texts.length) faults.push(`two lengths read alike in ${unit}`);
    // A rule is read in its own unit: the other has no mark where its marks are.
    if (question.kind === 'rule' && question.rule.division.unit !== unit) continue;
    const [first = '', ...others] = texts.map((text) => text.replace('≈', ''));
    if (markAnswer(question, { kind, text: first, unit }).verdict !== 'right') {
      faults.push(`the right length, typed as it is written in ${unit}, is not taken`);
    }
    others.forEach((text, i) => {
      const { verdict, remarks } = markAnswer(question, { kind, text, unit });
      const expected = mistakes[i]?.misconception.id;
      if (verdict !== 'wrong' || remarks[0]?.misconception?.id !== expected) {
        faults.push(`'${text} ${unit}' is not known as '${expected}'`);
      }
    });
  }
  return faults;
}

function faultsOfChoices(question: Question, choices: readonly Choice[]): readonly string[] {
  const faults: string[] = [];
  const right = choices.filter((choice) => choice.right);
  if (right.length === 0) faults.push('nothing is right');
  if (right.length === choices.length) faults.push('nothing is wrong');
  if (question.kind === 'one' && right.length > 1) faults.push('two choices are right');
  if (new Set(choices.map(({ id }) => id)).size < choices.length) faults.push('an id stands twice');
  for (const unit of UNITS) {
    const texts = choices.map(({ says }) => plainText(says, unit));
    if (new Set(texts).size < texts.length) faults.push(`two choices read alike in ${unit}`);
  }
  for (const choice of choices) {
    if (!choice.right && !choice.misconception) faults.push(`'${choice.id}' names no mistake`);
    const { verdict } = markAnswer(question, {
      kind: question.kind as 'one',
      choices: [choice.id],
    });
    const alone = choice.right && right.length === 1;
    if (verdict !== (alone ? 'right' : 'wrong')) faults.push(`'${choice.id}' is marked ${verdict}`);
  }
  return faults;
}

function faultsOfOrder(question: OrderQuestion): readonly string[] {
  const faults: string[] = [];
  const { order, steps, placed } = question;
  const shown = steps.map(({ id }) => id);
  if ([...shown].sort().join() !== [...order].sort().join()) faults.push('its steps are not those');
  if (placed < order.length && shown.join() === order.join()) faults.push('it is shown in order');
  if (shown.slice(0, placed).join() !== order.slice(0, placed).join()) {
    faults.push('what is placed is not in its place');
  }
  // Where no two neighbors can change places, no other order is right.
  for (let i = 0; i + 1 < order.length; i++) {
    const swapped = [...order];
    [swapped[i], swapped[i + 1]] = [order[i + 1]!, order[i]!];
    if (markAnswer(question, { kind: 'order', steps: swapped }).verdict !== 'wrong') {
      faults.push(`'${order[i]}' and '${order[i + 1]}' can change places`);
    }
  }
  return faults;
}

/** Every sentence that a question can show. */
function sentencesOf(question: Question): readonly Sentence[] {
  const own =
    question.kind === 'length' || question.kind === 'rule'
      ? [question.why, question.hint, ...question.mistakes.map(({ why }) => why)]
      : (question.kind === 'order' ? question.steps : question.choices).flatMap(({ says, why }) => [
          says,
          why,
        ]);
  return [question.ask, ...own];
}

function faultsOfTexts(question: Question): readonly string[] {
  return sentencesOf(question).flatMap((sentence) =>
    UNITS.flatMap((unit) => {
      const text = plainText(sentence, unit);
      const wrong = /NaN|undefined|Infinity|[{}]|\s\s| in in |^\s|\s$|\.\./.exec(text);
      return wrong || text === '' ? [`'${text}' reads badly`] : [];
    }),
  );
}

/** Why a made question should never be asked, in words; nothing where it is sound. */
export function faultsIn(question: Question): readonly string[] {
  const own =
    question.kind === 'length' || question.kind === 'rule'
      ? faultsOfLength(question)
      : question.kind === 'order'
        ? faultsOfOrder(question)
        : faultsOfChoices(question, question.choices);
  const taken = markAnswer(question, rightAnswer(question)).verdict === 'right';
  return [...own, ...faultsOfTexts(question), ...(taken ? [] : ['the right answer is not taken'])];
}

/** The misconceptions that a question can answer with. */
export function recognized(question: Question): readonly string[] {
  const named =
    question.kind === 'length' || question.kind === 'rule'
      ? question.mistakes
      : question.kind === 'order'
        ? question.steps
        : question.choices;
  return named.flatMap(({ misconception }) => (misconception ? [misconception.id] : []));
}
