import { hash } from '../../practice/made/hash.ts';
import { benchName } from '../../practice/progress/benchName.ts';
import type { Assignment } from './assignment.ts';
import { whatIsAsked } from './assignmentLink.ts';

/** What two spellings of one student have in common: `bench  7` and `Bench 7` are the same. */
export function studentKey(student: string): string {
  return benchName(student).toLowerCase();
}

/**
 * A student's seed, a whole number of 32 bits. It follows from what is asked and from the name, so
 * that a copied or a chosen one shows.
 * @param student the typed name of the bench, or what the learning system calls the student
 */
export function seedOf(assignment: Assignment, student: string): number {
  return hash(`${whatIsAsked(assignment)}\n${studentKey(student)}`);
}
