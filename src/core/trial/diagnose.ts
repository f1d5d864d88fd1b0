import { type Mm, mm } from '../length/mm.ts';
import type { Readings } from '../tools/readings.ts';
import type { Sentence } from '../working/sentence.ts';
import { adviceFor } from './advice.ts';
import type { DeviationCode } from './deviations.ts';
import type { BenchSetup } from './drill.ts';
import { hypothesesFor } from './hypotheses.ts';
import { type Hypothesis, type WoodCode, signsOfSetup } from './hypothesis.ts';
import { requireNumber } from './require.ts';
import { type Signs, disagreement } from './signs.ts';
import type { Member } from './trial.ts';

/** Something that may have gone wrong with a joint on the bench. */
export interface Diagnosis {
  readonly code: DeviationCode | WoodCode;
  readonly members: readonly Member[];
  /** How far off it would have to be to show these signs, mm. */
  readonly size: Mm;
  /** True where it explains all that was seen, within what a rule can measure. */
  readonly explainsAll: boolean;
  readonly message: Sentence;
  /** What to look at or measure, to tell it from the others. */
  readonly check: Sentence;
  /** What to do with this joint, in numbers. */
  readonly correction: Sentence;
}

/** Disagreement under this is put down to measuring. */
const measuring = 0.25;

/**
 * What went wrong: from what a dry fit on the bench shows, the causes that fit, drilling or not,
 * the likeliest first. Each mistake is drilled and tried, with the size that the signs call for,
 * and kept where it explains at least half of what is wrong; of two that explain as much, the
 * commoner comes first. How common each is, is from memory. Empty where the signs are those of a
 * sound joint, or where nothing explains them.
 *
 * @param setup what was meant, with guide and bit as measured: `soundSetup(plan)` and its changes
 * @param signs what was seen; whatever was not looked at is left out
 * @param pins readings of the pins, where they were measured: they bear out or speak against pins
 *   that are too thick or too thin
 * @throws TypeError for a sign that is not a finite number; it names the field
 */
export function diagnose(setup: BenchSetup, signs: Signs, pins?: Readings): readonly Diagnosis[] {
  checkSigns(signs);
  const wrong = disagreement(signsOfSetup(setup), signs);
  if (wrong === 0) return [];
  const best = new Map<Hypothesis['code'], { readonly of: Hypothesis; readonly score: number }>();
  for (const of of hypothesesFor(setup, signs, pins)) {
    const left = disagreement(of.signs, signs);
    if (left > wrong / 2) continue;
    const score = left + of.rarity;
    const rival = best.get(of.code);
    if (rival === undefined || score < rival.score) best.set(of.code, { of, score });
  }
  return [...best.values()]
    .sort((one, other) => one.score - other.score)
    .map(({ of }) => ({
      code: of.code,
      members: of.members,
      size: of.size,
      explainsAll: disagreement(of.signs, signs) <= measuring,
      ...adviceFor(of, setup, pins),
    }));
}

function checkSigns(signs: Signs): void {
  const { opening, step, endsOff, through, endRoom } = signs;
  const lengths = {
    'opening.start': opening?.start,
    'opening.end': opening?.end,
    'step.start': step?.start,
    'step.end': step?.end,
    endsOff,
    endRoom,
    'through.a.by': through?.a.by,
    'through.b.by': through?.b.by,
  };
  for (const [field, value] of Object.entries(lengths)) {
    if (value !== undefined) requireNumber(field, mm(value));
  }
}
