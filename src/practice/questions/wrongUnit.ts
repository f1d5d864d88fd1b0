/**
 * The one mistake that marking itself finds in any length: the right number in the wrong unit.
 * It has to be in content/misconceptions.yaml like all the others.
 */
export const WRONG_UNIT = 'wrong-unit';
