import type { Mm } from '../length/mm.ts';
import { TOLERANCE } from '../length/mm.ts';
import { type Sentence, say } from '../working/sentence.ts';
import { type Assembly, assemble } from './assemble.ts';
import { type Deviation, type DeviationCode, type Setting, deviationsOf } from './deviations.ts';
import { type BenchSetup, drill } from './drill.ts';
import { type Fault, type FaultCode, faultsOf } from './faults.ts';
import type { Member, Trial } from './trial.ts';

/** Why a joint has a fault, and the one change that mends it. */
export interface Cause {
  /** The deviation from the plan; `holes` where nobody knows how they were drilled, or the plan itself does it. */
  readonly code: DeviationCode | 'holes';
  /** The setting that made it; null for `holes`. */
  readonly setting: Setting | null;
  readonly members: readonly Member[];
  /** How far off it is, mm. */
  readonly size: Mm;
  /** The faults that it makes or makes worse. */
  readonly faults: readonly FaultCode[];
  readonly message: Sentence;
  readonly remedy: Sentence;
}

/** What comes of pushing two drilled boards together dry, and why. */
export interface DryFit extends Assembly {
  readonly faults: readonly Fault[];
  readonly causes: readonly Cause[];
}

/**
 * Pushes two drilled boards together dry and says what comes of it, what is wrong and why: each
 * fault with the setting that made it, its size, and the one change that mends it. A deviation
 * from the plan is a cause where it makes a fault by itself, or where putting it right makes a
 * fault smaller; one that does no harm is not mentioned. Throws a TypeError or a RangeError that
 * names what is out of range.
 *
 * Source: geometry.
 * @example dryFit(drill(soundSetup(plan))).closes // true
 */
export function dryFit(trial: Trial): DryFit {
  const assembly = assemble(trial);
  const faults = faultsOf(trial, assembly);
  return { ...assembly, faults, causes: causesOf(trial, faults) };
}

function causesOf(trial: Trial, faults: readonly Fault[]): readonly Cause[] {
  if (faults.length === 0) return [];
  const { setup } = trial;
  if (setup === undefined) return faults.map(causeInHoles);
  const deviations = deviationsOf(setup);
  const mended = (some: readonly Deviation[]): BenchSetup =>
    some.reduce((better, { mend }) => mend(better), setup);
  const faultsWithout = (some: readonly Deviation[]): readonly Fault[] => {
    const other = drill(mended(some));
    return faultsOf(other, assemble(other));
  };
  const unavoidable = deviations.length === 0 ? faults : faultsWithout(deviations);
  const causes = deviations.flatMap((deviation): readonly Cause[] => {
    const others = deviations.filter((each) => each !== deviation);
    const alone = others.length === 0 ? faults : faultsWithout(others);
    const cured = faultsWithout([deviation]);
    const made = new Set([
      ...alone.filter((fault) => worse(fault, unavoidable)).map(({ code }) => code),
      ...faults.filter((fault) => worse(fault, cured)).map(({ code }) => code),
    ]);
    // A fault that only the others' mistakes bring about is not this one's.
    const codes = faults.map(({ code }) => code).filter((code) => made.has(code));
    if (codes.length === 0) return [];
    const { code, setting, members, size, message, remedy } = deviation;
    return [{ code, setting, members, size, message, remedy, faults: [...new Set(codes)] }];
  });
  const explained = new Set(causes.flatMap((cause) => cause.faults));
  return [...causes, ...faults.filter(({ code }) => !explained.has(code)).map(causeInHoles)];
}

/** Whether a fault is worse than its like among others, or has none there. */
function worse(fault: Fault, others: readonly Fault[]): boolean {
  const like = others.find(({ code, member }) => code === fault.code && member === fault.member);
  return (
    like === undefined || fault.size > like.size + TOLERANCE || fault.pins.length > like.pins.length
  );
}

/** The cause of a fault where only the holes themselves are known. */
function causeInHoles(fault: Fault): Cause {
  const { code, size, member } = fault;
  const members: readonly Member[] = member === undefined ? ['a', 'b'] : [member];
  const board = `board ${member?.toUpperCase() ?? ''}`;
  const [message, remedy] = ((): readonly [Sentence, Sentence] => {
    switch (code) {
      case 'never-left-bushing':
        return [
          say`The bit never left the bushing over ${board}.`,
          say`Set the stop at bushing, gap and hole depth together.`,
        ];
      case 'gap':
        return [
          say`A pin is ${size} longer than its two holes together: the joint stays open by that.`,
          say`Drill one of its holes ${size} deeper, and as much again as the end room you want; or shorten the pin.`,
        ];
      case 'short-end-room':
        return [
          say`There is ${size} less room past the pins' ends than there should be.`,
          say`Drill a hole of each pin ${size} deeper, or shorten the pins by that.`,
        ];
      case 'long-end-room':
        return [
          say`There is ${size} more room past the pins' ends than was planned: a pin can slide into one hole and hold less in the other.`,
          say`Mark each pin at the length it should go in, and stop it there.`,
        ];
      case 'breakthrough':
        return [
          say`The bit's point came ${size} out of the far side of ${board}.`,
          say`Set the stop back by that, and by the wood you want to leave.`,
        ];
      case 'tight':
        return [
          say`The pin is ${size} thicker than its hole in ${board}.`,
          say`Ease the pins, or drill with the bit that belongs to them.`,
        ];
      case 'loose':
        return [
          say`The pin has ${size} of clearance in ${board}: it rattles, and the glue line would be thick.`,
          say`Take pins that belong to the bit.`,
        ];
      case 'binds':
        return [
          say`The two holes of a pin lean apart: they drive its end ${size} too far aside.`,
          say`Drill square to the wood: clamp the guide flat.`,
        ];
      case 'misses':
        return [
          say`The holes of the two boards miss each other: the worst pin stays ${size} outside its play.`,
          say`Plug the holes of one board and drill it again from the other, with center points.`,
        ];
      case 'step':
        return [
          say`One face stands ${size} proud of the other.`,
          say`Hold the guide against the same face of both boards.`,
        ];
      case 'off-place':
        return [
          say`The boards close ${size} from their place along the joint: their ends do not line up.`,
          say`Measure the holes of both boards from the same end.`,
        ];
    }
  })();
  return { code: 'holes', setting: null, members, size, faults: [code], message, remedy };
}
