import {
  type Deed,
  EVENT_VERSION,
  type Happened,
  type ProgressEvent,
} from '../../practice/progress/events.ts';
import { type EventStorage, memoryStorage } from '../../practice/progress/storage.ts';
import { type Stored, readStored, union } from '../../practice/progress/stored.ts';
import { BANK, CALC } from '../../practice/versions.ts';
import { keep, readKept } from '../keptHere.ts';
import { indexedDbStorage } from './indexedDbStorage.ts';

/** Who is learning at this machine, by the learner's id. */
const LEARNER = 'learner';

/** What a tab tells the others. */
type News = 'added' | 'forgotten';

function randomId(): string {
  // Not randomUUID: it is missing where a school's own server has no https.
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * Why what is done now is not kept; empty while it is. `Trouble.astro` has the sentences. `full`:
 * there is no room; `newer`: a later edition laid the database out; `private`: the browser keeps
 * nothing.
 */
export type Trouble = '' | 'full' | 'newer' | 'private';

function troubleOf(fault: unknown): Trouble {
  const { name } = fault as DOMException;
  return name === 'QuotaExceededError' ? 'full' : name === 'VersionError' ? 'newer' : 'private';
}

/**
 * What the learner at this machine has done: one log for all scripts of a page, in step with other
 * tabs. What can't be kept is held as long as the page is open, and tried again with the next.
 */
class Log {
  /** What the learner has done, in the order in which it happened. */
  events: readonly ProgressEvent[] = [];
  trouble: Trouble = '';

  #storage: EventStorage | undefined;
  #channel: BroadcastChannel | undefined;
  #opening: Promise<void> | undefined;
  #unkept: readonly ProgressEvent[] = [];
  #ownId = randomId();
  readonly #listeners: (() => void)[] = [];

  /** Reads what is kept. Call it in the browser, as often as you like. */
  open(): Promise<void> {
    return (this.#opening ??= this.#start());
  }

  /** Calls back whenever something has changed. */
  listen(listener: () => void): void {
    this.#listeners.push(listener);
  }

  /** Who is learning. */
  get learner(): string {
    const kept = readKept(LEARNER);
    return typeof kept === 'string' ? kept : this.#ownId;
  }

  /** Another learner sits down, or one who was here before. */
  async choose(learner: string = randomId()): Promise<void> {
    keep(LEARNER, learner);
    this.events = [];
    await this.#read();
  }

  /** The learner did something. It shows at once, and is kept as soon as it can be. */
  append(deed: Deed): Promise<void> {
    const { learner } = this;
    if (learner === this.#ownId) keep(LEARNER, learner);
    const event: Happened & Deed = {
      version: EVENT_VERSION,
      id: randomId(),
      learner,
      at: Date.now(),
      calc: CALC,
      bank: BANK,
      ...deed,
    };
    return this.add([event]);
  }

  /** Adds events of whomever, as they are. */
  async add(events: readonly ProgressEvent[]): Promise<void> {
    const { learner } = this;
    this.events = union(
      this.events,
      events.filter((event) => event.learner === learner),
    );
    const waiting = [...this.#unkept, ...events];
    this.#unkept = waiting;
    this.#changed();
    await this.open();
    try {
      await this.#storage!.add(waiting);
      this.#unkept = this.#unkept.filter((event) => !waiting.includes(event));
      this.trouble = '';
      this.#tell('added');
    } catch (fault) {
      this.trouble = troubleOf(fault);
    }
    this.#changed();
  }

  /** What all learners have done, and what a later edition has kept. */
  async everyone(): Promise<Stored> {
    await this.open();
    return this.#readAll();
  }

  /** Forgets what all learners have done. @throws where the browser doesn't let it */
  async forget(): Promise<void> {
    await this.open();
    await this.#storage!.clear();
    this.#unkept = [];
    this.events = [];
    this.#tell('forgotten');
    this.#changed();
  }

  async #start(): Promise<void> {
    const { base, package: packed } = document.documentElement.dataset;
    // In a learning system's package nothing is kept here: students share the school's address.
    this.#storage = packed === undefined ? indexedDbStorage(`${base}progress`) : memoryStorage();
    this.#channel = new BroadcastChannel(`${base}progress`);
    this.#channel.onmessage = ({ data }: MessageEvent<News>) => {
      if (data === 'forgotten') this.events = this.#unkept = [];
      void this.#read();
    };
    // Not by the channel, which is faster than what it would tell of.
    addEventListener('storage', ({ key }) => {
      if (key !== null && key !== `${base}${LEARNER}`) return;
      this.events = [];
      void this.#read();
    });
    await this.#read();
    if (readKept(LEARNER) !== undefined) return;
    // The browser has lost who is learning: whoever was here last.
    this.#ownId = (await this.#readAll()).events.at(-1)?.learner ?? this.#ownId;
    await this.#read();
  }

  async #readAll(): Promise<Stored> {
    try {
      const { events, later } = readStored(await this.#storage!.read());
      return { events: union(events, this.#unkept), later };
    } catch {
      return { events: this.#unkept, later: [] };
    }
  }

  async #read(): Promise<void> {
    const { learner } = this;
    try {
      const { events } = readStored(await this.#storage!.read(learner));
      if (learner !== this.learner) return; // another has sat down meanwhile, and is being read
      this.events = union(events, this.events);
    } catch (fault) {
      this.trouble = troubleOf(fault);
    }
    this.#changed();
  }

  #tell(news: News): void {
    this.#channel?.postMessage(news);
  }

  #changed(): void {
    document.documentElement.dataset['trouble'] = this.trouble;
    for (const listener of this.#listeners) listener();
  }
}

export const log = new Log();
