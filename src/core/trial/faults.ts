import { fitBands } from '../fit/fit.ts';
import { type Mm, TOLERANCE, lessThan, mm } from '../length/mm.ts';
import type { Assembly, PinOutcome } from './assemble.ts';
import type { Member, Trial } from './trial.ts';

export type FaultCode =
  /** A hole has no depth at all. */
  | 'never-left-bushing'
  /** The pins are too long for their holes: the joint stands open. */
  | 'gap'
  /** Less room past the pins' ends than was planned: none for glue and chips. */
  | 'short-end-room'
  /** More room past the pins' ends than was planned. */
  | 'long-end-room'
  /** The bit's point came out of the far side. */
  | 'breakthrough'
  /** A pin is thicker than its hole. */
  | 'tight'
  /** A pin rattles in its hole: the glue line would be thick. */
  | 'loose'
  /** A pin's two holes lean apart. */
  | 'binds'
  /** The holes of the two boards do not meet. */
  | 'misses'
  /** One show face stands proud of the other. */
  | 'step'
  /** The boards close, but slid along the joint: their ends do not line up. */
  | 'off-place';

/** Something wrong with a joint. */
export interface Fault {
  readonly code: FaultCode;
  /** mm; what it measures depends on the fault: a gap, wood broken through, a step. */
  readonly size: Mm;
  /** The board, where one board has it. */
  readonly member?: Member;
  /** The pins or holes that have it, counted from 0. */
  readonly pins: readonly number[];
}

/** A step, a slide or a change of end room under this is not worth a word, mm (from memory: a fingertip feels a tenth). */
export const noticeable = mm(0.1);

const members = ['a', 'b'] as const;

/** What is wrong with an assembly, the worst first. */
export function faultsOf(trial: Trial, assembly: Assembly): readonly Fault[] {
  const { pins } = assembly;
  const found: Fault[] = [];
  const add = (code: FaultCode, size: number, at: readonly number[], member?: Member): void => {
    if (at.length > 0) found.push({ code, size: mm(size), pins: at, ...(member && { member }) });
  };
  const where = (test: (pin: PinOutcome) => boolean): readonly number[] =>
    pins.flatMap((pin, j) => (test(pin) ? [j] : []));
  const greatest = (size: (pin: PinOutcome) => number): number => Math.max(...pins.map(size));

  for (const member of members) {
    const empty = trial.pins.flatMap((pin, j) => (pin[member].depth <= TOLERANCE ? [j] : []));
    add('never-left-bushing', 0, empty, member);
    add(
      'breakthrough',
      greatest(({ woodLeft }) => -woodLeft[member]),
      where(({ woodLeft }) => lessThan(woodLeft[member], 0)),
      member,
    );
  }
  add(
    'gap',
    assembly.gap,
    where(({ endRoom }) => lessThan(endRoom, 0)),
  );
  for (const member of members) {
    add(
      'tight',
      greatest((pin) => -pin.fit[member].clearance),
      where((pin) => pin.fit[member].verdict === 'ease the pin'),
      member,
    );
  }
  add(
    'misses',
    assembly.miss,
    where(({ miss }) => !assembly.fits && miss > TOLERANCE),
  );
  add(
    'binds',
    greatest(({ bindsBy }) => bindsBy),
    where(({ binds }) => binds),
  );
  const everyPin = pins.map((_, j) => j);
  const step = Math.max(Math.abs(assembly.step.start), Math.abs(assembly.step.end));
  if (step >= noticeable) add('step', step, everyPin);
  const slid = Math.abs(assembly.shift.along);
  if (slid >= noticeable) add('off-place', slid, everyPin);
  for (const member of members) {
    add(
      'loose',
      greatest((pin) => pin.fit[member].clearance),
      where((pin) => lessThan(fitBands.goodTo, pin.fit[member].clearance)),
      member,
    );
  }
  const planned = plannedEndRoom(trial);
  const short = (pin: PinOutcome): number => planned - Math.max(0, pin.endRoom);
  add(
    'short-end-room',
    greatest(short),
    where((pin) => short(pin) >= noticeable),
  );
  add(
    'long-end-room',
    greatest((pin) => -short(pin)),
    where((pin) => -short(pin) >= noticeable),
  );
  return found;
}

/** Room past a pin's two ends together as planned; without a plan, just enough to notice. */
function plannedEndRoom({ setup }: Trial): number {
  if (setup === undefined) return noticeable;
  const { plan } = setup;
  return plan.a.holeDepth + plan.b.holeDepth - (plan.pin?.length ?? 0);
}
