import type { JointPlan } from '../joint/types.ts';
import type { Mm } from '../length/mm.ts';
import { SAME_STOP } from './orderOfWork.ts';

/** Holes drilled one after another in one board, with nothing set in between. Lengths in mm. */
export interface Run {
  /** Unique among the runs of a piece: '1A', or '1A-2' for a single hole. */
  readonly id: string;
  /** The board by its name; one board may have rows of several joints. */
  readonly board: string;
  readonly holes: number;
  readonly bit: Mm;
  /** Length of the bushing; its bore is the bit's. */
  readonly bushing: Mm;
  readonly stop: Mm;
}

/** What has to be set before a run. A bit that was changed always takes its collar with it. */
export interface Setting {
  readonly bit: boolean;
  readonly bushing: boolean;
  readonly collar: boolean;
}

/** A joint of a piece: its number, and its boards by their names. */
export interface NamedJoint {
  readonly number: number;
  readonly plan: JointPlan;
  readonly boardA: string;
  readonly boardB: string;
}

/** The two runs of a joint: all its holes in A, all its holes in B. */
export function runsOf({ number, plan, boardA, boardB }: NamedJoint): readonly [Run, Run] {
  const { bit, guide } = plan.spec;
  const run = (member: 'a' | 'b', board: string): Run => ({
    id: `${number}${member.toUpperCase()}`,
    board,
    holes: plan.holes.length,
    bit: bit.diameter,
    bushing: guide.bushing,
    stop: plan[member].stop,
  });
  return [run('a', boardA), run('b', boardB)];
}

const sameBit = (one: Run, other: Run) => one.bit === other.bit;
const sameBushing = (one: Run, other: Run) => sameBit(one, other) && one.bushing === other.bushing;
const sameStop = (one: Run, other: Run) =>
  sameBushing(one, other) && Math.abs(one.stop - other.stop) < SAME_STOP;

/** What is set before each run of an order; before the first, everything. */
export function settingsOf(runs: readonly Run[]): readonly Setting[] {
  return runs.map((run, i) => {
    const before = runs[i - 1];
    if (before === undefined) return { bit: true, bushing: true, collar: true };
    return {
      bit: !sameBit(before, run),
      bushing: !sameBushing(before, run),
      collar: !sameStop(before, run),
    };
  });
}

/** The boards that lie half done while another board is drilled, run by run. */
export function halfDone(runs: readonly Run[]): readonly (readonly string[])[] {
  const boards = [...new Set(runs.map(({ board }) => board))];
  return runs.map((run, i) =>
    boards.filter((board) => {
      const own = runs.flatMap((each, at) => (each.board === board ? [at] : []));
      return board !== run.board && own[0]! < i && own.at(-1)! > i;
    }),
  );
}

/**
 * The runs with the fewest settings: those of one bit together, within a bit those of one
 * bushing, within that those of one stop. What is alike keeps its order.
 * @example fewestSettings(runsOf(left).concat(runsOf(right))) // both A, then both B
 */
export function fewestSettings(runs: readonly Run[]): readonly Run[] {
  const first = (alike: (one: Run, other: Run) => boolean, run: Run) =>
    runs.findIndex((each) => alike(each, run));
  return runs.toSorted(
    (one, other) =>
      first(sameBit, one) - first(sameBit, other) ||
      first(sameBushing, one) - first(sameBushing, other) ||
      first(sameStop, one) - first(sameStop, other),
  );
}

/** The runs board by board: every board is finished before the next is begun. */
export function boardByBoard(runs: readonly Run[]): readonly Run[] {
  const first = (board: string) => runs.findIndex((each) => each.board === board);
  return runs.toSorted((one, other) => first(one.board) - first(other.board));
}

/** A joint's runs hole by hole: pin 1 in A and in B, pin 2 in A and in B, and so on. */
export function holeByHole([a, b]: readonly [Run, Run]): readonly Run[] {
  return Array.from({ length: a.holes }, (_, j) =>
    [a, b].map((run): Run => ({ ...run, id: `${run.id}-${j + 1}`, holes: 1 })),
  ).flat();
}
