import { type Mm, mm } from '../../core/length/mm.ts';
import { type LengthUnit, parseLength } from '../../core/length/parseLength.ts';
import { say } from '../../core/working/sentence.ts';
import { markOrder } from './markOrder.ts';
import type {
  Choice,
  ChoiceQuestion,
  FaultQuestion,
  Given,
  LengthQuestion,
  Marked,
  Question,
  Remark,
  RuleQuestion,
} from './types.ts';

/**
 * Marks an answer. The same question and answer always give the same mark.
 * @throws TypeError where the answer is of another kind than the question
 */
export function markAnswer(question: Question, given: Given): Marked {
  switch (question.kind) {
    case 'length':
    case 'rule':
      if (given.kind === question.kind) return markLength(question, given.text, given.unit);
      break;
    case 'order':
      if (given.kind === 'order') return markOrder(question, given.steps);
      break;
    case 'fault':
      if (given.kind === 'fault') return markPlaces(question, given.choices);
      break;
    default:
      if (given.kind === question.kind) return markChoices(question, given.choices);
  }
  throw new TypeError(`markAnswer: a '${question.kind}' question got a '${given.kind}' answer`);
}

function remark(choice: Choice): Remark {
  return {
    says: choice.why,
    choice: choice.id,
    ...(choice.misconception && { misconception: choice.misconception }),
  };
}

/** What is said of the right choices once all is right. */
function praise(choices: readonly Choice[]): Marked {
  return {
    verdict: 'right',
    remarks: choices.filter(({ right }) => right).map(({ id, why }) => ({ says: why, choice: id })),
  };
}

function markChoices(question: ChoiceQuestion, chosen: readonly string[]): Marked {
  if (!question.choices.some(({ id }) => chosen.includes(id))) {
    return {
      verdict: 'unreadable',
      remarks: [{ says: ['Nothing is chosen yet. Choose, then press Check.'] }],
    };
  }
  const faults = question.choices.filter(({ id, right }) => right !== chosen.includes(id));
  if (faults.length === 0) return praise(question.choices);
  // One of several: what was chosen explains itself; the right one is not given away.
  const told = faults.filter(({ id }) => question.kind === 'several' || chosen.includes(id));
  return { verdict: 'wrong', remarks: told.map(remark) };
}

/** Places pointed at: a sound one explains itself; one that was missed is not given away. */
function markPlaces({ choices }: FaultQuestion, pointedAt: readonly string[]): Marked {
  const found = choices.filter(({ id }) => pointedAt.includes(id));
  if (found.length === 0) {
    return {
      verdict: 'unreadable',
      remarks: [{ says: ['Point at a place in the drawing or in the list, then press Check.'] }],
    };
  }
  const sound = found.filter(({ right }) => !right);
  const missed = choices.filter(({ id, right }) => right && !pointedAt.includes(id)).length;
  if (sound.length === 0 && missed === 0) return praise(choices);
  const more = missed === 1 ? 'one place at fault' : `${missed} places at fault`;
  return {
    verdict: 'wrong',
    remarks: [
      ...sound.map(remark),
      ...(sound.length === 0
        ? [{ says: [`What you point at is at fault, but there is still ${more} to find.`] }]
        : []),
    ],
  };
}

function near(length: Mm, other: number, tolerance: Mm): boolean {
  return Math.abs(length - other) <= tolerance + 1e-6;
}

/**
 * The same number in the unit that it was not read in: 12.2 typed as inches where millimeters were
 * meant, or 0.48 as millimeters.
 */
function inOtherUnit(text: string, length: Mm, unit: LengthUnit): Mm {
  const other = parseLength(text, unit === 'in' ? 'mm' : 'in');
  // Where the text names its unit, both readings are the same: only metric names have an m in them.
  const named = other.ok && Math.abs(other.mm - length) < 1e-9;
  const readAs = !named ? unit : /m/i.test(text) ? 'mm' : 'in';
  return mm(readAs === 'in' ? length / 25.4 : length * 25.4);
}

function markLength(
  question: LengthQuestion | RuleQuestion,
  text: string,
  unit: LengthUnit,
): Marked {
  const typed = text.replace(/^\s*≈/, '');
  const parsed = parseLength(typed, unit);
  if (!parsed.ok) return { verdict: 'unreadable', remarks: [{ says: [parsed.reason] }] };
  const length = parsed.mm;
  const { right, tolerance } = question;
  if (near(length, right, tolerance)) {
    return { verdict: 'right', remarks: [{ says: question.why }] };
  }
  const [closest] = question.mistakes
    .filter((mistake) => near(length, mistake.length, tolerance))
    .sort((a, b) => Math.abs(length - a.length) - Math.abs(length - b.length));
  if (closest) {
    return {
      verdict: 'wrong',
      remarks: [{ says: closest.why, misconception: closest.misconception }],
    };
  }
  if (near(inOtherUnit(typed, length, unit), right, tolerance)) {
    return {
      verdict: 'wrong',
      remarks: [
        {
          says: say`The number is right, but as it stands it means ${length}. Type the unit after the number, as in 1/2 in or 13 mm.`,
          misconception: question.wrongUnit,
        },
      ],
    };
  }
  return {
    verdict: 'wrong',
    remarks: [
      { says: length > right ? say`${length} is too much.` : say`${length} is too little.` },
      { says: question.hint },
    ],
  };
}
