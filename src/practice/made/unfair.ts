import { type Mm, mm } from '../../core/length/mm.ts';
import { plainText } from '../../core/working/plainText.ts';
import type { Sentence } from '../../core/working/sentence.ts';
import { fillIn } from '../questions/fillIn.ts';
import { readFormula } from '../questions/formula.ts';
import { USUAL_TOLERANCE } from '../questions/usualTolerance.ts';
import type { ChoicesDraft, Draft, DraftMistake, LengthDraft, RuleDraft } from './template.ts';
import { type Value, mistaken, valueOf } from './values.ts';

/** No length of a shop's question is longer, mm. */
const LONGEST = 2500;

/** No length that a learner is to tell from nothing is shorter, mm. */
const SHORTEST = 0.4;

/** Numbers other than lengths differ by this share at least, or nobody would see that they do. */
const CLEARLY = 0.08;

/** How near to a length still counts as that length. */
export function toleranceOf(draft: LengthDraft | RuleDraft): Mm {
  return draft.tolerance ?? USUAL_TOLERANCE[draft.numbers.system];
}

/** True but for noise of the last digits, so that every machine decides alike. */
function closerThan(one: number, other: number, distance: number): boolean {
  return Math.abs(one - other) < distance - 1e-6;
}

function absurd(length: number): boolean {
  return !(length >= SHORTEST && length <= LONGEST);
}

/** Lengths of which an answer could mean one or another, or that read alike. */
function lengthsAlike(lengths: readonly number[], tolerance: number): boolean {
  return lengths.some((one, i) =>
    lengths.slice(0, i).some((other) => closerThan(one, other, 2 * tolerance)),
  );
}

function textsAlike(texts: readonly Sentence[]): boolean {
  return (['in', 'mm'] as const).some(
    (unit) => new Set(texts.map((text) => plainText(text, unit))).size < texts.length,
  );
}

/** Why an answer to this could mean two things at once. */
function unclear(
  draft: LengthDraft | RuleDraft,
  right: number,
  mistakes: readonly DraftMistake[],
): string | null {
  const wrong = mistaken(draft.numbers, mistakes);
  const tolerance = toleranceOf(draft);
  if ([right, ...wrong].some(absurd)) return 'a length is absurd';
  if (lengthsAlike([right, ...wrong], tolerance)) return 'two lengths are too near to each other';
  if (textsAlike([right, ...wrong].map((length) => [{ mm: mm(length) }]))) {
    return 'two lengths read alike';
  }
  const otherUnit = [right / 25.4, right * 25.4];
  if (wrong.some((each) => otherUnit.some((other) => closerThan(each, other, 2 * tolerance)))) {
    return 'a mistake gives the right number in the other unit';
  }
  return null;
}

function unclearChoices({ kind, numbers, choices }: Omit<ChoicesDraft, 'kind'> & { kind: string }) {
  const right = choices.filter((choice) => choice.right).length;
  if (right === 0 || right === choices.length || (kind === 'one' && right > 1)) {
    return 'none, all or two choices are right';
  }
  const texts = choices.map(({ says, of, changed }) => {
    const about = { numbers, changed };
    const own = of === undefined ? undefined : readFormula(of, about);
    return fillIn(says ?? '{this}', about, own);
  });
  if (textsAlike(texts)) return 'two choices read alike';
  const values = choices.flatMap(({ of, changed }): readonly Value[] =>
    of ? [valueOf(of, { numbers, changed })] : [],
  );
  const lengths = values.filter(({ unit }) => unit === 'length').map(({ value }) => value);
  if (lengths.some(absurd)) return 'a length is absurd';
  if (lengthsAlike(lengths, USUAL_TOLERANCE[numbers.system])) {
    return 'two lengths are too near to each other';
  }
  const others = values.filter(({ unit }) => unit !== 'length' && unit !== 'count');
  const alike = others.some((one, i) =>
    others
      .slice(0, i)
      .some((other) => closerThan(one.value, other.value, CLEARLY * Math.abs(one.value))),
  );
  return alike ? 'two numbers are too near to each other' : null;
}

/**
 * Why a draft makes no fair question: its joint can't be made, it has two right answers or none,
 * or answers that can't be told apart. Null where it is fair.
 */
export function unfair(draft: Draft): string | null {
  const [error] = draft.numbers.errors;
  if (error !== undefined) return error;
  switch (draft.kind) {
    case 'length':
    case 'rule': {
      const { numbers, answer, mistakes, blanks = {} } = draft;
      const asked: readonly (readonly [string, readonly DraftMistake[]])[] = [
        [answer, mistakes],
        ...Object.entries(blanks),
      ];
      for (const [formula, some] of asked) {
        const reason = unclear(draft, valueOf(formula, { numbers }).value, some);
        if (reason !== null) return reason;
      }
      return null;
    }
    case 'order':
      return null;
    case 'fault':
      return unclearChoices({ ...draft, choices: draft.places });
    default:
      return unclearChoices(draft);
  }
}
