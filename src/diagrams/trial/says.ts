import type { DryFit } from '../../core/trial/dryFit.ts';
import type { Fault } from '../../core/trial/faults.ts';
import { type Sentence, say } from '../../core/working/sentence.ts';

function pinsOf(fault: Fault, outOf: number): string {
  const numbers = fault.pins.map((pin) => pin + 1);
  if (numbers.length === outOf) return outOf === 1 ? 'the pin' : 'every pin';
  const last = numbers.at(-1) ?? 0;
  return numbers.length === 1
    ? `pin ${last}`
    : `pins ${numbers.slice(0, -1).join(', ')} and ${last}`;
}

/** One fault of a joint as it is seen and felt, with its size. */
export function faultSays(fault: Fault, outcome: DryFit): Sentence {
  const { size } = fault;
  const outOf = outcome.pins.length;
  // Boards that don't meet don't show yet how they would lie.
  const met = !endingsOf(outcome).includes('refuses');
  const board = fault.member?.toUpperCase() ?? '';
  const at = pinsOf(fault, outOf);
  switch (fault.code) {
    case 'never-left-bushing':
      return say`Board ${board} has no hole at ${at}: the bit never left the bushing.`;
    case 'breakthrough':
      return say`The bit’s point comes ${size} out of the far side of board ${board}, at ${at}.`;
    case 'gap':
      return say`A gap of ${size} at the joint: it is held open at ${at}.`;
    case 'short-end-room':
      return say`Too little room past the ends of ${at}, by ${size}: glue and chips have nowhere to go.`;
    case 'long-end-room':
      return say`There is ${size} more room than planned past the ends of ${at}: a pin can slide in too far on one side and hold too little on the other.`;
    case 'tight':
      return say`The pin is ${size} thicker than its hole in board ${board}: it binds at the mouth.`;
    case 'loose':
      return say`The pin rattles in board ${board}, ${size} thinner than its hole: the glue line would be too thick.`;
    case 'binds':
      return say`The two holes lean apart at ${at}: pushed home, the pin’s end would be ${size} out of line, so it binds.`;
    case 'misses':
      return say`The holes miss each other: ${at} would have to move ${size} more than its play allows.`;
    case 'step':
      return say`A step of ${size}: one show face ${met ? 'stands' : 'would stand'} proud of the other.`;
    case 'off-place':
      return say`The boards ${met ? 'close' : 'would close'} ${size} out of place along the joint: their ends do not line up.`;
  }
}

/** What came of a trial. */
export type Ending = 'closes' | 'open' | 'refuses' | 'step' | 'through';

/** Everything that came of it; `closes` only where the joint closes flush, in place and unharmed. */
export function endingsOf(outcome: DryFit): readonly Ending[] {
  const has = (...codes: readonly Fault['code'][]): boolean =>
    outcome.faults.some(({ code }) => codes.includes(code));
  const endings: Ending[] = [];
  if (has('misses', 'tight', 'binds')) endings.push('refuses');
  if (has('gap')) endings.push('open');
  if (has('breakthrough')) endings.push('through');
  if (has('step', 'off-place')) endings.push('step');
  return endings.length === 0 ? ['closes'] : endings;
}

/** The result in a sentence, for the eye and for a screen reader. */
export function verdictOf(outcome: DryFit): Sentence {
  const [ending] = endingsOf(outcome);
  const harmless = outcome.faults.length === 0;
  switch (ending) {
    case 'refuses':
      return say`The joint does not go together.`;
    case 'open':
      return say`The joint stays open by ${outcome.gap}.`;
    case 'through':
      return say`The joint closes, but a point came through.`;
    case 'step':
      return say`The joint closes, but the boards do not line up.`;
    default:
      return harmless
        ? say`The joint closes, with room past its pins.`
        : say`The joint closes, but it is not right.`;
  }
}
