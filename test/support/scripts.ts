import { readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { init, parse } from 'es-module-lexer';
import { parse as parseHtml } from 'node-html-parser';

/** What the JavaScript of one page weighs, gzipped, in bytes. */
export interface PageScripts {
  /** Files that the page loads by itself, with their weight: the static closure. */
  readonly loaded: ReadonlyMap<string, number>;
  /** Weight of the inline scripts. */
  readonly inline: number;
  /** `loaded` and `inline` together. */
  readonly total: number;
  /** Files that only a dynamic import loads, on a click perhaps. */
  readonly onDemand: ReadonlyMap<string, number>;
}

await init();

/**
 * The JavaScript of a built page: everything reached from its script tags, preloads and islands by
 * static imports, and the workers that this code starts. Islands' own entries count although Astro
 * imports them dynamically, because they load without being asked.
 * @param folder the built site
 * @param file the page's file in it
 * @param base the folder that the site lives in: '' or '/woodshop'
 */
export function scriptsOf(folder: string, file: string, base: string): PageScripts {
  const html = parseHtml(readFileSync(join(folder, file), 'utf8'));
  const entries = new Set<string>();
  let inline = 0;
  for (const script of html.querySelectorAll('script')) {
    const type = script.getAttribute('type') ?? '';
    const src = script.getAttribute('src');
    if (src) entries.add(src);
    else if (type === '' || type === 'module') inline += gzipSync(script.textContent).length;
  }
  for (const link of html.querySelectorAll('link[rel=modulepreload]')) {
    entries.add(link.getAttribute('href') ?? '');
  }
  const addresses = ['component-url', 'renderer-url', 'before-hydration-url'];
  for (const island of html.querySelectorAll('astro-island')) {
    for (const name of addresses) {
      const address = island.getAttribute(name);
      if (address) entries.add(address);
    }
  }
  const starts = [...entries].map((address) => inFolder(address, base));
  const loaded = closure(folder, starts);
  const onDemand = closure(
    folder,
    [...loaded].flatMap((script) => importsOf(folder, script).dynamic),
  );
  const weigh = (files: Iterable<string>) =>
    new Map([...files].map((name) => [name, gzipSync(readFileSync(join(folder, name))).length]));
  const weights = weigh(loaded);
  return {
    loaded: weights,
    inline,
    total: [...weights.values()].reduce((sum, weight) => sum + weight, inline),
    onDemand: weigh([...onDemand].filter((name) => !loaded.has(name))),
  };
}

function inFolder(address: string, base: string): string {
  if (!address.startsWith(`${base}/`)) throw new Error(`${address} is outside ${base}/`);
  return address.slice(base.length + 1);
}

function closure(folder: string, starts: readonly string[]): ReadonlySet<string> {
  const reached = new Set<string>();
  const waiting = [...starts];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (reached.has(file)) continue;
    reached.add(file);
    const { fixed, workers } = importsOf(folder, file);
    waiting.push(...fixed, ...workers);
  }
  return reached;
}

function importsOf(folder: string, file: string) {
  const code = readFileSync(join(folder, file), 'utf8');
  const beside = (specifier: string) => posix.normalize(posix.join(dirname(file), specifier));
  const fixed: string[] = [];
  const dynamic: string[] = [];
  for (const { specifier, type } of parse(code)[0]) {
    if (specifier?.startsWith('.')) (type === 'dynamic' ? dynamic : fixed).push(beside(specifier));
  }
  // The bundler writes a worker's file as new URL('worker-x.js', import.meta.url).
  const workers = [
    ...code.matchAll(/new URL\(\s*["'`]([^"'`]+\.js)["'`]\s*,\s*import\.meta\.url/g),
  ];
  return { fixed, dynamic, workers: workers.map(([, name]) => beside(name!)) };
}
