import { type Mm, mm } from '../length/mm.ts';
import { assemble } from './assemble.ts';
import type { DeviationCode } from './deviations.ts';
import { type BenchSetup, type MemberSetup, drill } from './drill.ts';
import { type Signs, signsOf } from './signs.ts';
import type { Member } from './trial.ts';

/** A cause that lies in the wood and not in the drilling. */
export type WoodCode = 'chips' | 'out-of-square' | 'cupped';

/** One thing that may have gone wrong, and the signs that it would show. */
export interface Hypothesis {
  readonly code: DeviationCode | WoodCode;
  readonly members: readonly Member[];
  /** How far off it would have to be, mm; for a lean, at the bottom of the hole. */
  readonly size: Mm;
  /** How unusual it is beside the others: what it starts with against it. */
  readonly rarity: number;
  readonly signs: Required<Signs>;
  /** How it was drilled then, where it lies in the setup. */
  readonly wrong?: BenchSetup;
}

/** Makes a hypothesis of a setup with something wrong in it: it is drilled and tried. */
export function suppose(
  code: Hypothesis['code'],
  rarity: number,
  on: readonly Member[],
  size: number,
  wrong: BenchSetup,
): Hypothesis {
  const signs = signsOfSetup(wrong);
  return { code, rarity, members: on, size: mm(Math.abs(size)), signs, wrong };
}

export const members = ['a', 'b'] as const;

/** The signs of a setup drilled and pushed together. */
export function signsOfSetup(setup: BenchSetup): Required<Signs> {
  const trial = drill(setup);
  return signsOf(trial, assemble(trial));
}

/** A setup with something changed on one board. */
export function change(setup: BenchSetup, member: Member, part: Partial<MemberSetup>): BenchSetup {
  return { ...setup, [member]: { ...setup[member], ...part } };
}

/** By how much the holes of a pin are too deep together, as far as the signs tell. */
export function depthErrors(seen: Signs, expected: Required<Signs>): readonly number[] {
  const found: number[] = [];
  if (seen.endRoom !== undefined) found.push(seen.endRoom - expected.endRoom);
  if (seen.opening !== undefined) {
    const widest = Math.max(seen.opening.start, seen.opening.end);
    const even = Math.min(seen.opening.start, seen.opening.end);
    if (widest > 0) found.push(-widest - expected.endRoom);
    if (even > 0) found.push(-even - expected.endRoom);
  }
  return found;
}
