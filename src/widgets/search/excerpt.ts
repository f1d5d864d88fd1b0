/** A stretch of text around the first hit, in pieces; those that were looked for are marked. */
export type Excerpt = readonly { readonly text: string; readonly hit: boolean }[];

const BEFORE = 60;
const LENGTH = 220;

/**
 * @param text a passage
 * @param terms words of it, as they stand there but in lower case
 */
export function excerpt(text: string, terms: readonly string[]): Excerpt {
  const escaped = terms.map((term) => term.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`));
  if (escaped.length === 0) return cut(text, 0).map((piece) => ({ text: piece, hit: false }));
  const whole = new RegExp(
    String.raw`(?<![\p{L}\p{N}])(?:${escaped.join('|')})(?![\p{L}\p{N}])`,
    'giu',
  );
  const first = text.search(whole);
  return cut(text, Math.max(0, first)).flatMap((piece) => {
    const pieces: { text: string; hit: boolean }[] = [];
    let from = 0;
    for (const { index, 0: found } of piece.matchAll(whole)) {
      pieces.push({ text: piece.slice(from, index), hit: false }, { text: found, hit: true });
      from = index + found.length;
    }
    pieces.push({ text: piece.slice(from), hit: false });
    return pieces.filter((each) => each.text !== '');
  });
}

/** Whole words around a place, with an ellipsis where there is more. */
function cut(text: string, at: number): readonly string[] {
  const start = at <= BEFORE ? 0 : text.indexOf(' ', at - BEFORE) + 1;
  const rest = text.slice(start);
  const end = rest.length <= LENGTH ? rest.length : rest.lastIndexOf(' ', LENGTH);
  return [`${start > 0 ? '… ' : ''}${rest.slice(0, end)}${end < rest.length ? ' …' : ''}`];
}
