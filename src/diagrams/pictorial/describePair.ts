import type { BenchSetup, MemberSetup } from '../../core/trial/drill.ts';
import type { Trial } from '../../core/trial/trial.ts';
import { type Unit, spoken } from '../drafting/reading.ts';

function boardSays(letter: string, { face, end }: MemberSetup): string {
  const guide = face === 'reference' ? 'its marked face' : 'its other face';
  const rule = end === 'reference' ? 'its marked end' : 'its other end';
  return `On board ${letter} the guide lay against ${guide} and the rule was hooked on ${rule}.`;
}

/** A drilled pair in sentences: how each board was drilled, and where the holes are. */
export function describePair(setup: BenchSetup, trial: Trial, unit: Unit): string {
  const length = spoken(unit);
  const holes = trial.pins.map(
    (pin, i) =>
      `Pin ${i + 1}: ${length(pin.a.along)} from A's marked end and ${length(pin.a.across)} from its marked face in A; ${length(pin.b.along)} and ${length(pin.b.across)} in B.`,
  );
  return [
    'Boards A and B lie flat, edge to edge but apart, their marked faces up.',
    boardSays('A', setup.a),
    boardSays('B', setup.b),
    ...holes,
  ].join(' ');
}
