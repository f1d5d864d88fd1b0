import type { JointKind, System } from '../../../core/joint/types.ts';
import { type Mm, mm } from '../../../core/length/mm.ts';
import { type Deviation, deviationsOf } from '../../../core/trial/deviations.ts';
import { type BenchSetup, type MemberSetup, drill } from '../../../core/trial/drill.ts';
import { type Cause, dryFit } from '../../../core/trial/dryFit.ts';
import {
  type StartState,
  bitOf,
  startSetup,
  startStates,
  withoutStop,
} from '../../../core/trial/startStates.ts';
import type { MeasuredTools } from '../../../core/tools/toolSet.ts';
import type { Member } from '../../../core/trial/trial.ts';
import type { Ending } from '../../../diagrams/trial/says.ts';

/** How far a trial has come: being set up, drilled, or pushed together. */
export type Stage = 'set up' | 'drilled' | 'together';

/** A start by its name in a link. Throws a RangeError for a name that is not on the list. */
export function startOf(id: string): StartState {
  const found = startStates.find((start) => start.id === id);
  if (found === undefined) throw new RangeError(`there is no start called ${id}`);
  return found;
}

/** One trial: a job, how it is set up, and how far it has come. Any change undoes the drilling. */
export class Run {
  #start = $state.raw(startOf('sound'));
  #kind = $state<JointKind>('corner');
  #system = $state<System>('in');
  #setup = $state.raw<BenchSetup>(startSetup(startOf('sound'), 'corner', 'in'));
  #changed = $state(false);
  #tools = $state.raw<MeasuredTools | undefined>();
  /** Collars as they were before they were taken off, so that going back loses nothing. */
  #collars: Partial<Record<Member, Mm>> = {};
  stage = $state<Stage>('set up');
  /** What the reader expects, where they said so. */
  guess = $state<Ending | null>(null);

  readonly trial = $derived.by(() => drill(this.#setup));
  readonly outcome = $derived.by(() => dryFit(this.trial));

  /** The boards of the job with no hole in them yet. */
  readonly undrilled = $derived.by(() => {
    const { a, b } = this.#setup;
    const none = { stop: { collar: mm(0) } };
    return drill({ ...this.#setup, a: { ...a, ...none }, b: { ...b, ...none }, slip: null });
  });

  constructor(start: StartState) {
    this.begin(start, start.kinds[0] ?? 'corner', 'in');
  }

  get start(): StartState {
    return this.#start;
  }

  get kind(): JointKind {
    return this.#kind;
  }

  get system(): System {
    return this.#system;
  }

  get setup(): BenchSetup {
    return this.#setup;
  }

  /** True once something is not as the start left it. */
  get changed(): boolean {
    return this.#changed;
  }

  /** Puts a start on the bench. */
  begin(start: StartState, kind: JointKind, system: System): void {
    this.#start = start;
    this.#kind = kind;
    this.#system = system;
    this.#setup = startSetup(start, kind, system, this.#tools);
    this.#collars = {};
    this.#changed = false;
    this.#undrill();
  }

  /** True while the reader's own tools serve instead of the shop's. */
  get ownTools(): boolean {
    return this.#tools !== undefined;
  }

  /**
   * Takes the reader's own tools for the job, or with nothing given the shop's again; the job
   * starts over. False where the job can't be done with them: then nothing changes.
   */
  takeTools(tools: MeasuredTools | undefined): boolean {
    if (!startSetup(this.#start, this.#kind, this.#system, tools).plan.ok) return false;
    this.#tools = tools;
    this.begin(this.#start, this.#kind, this.#system);
    return true;
  }

  /** Another start: in the joint at hand where it shows there. */
  setStart(start: StartState): void {
    const kind = start.kinds.includes(this.#kind) ? this.#kind : (start.kinds[0] ?? 'corner');
    this.begin(start, kind, this.#system);
  }

  set(change: Partial<BenchSetup>): void {
    this.#setup = { ...this.#setup, ...change };
    this.#changed = true;
    this.#undrill();
  }

  setMember(member: Member, change: Partial<MemberSetup>): void {
    this.set({ [member]: { ...this.#setup[member], ...change } });
  }

  /** One bit drills both boards. */
  setBit(diameter: Mm): void {
    const bit = bitOf(this.#setup.plan, diameter);
    const { a, b } = this.#setup;
    this.set({ a: { ...a, bit }, b: { ...b, bit } });
  }

  /** A collar on the bit for this board, or none. */
  setStopped(member: Member, stopped: boolean): void {
    const { stop } = this.#setup[member];
    if ('collar' in stop) this.#collars[member] = stop.collar;
    if (!stopped) {
      this.set(withoutStop(this.#setup, member));
      return;
    }
    const { bushing, standoff } = this.#setup.guide;
    const collar = this.#collars[member] ?? ((bushing + standoff) as Mm);
    this.setMember(member, { stop: { collar } });
  }

  setMark(member: Member, hole: number, mark: Mm): void {
    this.setMember(member, { marks: this.#setup[member].marks.with(hole, mark) });
  }

  /** The one change that mends a cause; undefined where no setting made it. */
  mendOf(cause: Cause): Deviation['mend'] | undefined {
    return deviationsOf(this.#setup).find(
      ({ code, members }) => code === cause.code && members.join() === cause.members.join(),
    )?.mend;
  }

  /** Makes just that change, drills again and pushes together. */
  mend(cause: Cause): void {
    const mend = this.mendOf(cause);
    if (mend === undefined) return;
    this.#setup = mend(this.#setup);
    this.#changed = true;
    this.guess = null;
    this.stage = 'together';
  }

  #undrill(): void {
    this.stage = 'set up';
    this.guess = null;
  }
}
