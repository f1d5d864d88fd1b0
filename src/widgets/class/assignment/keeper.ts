import { studentKey } from '../../../class/assignment/student.ts';
import { keep, readKept } from '../../keptHere.ts';

/** How far a student is, for whoever keeps more than the answers. */
export interface Progress {
  /** Percent of the questions that are right. */
  readonly score: number;
  readonly finished: boolean;
  readonly passed: boolean;
}

/** Where a student's answers are kept between two visits: this browser, or a learning system. */
export interface Keeper {
  /** Who the student is, where that is known; else the name of the bench is asked for. */
  readonly student: string | undefined;
  /** The names under which something is kept, the latest first. */
  readonly students: readonly string[];
  /** What was kept for a student; empty where nothing was. */
  load(student: string): string;
  /** @returns whether it is kept */
  keep(student: string, text: string, progress: Progress): boolean;
}

/** More students than this don't share one machine; the longest unused are forgotten. */
const MOST_STUDENTS = 40;

interface Kept {
  readonly student: string;
  readonly text: string;
}

function readAll(key: string): readonly Kept[] {
  const kept = readKept(key);
  if (!Array.isArray(kept)) return [];
  return (kept as readonly unknown[]).flatMap((each) => {
    if (typeof each !== 'object' || each === null) return [];
    const { student, text } = each as Record<string, unknown>;
    return typeof student === 'string' && typeof text === 'string' ? [{ student, text }] : [];
  });
}

/**
 * Keeps answers in this browser, each student's apart: benches share machines.
 * @param assignment its id
 */
export function browserKeeper(assignment: string): Keeper {
  const key = `assignment/${assignment}`;
  return {
    student: undefined,
    students: readAll(key).map(({ student }) => student),
    load: (student) =>
      readAll(key).find((each) => studentKey(each.student) === studentKey(student))?.text ?? '',
    keep: (student, text) => {
      const others = readAll(key).filter(
        (each) => studentKey(each.student) !== studentKey(student),
      );
      return keep(key, [{ student, text }, ...others].slice(0, MOST_STUDENTS));
    },
  };
}
