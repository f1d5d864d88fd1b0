/** What the packed pages have to be told. */
export interface Packing {
  /** The site's base, with a slash at its end. */
  readonly base: string;
  /** The pages that go along, from the base: 'assignment/', 'lessons/setting-the-stop/'. */
  readonly pages: readonly string[];
  /** The fragment of the assignment's link, without its number sign. */
  readonly assignment: string;
}

/** Attributes of Astro's pages that hold one address. */
const ADDRESSES = /( (?:href|src|component-url|renderer-url|before-hydration-url)=")([^"]*)"/g;

/**
 * A page of the site as it goes into a package: every address is relative, so that it works in
 * whatever folder the learning system puts it; links to pages that stay behind lead nowhere; and
 * its `<html>` says that it is in a package, with the assignment. Scripts in the page stay as they
 * are: the security policy knows them by their hash.
 * @param html as it was built
 * @param page its folder from the base, with a slash at the end: 'lessons/setting-the-stop/'
 */
export function packPage(html: string, page: string, { base, pages, assignment }: Packing): string {
  const up = '../'.repeat(page.split('/').length - 1);
  const inside = new Set(pages);
  const relative = (tag: string) =>
    tag.replace(ADDRESSES, (whole, attribute: string, address: string) => {
      if (!address.startsWith(base)) return whole;
      const [path, anchor] = cutAt(address.slice(base.length), '#');
      const isPage = path === '' || path.endsWith('/');
      if (!isPage) return `${attribute}${up}${path}${anchor}"`;
      // A folder's address means its index only where a server makes it so.
      return inside.has(path) ? `${attribute}${up}${path}index.html${anchor}"` : '';
    });
  return html
    .split(/(<script\b[^>]*>[\s\S]*?<\/script>)/)
    .map((part, i) => {
      if (i % 2 === 0) return part.replace(/<[a-z][^>]*>/g, relative);
      return part.replace(/^<script\b[^>]*>/, relative);
    })
    .join('')
    .replace(/<link rel="canonical"[^>]*>/, '')
    .replace(/<html([^>]*)>/, (_, attributes: string) => {
      const kept = attributes
        .replace(/ data-keep(?:="[^"]*")?/, '')
        .replace(/ data-base="[^"]*"/, ` data-base="${up}"`);
      return `<html${kept} data-package data-assignment="${quoted(assignment)}">`;
    });
}

/** A style sheet as it goes into a package. It lies in the folder `_astro` with what it names. */
export function packStyles(css: string, base: string): string {
  return css.replaceAll(`${base}_astro/`, '');
}

/**
 * Which of the files that the bundler wrote a page needs: those that it names, those that they
 * name, and so on.
 * @param text of a page or file, by its path
 * @param named the bundler's files by their names alone, as `one-file.Ab3dE.js`
 */
export function filesNamed(
  start: string,
  named: ReadonlyMap<string, { readonly path: string; readonly text: string | null }>,
): readonly string[] {
  const found = new Set<string>();
  const waiting = [start];
  for (let text = waiting.pop(); text !== undefined; text = waiting.pop()) {
    for (const [name] of text.matchAll(/[\w.~-]+\.(?:js|css|woff2|svg|json|wasm)\b/g)) {
      const file = named.get(name);
      if (!file || found.has(file.path)) continue;
      found.add(file.path);
      if (file.text !== null) waiting.push(file.text);
    }
  }
  return [...found].sort();
}

function cutAt(text: string, mark: string): [string, string] {
  const at = text.indexOf(mark);
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at)];
}

function quoted(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}
