/** What a SCORM 1.2 learning system offers its pages. Everything is text. */
export interface ScormApi {
  LMSInitialize(nothing: ''): string;
  LMSFinish(nothing: ''): string;
  LMSGetValue(element: string): string;
  LMSSetValue(element: string, value: string): string;
  LMSCommit(nothing: ''): string;
  LMSGetLastError(): string;
}

/** What is used here of a window; a stranger's throws whatever is read of it. */
export interface WindowLike {
  readonly API?: ScormApi;
  readonly parent?: WindowLike | null;
  readonly opener?: WindowLike | null;
}

/** SCORM 1.2's limit of `cmi.suspend_data`, in characters. */
export const SUSPEND_LIMIT = 4096;

/** How far up the windows a learning system is looked for. */
const WINDOWS = 8;

/** The learning system that a page was opened by: up the frames, then from the opener up. */
export function findApi(page: WindowLike): ScormApi | undefined {
  return up(page) ?? (reach(() => page.opener) ? up(page.opener!) : undefined);
}

function up(start: WindowLike): ScormApi | undefined {
  let window: WindowLike | null | undefined = start;
  for (let i = 0; i < WINDOWS && window; i++) {
    const here: WindowLike = window;
    const api = reach(() => here.API);
    if (api) return api;
    const parent: WindowLike | null | undefined = reach(() => here.parent);
    if (parent === here) return undefined;
    window = parent;
  }
  return undefined;
}

function reach<T>(get: () => T): T | undefined {
  try {
    return get();
  } catch {
    return undefined; // a frame of another origin
  }
}

/** How far the student is. */
export interface Standing {
  /** 0 to 100. */
  readonly score: number;
  readonly finished: boolean;
  readonly passed: boolean;
}

/** An answer, for the learning system's own reports. */
export interface Reported {
  /** Which question: letters, digits, hyphens; at most 255 characters. */
  readonly id: string;
  readonly kind: 'choice' | 'fill-in' | 'sequencing';
  readonly right: boolean;
}

/** A session with a learning system, from the opening of the page to its closing. */
export class LearningSystem {
  /** The learning system's name for the student. */
  readonly student: string;
  /** What was kept of an earlier session; empty at the first. */
  readonly kept: string;

  readonly #api: ScormApi;
  readonly #opened = Date.now();
  #interactions: number;
  #closed = false;

  /**
   * @throws Error a sentence for the student, where the learning system refuses
   */
  constructor(api: ScormApi) {
    this.#api = api;
    if (api.LMSInitialize('') !== 'true') {
      throw new Error(
        `The learning system did not open this assignment (error ${api.LMSGetLastError()}). Close the window and open it again from there.`,
      );
    }
    this.student = api.LMSGetValue('cmi.core.student_id');
    this.kept = api.LMSGetValue('cmi.suspend_data');
    this.#interactions = Number(api.LMSGetValue('cmi.interactions._count')) || 0;
    if (api.LMSGetValue('cmi.core.lesson_status') === 'not attempted') {
      this.#set('cmi.core.lesson_status', 'incomplete');
      api.LMSCommit('');
    }
  }

  /**
   * Keeps where the student is, and reports it, after every answer.
   * @param data at most SUSPEND_LIMIT characters
   * @param answer what was just answered, where that is to be reported
   * @returns whether the learning system took all of it
   */
  keep(data: string, { score, finished, passed }: Standing, answer?: Reported): boolean {
    if (this.#closed) return false;
    if (data.length > SUSPEND_LIMIT) {
      throw new RangeError(
        `${data.length} characters, and a learning system takes ${SUSPEND_LIMIT}`,
      );
    }
    if (answer) this.#report(answer);
    const taken = [
      this.#set('cmi.suspend_data', data),
      this.#set('cmi.core.score.min', '0'),
      this.#set('cmi.core.score.max', '100'),
      this.#set('cmi.core.score.raw', String(Math.round(score))),
      // Some learning systems compare with the mastery score, and some don't: say it.
      this.#set('cmi.core.lesson_status', !finished ? 'incomplete' : passed ? 'passed' : 'failed'),
      this.#api.LMSCommit('') === 'true',
    ];
    return taken.every(Boolean);
  }

  /** Ends the session; what was kept is there the next time. Nothing more is sent. */
  close(): void {
    if (this.#closed) return;
    this.#closed = true;
    this.#set('cmi.core.session_time', timespan(Date.now() - this.#opened));
    this.#set('cmi.core.exit', 'suspend');
    this.#api.LMSCommit('');
    this.#api.LMSFinish('');
  }

  #report({ id, kind, right }: Reported): void {
    const at = `cmi.interactions.${this.#interactions}`;
    if (!this.#set(`${at}.id`, id)) return; // not every learning system keeps answers
    this.#set(`${at}.type`, kind);
    this.#set(`${at}.result`, right ? 'correct' : 'wrong');
    this.#interactions += 1;
  }

  #set(element: string, value: string): boolean {
    return this.#api.LMSSetValue(element, value) === 'true';
  }
}

/** CMITimespan: hours, minutes and seconds with two places, at most 9999 hours. */
function timespan(milliseconds: number): string {
  const hundredths = Math.min(Math.round(milliseconds / 10), 9999 * 360_000);
  const pad = (value: number, digits: number) => String(value).padStart(digits, '0');
  const hours = Math.floor(hundredths / 360_000);
  const minutes = Math.floor(hundredths / 6000) % 60;
  const seconds = Math.floor(hundredths / 100) % 60;
  return `${pad(hours, 4)}:${pad(minutes, 2)}:${pad(seconds, 2)}.${pad(hundredths % 100, 2)}`;
}
