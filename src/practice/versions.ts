/**
 * Whole numbers that a kept answer carries, so that it can be seen later whether it was given to
 * what is asked today.
 */

/** Raised whenever the calculator gives another result for the same setup. */
export const CALC = 1;

/** Raised whenever a question, of a lesson or made, asks or counts as right what it didn't before. */
export const BANK = 1;
