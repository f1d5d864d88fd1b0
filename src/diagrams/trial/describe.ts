import { mm } from '../../core/length/mm.ts';
import type { JointPlan } from '../../core/joint/types.ts';
import type { DryFit } from '../../core/trial/dryFit.ts';
import type { Trial } from '../../core/trial/trial.ts';
import { spokenText } from '../../core/working/plainText.ts';
import { say } from '../../core/working/sentence.ts';
import type { Unit } from '../drafting/reading.ts';
import { faultSays, verdictOf } from './says.ts';
import type { Seated } from './seat.ts';

/** The name of the drawing of one pin. */
export function titleOfTrial(plan: JointPlan, pin: number): string {
  return `The ${plan.kind} joint as it came out, cut along pin ${pin + 1}`;
}

/** The joint at one pin in sentences. */
export function describeTrial(
  trial: Trial,
  outcome: DryFit,
  seated: Seated,
  pin: number,
  unit: Unit,
): string {
  const { pin: dowel, a, b } = trial.pins[pin]!;
  const { inA, inB } = seated.seats[pin]!;
  const here = outcome.faults.filter(({ pins }) => pins.includes(pin));
  return [
    verdictOf(outcome),
    say`The pin is ${dowel.length} long: ${mm(inA)} of it is in A and ${mm(inB)} in B.`,
    say`The hole in A is ${a.depth} deep and the hole in B ${b.depth}.`,
    ...here.map((fault) => faultSays(fault, outcome)),
  ]
    .map((sentence) => spokenText(sentence, unit))
    .join(' ');
}

/** The name of the drawing of the row. */
export function titleOfRow(plan: JointPlan): string {
  return `The row of pins of the ${plan.kind} joint, cut along it and seen face to face`;
}

/** The row in sentences. */
export function describeRow(trial: Trial, outcome: DryFit, seated: Seated, unit: Unit): string {
  const { start, end } = outcome.step;
  const { opening, stuck } = seated;
  const worst = Math.max(...outcome.pins.map(({ miss }) => miss));
  return [
    say`${String(trial.pins.length)} pins along a joint of ${trial.length}.`,
    outcome.fits
      ? say`Every pin finds both its holes, with ${mm(Math.max(0, -worst))} of play to spare at the worst.`
      : say`At the worst pin the holes miss each other by ${mm(worst)} more than its play.`,
    ...(Math.max(opening.start, opening.end) <= 1e-6
      ? []
      : stuck
        ? [say`The boards stand ${mm(opening.start)} apart, held by a pin that does not go in.`]
        : [
            say`Pressed in the middle, they stand open by ${mm(opening.start)} at the start of the joint and ${mm(opening.end)} at its end${outcome.opening.rocks ? ', and rock over the pin in the middle' : ''}.`,
          ]),
    Math.max(Math.abs(start), Math.abs(end)) <= 1e-6
      ? ['The faces settle flush.']
      : say`A’s face settles ${mm(Math.abs(start))} off at the start of the joint and ${mm(Math.abs(end))} at its end.`,
  ]
    .map((sentence) => spokenText(sentence, unit))
    .join(' ');
}
