import { type LengthUnit, parseLength } from '../length/parseLength.ts';

/** More than this was not read off a caliper. */
const MOST = 200;

/**
 * Parts a pasted list into the texts of its lengths: by lines, tabs, semicolons, commas with a
 * blank behind them, and by blanks where most of what they part are lengths and the whole is none.
 * `1 1/2` stays one length, and so does `9,5`. What can't be read as a length is kept, for whoever pasted it to put right. At most
 * 200 texts; the rest of a longer list is left off.
 * @param unit taken where a text names none
 * @example listOfLengths('9.47 9.50\n9,46 mm', 'mm') // ['9.47', '9.50', '9,46 mm']
 */
export function listOfLengths(text: string, unit: LengthUnit): readonly string[] {
  return text
    .split(/[\n\r\t;|]+|,\s+/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')
    .flatMap((piece) => {
      if (parseLength(piece, unit).ok) return [piece];
      const words = piece.split(/\s+/);
      const lengths = words.filter((word) => parseLength(word, unit).ok).length;
      return lengths > words.length / 2 ? words : [piece];
    })
    .slice(0, MOST);
}
