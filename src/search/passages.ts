import { type HTMLElement, NodeType, parse } from 'node-html-parser';

/** A stretch of a page that a search can lead to. */
export interface Passage {
  /** From the site's base, with the anchor where there is one: 'lessons/one/#worked-example'. */
  readonly path: string;
  readonly page: string;
  /** The heading that it stands under; none for what comes first on a page. */
  readonly section?: string;
  readonly text: string;
}

/** Drawings, controls, words that open on a click, and the second of each pair of units. */
const UNREAD =
  'script, style, noscript, svg, math, nav, template, button:not(.term), input, select, [popover], .mm, .visually-hidden, .lesson-ends, .sign-off';

/**
 * What a reader can find on a page: a passage for each second-level heading that has an anchor, and
 * one for what stands before the first.
 * @param html a built page
 * @param path from the site's base, ending with a slash
 */
export function passagesOf(html: string, path: string): readonly Passage[] {
  const main = parse(html).querySelector('main');
  const page = main?.querySelector('h1')?.textContent.trim();
  if (!main || !page) return [];
  for (const each of main.querySelectorAll(UNREAD)) each.remove();

  const passages: { path: string; section?: string; words: string[] }[] = [{ path, words: [] }];
  const read = (element: HTMLElement) => {
    for (const node of element.childNodes) {
      if (node.nodeType === NodeType.TEXT_NODE) passages.at(-1)!.words.push(node.text);
      if (node.nodeType !== NodeType.ELEMENT_NODE) continue;
      const child = node as HTMLElement;
      const tag = child.rawTagName;
      if (tag === 'h1') continue;
      if (tag === 'h2' && child.id) {
        const section = tidy(child.textContent);
        passages.push({ path: `${path}#${child.id}`, section, words: [] });
        continue;
      }
      const block = !/^(a|abbr|b|button|em|i|small|span|strong|sub|sup)$/.test(tag);
      if (block) passages.at(-1)!.words.push(' ');
      read(child);
      if (block) passages.at(-1)!.words.push(' ');
    }
  };
  read(main);
  return passages
    .map(({ words, ...at }) => ({ ...at, page, text: tidy(words.join('')) }))
    .filter(({ text, section }) => text !== '' || section !== undefined);
}

function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
