import { type Mm, mm } from '../../core/length/mm.ts';
import { parseLength } from '../../core/length/parseLength.ts';
import { say } from '../../core/working/sentence.ts';
import type { ChoiceQuestion, Given, LengthQuestion, Marked, Question, Remark } from './types.ts';

/**
 * Marks an answer. The same question and answer always give the same mark.
 * @throws TypeError where the answer is of another kind than the question
 */
export function markAnswer(question: Question, given: Given): Marked {
  if (question.kind === 'length' && given.kind === 'length') return markLength(question, given);
  if (question.kind !== 'length' && given.kind === question.kind) {
    return markChoices(question, given.choices);
  }
  throw new TypeError(`markAnswer: a '${question.kind}' question got a '${given.kind}' answer`);
}

function markChoices(question: ChoiceQuestion, chosen: readonly string[]): Marked {
  if (chosen.length === 0) {
    return {
      verdict: 'unreadable',
      remarks: [{ says: ['Nothing is chosen yet. Choose, then press Check.'] }],
    };
  }
  const judged = question.choices.map((choice) => ({
    choice,
    well: choice.right === chosen.includes(choice.id),
  }));
  const remark = ({ choice }: (typeof judged)[number]): Remark => ({
    says: choice.why,
    choice: choice.id,
    ...(choice.misconception && { misconception: choice.misconception }),
  });
  if (judged.every(({ well }) => well)) {
    return {
      verdict: 'right',
      remarks: judged
        .filter(({ choice }) => choice.right)
        .map(({ choice }) => ({ says: choice.why, choice: choice.id })),
    };
  }
  // One of several: what was chosen explains itself; the right one is not given away.
  const faults = judged.filter(
    ({ choice, well }) => !well && (question.kind === 'several' || chosen.includes(choice.id)),
  );
  return { verdict: 'wrong', remarks: faults.map(remark) };
}

function near(length: Mm, other: number, tolerance: Mm): boolean {
  return Math.abs(length - other) <= tolerance + 1e-6;
}

function markLength(
  question: LengthQuestion,
  { text, unit }: Extract<Given, { kind: 'length' }>,
): Marked {
  const parsed = parseLength(text.replace(/^\s*≈/, ''), unit);
  if (!parsed.ok) return { verdict: 'unreadable', remarks: [{ says: [parsed.reason] }] };
  const length = parsed.mm;
  const { right, tolerance } = question;
  if (near(length, right, tolerance)) {
    return { verdict: 'right', remarks: [{ says: question.why }] };
  }
  // 12.2 typed as inches where millimeters were meant, or 0.48 as millimeters.
  const otherUnit = [length / 25.4, length * 25.4].find((each) => near(mm(each), right, tolerance));
  if (otherUnit !== undefined) {
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
  const [closest] = question.mistakes
    .filter((mistake) => near(length, mistake.length, tolerance))
    .sort((a, b) => Math.abs(length - a.length) - Math.abs(length - b.length));
  if (closest) {
    return {
      verdict: 'wrong',
      remarks: [{ says: closest.why, misconception: closest.misconception }],
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
