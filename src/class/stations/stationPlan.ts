export interface StationInput {
  /** Benches, or students where each works alone; a whole number, 1 or more. */
  readonly benches: number;
  /** Guides that can be used at once; a whole number, 1 or more. */
  readonly guides: number;
  /** How long one bench needs a guide, minutes, more than 0. */
  readonly minutesEach: number;
  /** Time at the drill in one lesson, minutes, more than 0: what is left of it after the talk. */
  readonly minutesInLesson: number;
}

/** One turn at the guides. */
export interface Round {
  /** From 1. */
  readonly number: number;
  /** Which lesson it falls in, from 1. */
  readonly lesson: number;
  /** Minutes after the drilling of that lesson begins. */
  readonly from: number;
  readonly to: number;
  /** The benches at the guides, by their numbers from 1; the first is at guide 1. */
  readonly drilling: readonly number[];
  /** Those that haven't drilled yet. */
  readonly waiting: readonly number[];
  /** Those that have. */
  readonly done: readonly number[];
}

export interface StationPlan {
  readonly rounds: readonly Round[];
  readonly lessons: number;
  /** The longest that a bench waits for its first turn, counted in time at the drill, minutes. */
  readonly longestWait: number;
  /** The fewest guides that let every bench drill in one lesson. */
  readonly guidesForOneLesson: number;
}

/**
 * Who drills when, with few guides and many benches: turns of equal length, none cut in two by the
 * end of a lesson.
 * Throws a RangeError that names what is out of range.
 */
export function stationPlan(input: StationInput): StationPlan {
  const { benches, guides, minutesEach, minutesInLesson } = input;
  for (const [name, count] of Object.entries({ benches, guides })) {
    if (!Number.isInteger(count) || count < 1) throw new RangeError(`${name} is ${count}`);
  }
  for (const [name, minutes] of Object.entries({ minutesEach, minutesInLesson })) {
    if (!(minutes > 0 && minutes < Infinity)) throw new RangeError(`${name} is ${minutes}`);
  }
  const perLesson = Math.floor(minutesInLesson / minutesEach + 1e-9);
  if (perLesson === 0) {
    throw new RangeError(`a turn of ${minutesEach} minutes is longer than a lesson's drilling`);
  }
  const all = Array.from({ length: benches }, (_, i) => i + 1);
  const turns = Math.ceil(benches / guides);
  const rounds = Array.from({ length: turns }, (_, i): Round => {
    const first = i * guides;
    const from = (i % perLesson) * minutesEach;
    return {
      number: i + 1,
      lesson: Math.floor(i / perLesson) + 1,
      from,
      to: from + minutesEach,
      drilling: all.slice(first, first + guides),
      waiting: all.slice(first + guides),
      done: all.slice(0, first),
    };
  });
  return {
    rounds,
    lessons: Math.ceil(turns / perLesson),
    longestWait: (turns - 1) * minutesEach,
    guidesForOneLesson: Math.ceil(benches / perLesson),
  };
}
