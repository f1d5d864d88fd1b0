import { mixed } from '../../made/mixed.ts';
import { markOrder } from '../markOrder.ts';
import type { OrderQuestion, OrderStep } from '../types.ts';
import type { YamlEntry } from '../yamlEntry.ts';
import { type Base, type ReadHead, filled, namedMistake, readWorking } from './ground.ts';
import { checkApart } from './choices.ts';

/** No mixing of a few steps is right so many times in a row, unless all of them are. */
const MOST_MIXINGS = 50;

/** A step; `before` are the ids of those that stand above it. */
function readStep(entry: YamlEntry, before: readonly string[], base: Base): OrderStep {
  entry.only('id', 'says', 'after', 'misconception', 'why');
  const named = entry.find('after')?.items();
  for (const each of named ?? []) {
    if (!before.includes(each.text())) {
      each.fail(`no step '${each.text()}' stands above this one; write them in a right order`);
    }
  }
  const after = named?.map((each) => each.text()) ?? before;
  const misconception = entry.find('misconception');
  if (after.length > 0 && !misconception) {
    entry.fail(`add 'misconception': what whoever does this step too soon has in mind`);
  }
  if (after.length === 0 && misconception) {
    misconception.fail('this step waits for none, so nobody does it too soon; leave this out');
  }
  return {
    id: entry.get('id').id(),
    says: filled(entry.get('says'), base),
    after,
    why: filled(entry.get('why'), base),
    ...(misconception && { misconception: namedMistake(misconception, base.ground) }),
  };
}

/** Steps to be put in order, written in a right one. */
export function readOrderQuestion(entry: YamlEntry, head: ReadHead, base: Base): OrderQuestion {
  const list: YamlEntry = entry.get('steps');
  const steps: OrderStep[] = [];
  for (const each of list.items()) {
    steps.push(
      readStep(
        each,
        steps.map(({ id }) => id),
        base,
      ),
    );
  }
  checkApart(list, steps);
  const question: OrderQuestion = {
    ...head,
    kind: 'order',
    steps,
    order: steps.map(({ id }) => id),
    placed: 0,
    working: readWorking(entry, base.numbers),
  };
  for (let mixing = 0; mixing < MOST_MIXINGS; mixing++) {
    const shown = mixed(`${head.identity}:${mixing}`, steps, 0);
    const { verdict } = markOrder(
      question,
      shown.map(({ id }) => id),
    );
    if (verdict === 'wrong') return { ...question, steps: shown };
  }
  list.fail('every order of these steps is right; none has to wait for another');
}
