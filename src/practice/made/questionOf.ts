import { mm } from '../../core/length/mm.ts';
import { evaluate } from '../../core/working/expression.ts';
import type { WorkingStep } from '../../core/working/types.ts';
import { fillIn, pieceOf } from '../questions/fillIn.ts';
import { readFormula } from '../questions/formula.ts';
import type { Numbers } from '../questions/numbers.ts';
import { showStep } from '../questions/showStep.ts';
import type { Choice, Level, Made, Mistake, NamedMistake, Question } from '../questions/types.ts';
import { workingOf } from '../questions/workingOf.ts';
import { WRONG_UNIT } from '../questions/wrongUnit.ts';
import { Draws } from './draws.ts';
import { mixed } from './mixed.ts';
import type { Draft, DraftChoice, DraftMistake, LengthDraft, RuleDraft } from './template.ts';
import { toleranceOf } from './unfair.ts';

/** Misconceptions by id, with the names that they have in content/misconceptions.yaml. */
export type MisconceptionNames = ReadonlyMap<string, NamedMistake>;

/** The name of a mistake. @throws RangeError where content/misconceptions.yaml hasn't got it */
function named(id: string, names: MisconceptionNames): NamedMistake {
  const found = names.get(id);
  if (!found) throw new RangeError(`no misconception '${id}' in content/misconceptions.yaml`);
  return { id, name: found.name };
}

function choiceOf(draft: DraftChoice, numbers: Numbers, names: MisconceptionNames): Choice {
  const { id, right = false, says, of, changed, misconception, why } = draft;
  const about = { numbers, changed };
  const own = of === undefined ? undefined : readFormula(of, about);
  return {
    id,
    says: says === undefined ? [pieceOf(own!)] : fillIn(says, about, own),
    right,
    why: typeof why === 'string' ? fillIn(why, about, own) : why,
    ...(misconception !== undefined && { misconception: named(misconception, names) }),
  };
}

function mistakeOf(draft: DraftMistake, numbers: Numbers, names: MisconceptionNames): Mistake {
  const about = { numbers, changed: draft.changed };
  const own = readFormula(draft.of, about);
  return {
    length: mm(evaluate(own)),
    misconception: named(draft.misconception, names),
    why: fillIn(draft.why, about, own),
  };
}

/** What is worked out ahead of the answer at each level: everything, all but the last step, nothing. */
function shownAt(level: Level, steps: readonly WorkingStep[]): readonly WorkingStep[] {
  return level === 'own' ? [] : level === 'blank' ? steps.slice(0, -1) : steps;
}

/** What is asked of a typed length: the answer itself, or a step on the way that is left blank. */
function typed(draft: LengthDraft | RuleDraft, key: string, level: Level) {
  const { numbers, answer, blanks = {} } = draft;
  const whole = { ...draft, formula: answer, steps: workingOf(answer, { numbers }) };
  if (level !== 'blank') return whole;
  const blank = new Draws(`${key}:blank`).pick([answer, ...Object.keys(blanks)]);
  if (blank === answer) return whole;
  const steps = workingOf(blank, { numbers });
  const { label, symbol } = steps.at(-1)!;
  return {
    formula: blank,
    steps,
    ask: `One step is left blank. ${label} (${symbol.replace('_', ' ')}): what does it come to?`,
    why: `${label}: {${blank}}. It is the next step toward the answer.`,
    hint: 'Every number that this step needs is given, or worked out above.',
    mistakes: blanks[blank]!,
  };
}

/** Works a draft out: every text with its numbers, every formula with its value. */
export function questionOf(draft: Draft, made: Made, names: MisconceptionNames): Question {
  const { numbers } = draft;
  const { level } = made;
  const key = `${made.template}:${made.seed}`;
  const about = { numbers };
  const asked = (ask: string, steps: readonly WorkingStep[]) => ({
    identity: `${made.template}@${made.revision}:${made.seed}`,
    part: level === 'own' ? ('on-your-own' as const) : ('example' as const),
    made,
    ask: fillIn(`${draft.situation} ${ask}`, about),
    working: steps.map(showStep),
    ...(level !== 'own' && { shown: shownAt(level, steps).map(showStep) }),
  });
  const workingFor = (formula: string | undefined) =>
    formula === undefined ? [] : workingOf(formula, about);

  switch (draft.kind) {
    case 'length':
    case 'rule': {
      const { ask, formula, steps, why, hint, mistakes } = typed(draft, key, level);
      const length = {
        ...asked(ask, steps),
        system: numbers.system,
        right: mm(evaluate(readFormula(formula, about))),
        tolerance: toleranceOf(draft),
        why: fillIn(why, about),
        hint: fillIn(hint, about),
        mistakes: mistakes.map((each) => mistakeOf(each, numbers, names)),
        wrongUnit: named(WRONG_UNIT, names),
      };
      return draft.kind === 'rule'
        ? { ...length, kind: 'rule', rule: draft.rule }
        : { ...length, kind: 'length' };
    }
    case 'order': {
      const count = draft.steps.length;
      const placed = { own: 0, blank: Math.floor(count / 2), example: count }[level];
      const steps = draft.steps.map(({ id, says, why, misconception }, i) => ({
        id,
        says: fillIn(says, about),
        after: draft.steps.slice(0, i).map((step) => step.id),
        why: fillIn(why, about),
        misconception: named(misconception, names),
      }));
      return {
        ...asked(draft.ask, []),
        kind: 'order',
        steps: mixed(key, steps, placed),
        order: draft.steps.map(({ id }) => id),
        placed,
      };
    }
    case 'fault':
      return {
        ...asked(draft.ask, workingFor(draft.working)),
        kind: 'fault',
        drawing: draft.drawing,
        choices: draft.places.map((place) => ({
          ...choiceOf(place, numbers, names),
          at: place.at,
        })),
      };
    default:
      return {
        ...asked(draft.ask, workingFor(draft.working)),
        kind: draft.kind,
        choices: new Draws(`${key}:choices`)
          .shuffled(draft.choices)
          .map((choice) => choiceOf(choice, numbers, names)),
      };
  }
}
