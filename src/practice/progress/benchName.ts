/** The longest name of a bench, in characters. */
export const LONGEST_NAME = 40;

/**
 * The name of a bench as it was typed, made tidy: no spaces at the ends, no double ones, nothing
 * that can't be seen, and cut off after 40 characters.
 * @example benchName('  Bench   3 ') // 'Bench 3'
 */
export function benchName(typed: string): string {
  const tidy = typed
    .slice(0, 1000) // a pasted page
    .normalize('NFKC')
    .replace(/\p{Zs}|\s/gu, ' ')
    .replace(/\p{C}/gu, '')
    .replace(/ {2,}/g, ' ')
    .trim();
  return [...tidy].slice(0, LONGEST_NAME).join('').trim();
}
