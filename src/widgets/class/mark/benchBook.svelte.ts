import { studentKey } from '../../../class/assignment/student.ts';
import type { BenchMarks, Criterion } from '../../../class/gradebook/rubric.ts';
import { keep, readKept } from '../../keptHere.ts';
import { type AllBenchMarks, judged, readBenchMarks, writeBenchMarks } from './benchMarks.ts';

/** The instructor's assessments at the bench for one assignment, kept on this machine. */
export class BenchBook {
  readonly #key: string;
  #all = $state.raw<AllBenchMarks>(readBenchMarks(null));
  #kept = $state(true);

  /** @param assignment its id */
  constructor(assignment: string) {
    this.#key = `bench-marks/${assignment}`;
    this.#all = readBenchMarks(readKept(this.#key));
  }

  get all(): AllBenchMarks {
    return this.#all;
  }

  /** False where the browser keeps nothing. */
  get kept(): boolean {
    return this.#kept;
  }

  of(student: string): BenchMarks {
    return this.#all.get(studentKey(student)) ?? {};
  }

  /** @param points undefined takes an assessment back */
  set(student: string, id: Criterion['id'], points: BenchMarks[Criterion['id']]): void {
    this.#all = judged(this.#all, student, id, points);
    this.#kept = keep(this.#key, writeBenchMarks(this.#all));
  }
}
