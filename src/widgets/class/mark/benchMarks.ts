import { studentKey } from '../../../class/assignment/student.ts';
import { type BenchMarks, type Criterion, rubric } from '../../../class/gradebook/rubric.ts';

/** Assessments at the bench by `studentKey`. */
export type AllBenchMarks = ReadonlyMap<string, BenchMarks>;

function marksFrom(kept: unknown): BenchMarks {
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(
    rubric.flatMap(({ id }) => {
      const points = (kept as Record<string, unknown>)[id];
      return [0, 1, 2, 3].some((each) => each === points) ? [[id, points]] : [];
    }),
  ) as BenchMarks;
}

/** As much of what was kept as can be read: it may be another version's. */
export function readBenchMarks(kept: unknown): AllBenchMarks {
  if (typeof kept !== 'object' || kept === null) return new Map();
  return new Map(Object.entries(kept).map(([student, marks]) => [student, marksFrom(marks)]));
}

/** What is kept: plain data. */
export function writeBenchMarks(all: AllBenchMarks): unknown {
  return Object.fromEntries(all);
}

/** One more assessment. @param points undefined takes an earlier one back */
export function judged(
  all: AllBenchMarks,
  student: string,
  id: Criterion['id'],
  points: BenchMarks[Criterion['id']],
): AllBenchMarks {
  const key = studentKey(student);
  const { [id]: _before, ...others } = all.get(key) ?? {};
  const marks = points === undefined ? others : { ...others, [id]: points };
  return new Map([...all, [key, marks]]);
}
