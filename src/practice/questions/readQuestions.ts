import { readChoiceQuestion } from './reading/choices.ts';
import { readFaultQuestion } from './reading/fault.ts';
import { type Base, type QuestionGround, filled } from './reading/ground.ts';
import { readOrderQuestion } from './reading/order.ts';
import { readLengthQuestion, readRuleQuestion } from './reading/typed.ts';
import { numbersAt, readSetup } from './setups.ts';
import { QUESTION_PARTS, type Question } from './types.ts';
import { type YamlEntry, readYaml } from './yamlEntry.ts';

export type { QuestionGround } from './reading/ground.ts';

/** The fields of every question. */
const SHARED = ['id', 'revision', 'part', 'kind', 'setup', 'with', 'ask', 'working'];

const TYPED = ['tolerance', 'why', 'hint', 'mistakes'];

/** The other fields of each kind. */
const FIELDS = {
  one: ['choices'],
  several: ['choices'],
  length: ['answer', ...TYPED],
  rule: TYPED,
  order: ['steps'],
  fault: ['drawing', 'places'],
} as const;

const KINDS = ['one', 'several', 'length', 'rule', 'order', 'fault'] as const;

/** The setup that a question is about, perhaps with something changed, and its numbers. */
function readBase(entry: YamlEntry, ground: QuestionGround): Base {
  // The type is written out: only then does the compiler see that `fail` never returns.
  const name: YamlEntry = entry.get('setup');
  const start = ground.setups.get(name.text());
  if (!start) name.fail(`no setup '${name.text()}' in content/setups.yaml`);
  const change = entry.find('with');
  const setup = change ? readSetup(change, start, ground.setups) : start;
  const numbers = numbersAt(change ?? name, setup);
  const [error] = numbers.errors;
  if (error !== undefined) (change ?? name).fail(`this joint can't be made: ${error}`);
  return { setup, numbers, ground };
}

function readQuestion(entry: YamlEntry, lesson: string, ground: QuestionGround): Question {
  const kind = entry.get('kind').oneOf(KINDS);
  // Before anything is asked for: a misspelled field is told by its own line.
  entry.only(...SHARED, ...FIELDS[kind]);
  const base = readBase(entry, ground);
  const head = {
    identity: `${lesson}/${entry.get('id').id()}@${entry.get('revision').count()}`,
    part: entry.get('part').oneOf(QUESTION_PARTS),
    ask: filled(entry.get('ask'), base),
  };
  switch (kind) {
    case 'length':
      return readLengthQuestion(entry, head, base);
    case 'rule':
      return readRuleQuestion(entry, head, base);
    case 'order':
      return readOrderQuestion(entry, head, base);
    case 'fault':
      return readFaultQuestion(entry, head, base);
    default:
      return readChoiceQuestion(entry, head, kind, base);
  }
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
