import { parseLength } from '../../core/length/parseLength.ts';
import type { Given, Question } from '../../practice/questions/types.ts';

/**
 * What was right, as a student was shown it: a length in mm, the right choices or places, or all
 * steps in their order.
 */
export type Key = number | readonly string[];

/** A millionth of a millimeter is noise: engines differ in the last bits. */
function rounded(length: number): number {
  return Math.round(length * 1e6) / 1e6;
}

/** The right answer to a question. */
export function keyOf(question: Question): Key {
  switch (question.kind) {
    case 'length':
    case 'rule':
      return rounded(question.right);
    case 'order':
      return question.order;
    default:
      return question.choices.filter(({ right }) => right).map(({ id }) => id);
  }
}

/** True where two keys mean the same; for choices in whatever order. */
export function sameKey(one: Key, other: Key, kind: Question['kind']): boolean {
  if (typeof one === 'number' || typeof other === 'number') {
    return typeof one === typeof other && Math.abs(Number(one) - Number(other)) < 1e-5;
  }
  return sameList(one, other, kind === 'order');
}

function sameList(one: readonly string[], other: readonly string[], ordered: boolean): boolean {
  const [first, second] = ordered ? [one, other] : [[...one].sort(), [...other].sort()];
  return first.length === second.length && first.every((each, i) => each === second[i]);
}

/**
 * Whether an answer is right by the key that was shown with it, for a question that this edition
 * would ask otherwise.
 * @param tolerance how far off a length may be, mm
 */
export function rightByKey(given: Given, key: Key, tolerance: number): boolean {
  switch (given.kind) {
    case 'length':
    case 'rule': {
      const parsed = parseLength(given.text.replace(/^\s*≈/, ''), given.unit);
      return parsed.ok && typeof key === 'number' && Math.abs(parsed.mm - key) <= tolerance + 1e-6;
    }
    case 'order':
      return typeof key !== 'number' && sameList(given.steps, key, true);
    default:
      return typeof key !== 'number' && sameList(given.choices, key, false);
  }
}
