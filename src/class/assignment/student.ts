import { hash } from '../../practice/made/hash.ts';
import type { Assignment } from './assignment.ts';
import { whatIsAsked } from './assignmentLink.ts';

const LONGEST_NAME = 40;

export type ReadStudent =
  { readonly ok: true; readonly student: string } | { readonly ok: false; readonly reason: string };

/**
 * What a student typed as the name of the bench, made tidy: spaces at the ends and double ones
 * are gone, and so is what can't be seen.
 */
export function readStudent(typed: string): ReadStudent {
  const student = typed
    .normalize('NFKC')
    .replace(/\p{Zs}|\s/gu, ' ')
    .replace(/\p{C}/gu, '')
    .replace(/ {2,}/g, ' ')
    .trim();
  if (student === '') return { ok: false, reason: 'Type the name of your bench: Bench 7.' };
  if (student.length > LONGEST_NAME) {
    return { ok: false, reason: `Use at most ${LONGEST_NAME} characters.` };
  }
  return { ok: true, student };
}

/** What two spellings of one student have in common: `bench 7` and `Bench 7` are the same. */
export function studentKey(student: string): string {
  const read = readStudent(student);
  return (read.ok ? read.student : student).toLowerCase();
}

/**
 * A student's seed, a whole number of 32 bits. It follows from what is asked and from the name, so
 * that a copied or a chosen one shows.
 * @param student the typed name of the bench, or what the learning system calls the student
 */
export function seedOf(assignment: Assignment, student: string): number {
  return hash(`${whatIsAsked(assignment)}\n${studentKey(student)}`);
}
