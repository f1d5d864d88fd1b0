import {
  type Toolbox,
  emptyToolbox,
  readToolbox,
  writeToolbox,
} from '../../../core/tools/keptTools.ts';
import {
  type MeasuredTools,
  type ToolSet,
  isUnmeasured,
  measuredTools,
  toolLimits,
  unmeasured,
} from '../../../core/tools/toolSet.ts';
import { href } from '../../../href.ts';

/** Names carry the site's folder: two sites may share one address. */
const KEY = href('/my-tools');

/**
 * Why what is set can't be kept: `unkept`: the browser keeps nothing (a private window, a full
 * disk); `newer`: a later version of this page kept its own here, and that is left alone.
 */
export type KeepingProblem = 'none' | 'unkept' | 'newer';

/**
 * The tools as measured on this machine, one for all islands of a page. They are kept in the
 * browser's storage and nowhere else. `open` it once a page is alive: until then it is empty, as
 * the page was built.
 */
class MyTools {
  #toolbox = $state.raw<Toolbox>(emptyToolbox);
  #problem = $state<KeepingProblem>('none');
  #opened = $state(false);
  /** Counts what came from outside the fields, so that they can start anew. */
  #turn = $state(0);

  /** Reads what is kept, and keeps in step with other tabs. Does nothing when opened already. */
  open(): void {
    if (this.#opened) return;
    this.#opened = true;
    this.#read();
    addEventListener('storage', ({ key }) => {
      if (key === null || key === KEY) this.#read();
    });
  }

  get opened(): boolean {
    return this.#opened;
  }

  get problem(): KeepingProblem {
    return this.#problem;
  }

  get turn(): number {
    return this.#turn;
  }

  /** All sets; at least the one that is being filled in. */
  get sets(): readonly ToolSet[] {
    return this.#toolbox.sets.length > 0 ? this.#toolbox.sets : [unmeasured('My tools')];
  }

  get inUse(): number {
    return this.#toolbox.inUse;
  }

  /** The set in use. */
  get current(): ToolSet {
    return this.sets[this.inUse] ?? unmeasured('My tools');
  }

  /** Whether there is anything to use. */
  get measured(): boolean {
    return !isUnmeasured(this.current);
  }

  /** Changes the set in use. */
  change(part: Partial<ToolSet>): void {
    const changed = { ...this.current, ...part };
    this.#keep({
      ...this.#toolbox,
      sets: this.sets.map((set, k) => (k === this.inUse ? changed : set)),
    });
  }

  /** Takes another set. */
  use(place: number): void {
    this.#turn += 1;
    this.#keep({ ...this.#toolbox, inUse: place });
  }

  get hasRoom(): boolean {
    return this.sets.length < toolLimits.sets;
  }

  /** Starts another set, and takes it. */
  add(): void {
    const sets = [...this.sets, unmeasured(`Tools ${this.sets.length + 1}`)];
    this.#turn += 1;
    this.#keep({ sets, inUse: sets.length - 1 });
  }

  /** Forgets every set, here and in the browser's storage, whatever is in it. */
  forget(): void {
    this.#turn += 1;
    this.#toolbox = emptyToolbox;
    try {
      localStorage.removeItem(KEY);
      this.#problem = 'none';
    } catch {
      this.#problem = 'unkept';
    }
  }

  #read(): void {
    let kept: string | null = null;
    try {
      kept = localStorage.getItem(KEY);
    } catch {
      this.#problem = 'unkept';
    }
    const read = kept === null ? null : readToolbox(kept);
    this.#toolbox = read?.ok ? read.toolbox : emptyToolbox;
    if (read !== null) this.#problem = !read.ok && read.why === 'newer' ? 'newer' : 'none';
    this.#turn += 1;
  }

  #keep(toolbox: Toolbox): void {
    this.#toolbox = toolbox;
    if (this.#problem === 'newer') return;
    try {
      localStorage.setItem(KEY, writeToolbox(toolbox));
      this.#problem = 'none';
    } catch {
      this.#problem = 'unkept';
    }
  }
}

export const myTools = new MyTools();

/**
 * The set in use for a trial run, in its terms: guide, bit and pin as far as they were measured;
 * null where nothing was. Call it in the browser: it reads what is kept there.
 */
export function toolsForTrial(): MeasuredTools | null {
  myTools.open();
  return myTools.measured ? measuredTools(myTools.current) : null;
}
