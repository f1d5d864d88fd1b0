import { type Mm, mm } from '../length/mm.ts';
import type { Assembly } from './assemble.ts';
import { faultsOf } from './faults.ts';
import type { Member, Trial } from './trial.ts';

/** How many of a board's holes came through, and by how much at most, mm. */
export interface Through {
  readonly holes: 'none' | 'some' | 'all';
  /** Leave out where nobody measured it. */
  readonly by?: Mm;
}

/**
 * What a dry fit on the bench shows. Whatever was not looked at is left out; lengths are mm.
 */
export interface Signs {
  /** How far the joint stands open at its two ends, pressed in the middle. */
  readonly opening?: { readonly start: Mm; readonly end: Mm };
  /** It stands open, and rocks over a pin in the middle. */
  readonly rocks?: boolean;
  /** It stands open in the middle while its ends touch. */
  readonly openInMiddle?: boolean;
  /** How far B's show face stands proud of A's at the two ends; negative, A's stands proud. */
  readonly step?: { readonly start: Mm; readonly end: Mm };
  /** How far A's end has moved along the joint from where it belongs. */
  readonly endsOff?: Mm;
  readonly through?: Readonly<Record<Member, Through>>;
  /** How the pins go into their holes, board by board. */
  readonly pins?: 'slide' | 'bind' | 'rattle';
  /** Whether every pin finds its hole in the other board. */
  readonly meets?: boolean;
  /** Least depth of a pin's two holes together beyond its length, by a depth gauge; negative: too shallow. */
  readonly endRoom?: Mm;
}

/** The signs that an assembly would show to someone who looks at everything. */
export function signsOf(trial: Trial, assembly: Assembly): Required<Signs> {
  const faults = faultsOf(trial, assembly);
  const has = (code: string): boolean => faults.some((fault) => fault.code === code);
  const through = (member: Member): Through => {
    const out = assembly.pins.map(({ woodLeft }) => -woodLeft[member]);
    const holes = out.filter((by) => by > 1e-6).length;
    return {
      holes: holes === 0 ? 'none' : holes === out.length ? 'all' : 'some',
      by: mm(Math.max(0, ...out)),
    };
  };
  return {
    opening: { start: assembly.opening.start, end: assembly.opening.end },
    rocks: assembly.opening.rocks,
    openInMiddle: false,
    step: assembly.step,
    endsOff: assembly.shift.along,
    through: { a: through('a'), b: through('b') },
    pins: has('tight') || has('binds') ? 'bind' : has('loose') ? 'rattle' : 'slide',
    meets: assembly.fits,
    endRoom: assembly.endRoom,
  };
}

/** An error of a rule or of an eye in measuring, mm: so much is no contradiction. */
const slack = 0.1;

/** How badly two lengths disagree, from 0 to 1; half a millimeter is half. */
function apart(expected: number, seen: number): number {
  const off = Math.max(0, Math.abs(expected - seen) - slack);
  return off / (off + 0.5);
}

/** The same for depths and gaps, which are measured less well the larger they are: half is a seventh more. */
function deepApart(expected: number, seen: number): number {
  const off = Math.max(0, Math.abs(expected - seen) - slack);
  return off / (off + 0.5 + Math.abs(seen) / 7);
}

/**
 * How badly the signs seen disagree with those expected: 0 where they agree, about 1 for each
 * sign that is quite wrong. What was not looked at counts for nothing.
 */
export function disagreement(expected: Required<Signs>, seen: Signs): number {
  let total = 0;
  if (seen.opening !== undefined) {
    total += deepApart(expected.opening.start, seen.opening.start);
    total += deepApart(expected.opening.end, seen.opening.end);
  }
  if (seen.rocks !== undefined && seen.rocks !== expected.rocks) total += 0.5;
  if (seen.openInMiddle !== undefined && seen.openInMiddle !== expected.openInMiddle) total += 1;
  if (seen.step !== undefined) {
    total += apart(expected.step.start, seen.step.start);
    total += apart(expected.step.end, seen.step.end);
  }
  if (seen.endsOff !== undefined) total += apart(expected.endsOff, seen.endsOff);
  if (seen.through !== undefined) {
    for (const member of ['a', 'b'] as const) {
      const one = expected.through[member];
      const other = seen.through[member];
      if (one.holes !== other.holes) {
        total += one.holes === 'none' || other.holes === 'none' ? 1 : 0.5;
      }
      if (other.by !== undefined) total += deepApart(one.by ?? 0, other.by);
    }
  }
  if (seen.pins !== undefined && seen.pins !== expected.pins) total += 1;
  if (seen.meets !== undefined && seen.meets !== expected.meets) total += 1;
  if (seen.endRoom !== undefined) total += deepApart(expected.endRoom, seen.endRoom);
  return total;
}
