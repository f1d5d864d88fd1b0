import { hash } from '../practice/made/hash.ts';

/** Digits and letters that are not taken for each other when they are read out: no I, L, O or U. */
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * A short code for a text. Another text has almost surely another code, so it shows a slip; it
 * shows nothing against somebody who reckons the code anew.
 * @param length how many characters, 1 to 6 (5 bits each)
 * @example codeOf('Bench 7', 6) // six characters, always the same
 */
export function codeOf(text: string, length: number): string {
  const sum = hash(text);
  return Array.from({ length }, (_, i) => LETTERS[(sum >>> (5 * i)) & 31]).join('');
}

/**
 * Characters for random bytes, one each.
 * @example randomCode(crypto.getRandomValues(new Uint8Array(8)))
 */
export function randomCode(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => LETTERS[byte & 31]).join('');
}
