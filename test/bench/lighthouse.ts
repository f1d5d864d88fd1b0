/**
 * What Lighthouse (mobile settings) gives each kind of page, fetched for this alone and run without
 * reports to anyone. For a person to read; nothing here passes or fails: `npm run bench:lighthouse`.
 *
 *     npm run bench:lighthouse -- /lessons/moisture-and-seasons/ /bench/   # these pages alone
 */
import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { type AddressInfo } from 'node:net';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { gzipSync } from 'node:zlib';
import { build } from 'astro';
import { findBrowser } from '../support/findBrowser.ts';
import { pagesOf } from '../support/site.ts';

const root = resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'matched-holes-'));
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';

interface Report {
  /** How fast this processor is; the phone that is imitated is fourfold slower than a good one. */
  readonly environment: { readonly benchmarkIndex: number };
  readonly categories: Record<
    string,
    {
      readonly score: number | null;
      readonly auditRefs: readonly { readonly id: string; readonly weight: number }[];
    }
  >;
  readonly audits: Record<
    string,
    { readonly score: number | null; readonly displayValue?: string }
  >;
}

const categories = ['performance', 'accessibility', 'best-practices', 'seo'];

try {
  await build({ root, outDir: folder, logLevel: 'error' });
  const server = await serveCompressed();
  const { path: browser } = await findBrowser();
  console.log(`${'page'.padEnd(40)} ${categories.map((name) => name.padStart(14)).join(' ')}`);
  for (const path of wanted()) {
    const {
      categories: scores,
      audits,
      environment,
    } = await report(`http://localhost:${(server.address() as AddressInfo).port}${path}`, browser);
    const numbers = categories.map((name) => Math.round(100 * (scores[name]?.score ?? 0)));
    console.log(
      `${path.padEnd(40)} ${numbers.map((score) => String(score).padStart(14)).join(' ')}` +
        `   processor ${environment.benchmarkIndex.toFixed(0)}`,
    );
    for (const name of categories) {
      for (const { id, weight } of scores[name]?.auditRefs ?? []) {
        const { score, displayValue } = audits[id]!;
        if (weight > 0 && score !== null && score < 0.9) {
          console.log(`    ${id}: ${Math.round(100 * score)} ${displayValue ?? ''}`);
        }
      }
    }
  }
  server.close();
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Serves the folder as static hosts do: text goes out compressed, and named files are kept. */
function serveCompressed() {
  const types: Record<string, string> = {
    '.html': 'text/html; charset=utf-8',
    '.js': 'text/javascript',
    '.css': 'text/css',
    '.json': 'application/json',
    '.svg': 'image/svg+xml',
  };
  const server = createServer(({ url = '/' }, response) => {
    const { pathname } = new URL(url, 'http://localhost');
    const file = join(folder, pathname.endsWith('/') ? `${pathname}index.html` : pathname);
    if (!existsSync(file)) return response.writeHead(404).end();
    const type = types[extname(file)];
    const body = readFileSync(file);
    response.writeHead(200, {
      'content-type': type ?? 'application/octet-stream',
      'cache-control': pathname.startsWith('/_astro/') ? 'max-age=31536000, immutable' : 'no-cache',
      ...(type && { 'content-encoding': 'gzip' }),
    });
    return response.end(type ? gzipSync(body) : body);
  });
  return new Promise<typeof server>((ready) => server.listen(0, () => ready(server)));
}

/** Every page but the lessons, of which one stands for all, and the page that is not found. */
function wanted(): readonly string[] {
  const named = process.argv.slice(2);
  if (named.length > 0) return named;
  const paths = pagesOf(folder).map(({ path }) => path);
  const lessons = paths.filter((path) => path.startsWith('/lessons/'));
  return [
    ...paths.filter((path) => !path.startsWith('/lessons/') && !path.includes('404')),
    ...lessons.filter((path) => path.includes('splitting-the-depth')),
  ];
}

async function report(address: string, browser: string): Promise<Report> {
  const file = join(folder, 'lighthouse.json');
  await promisify(execFile)(
    'npx',
    [
      ...['--yes', 'lighthouse@13.5.0', address, '--quiet', '--no-enable-error-reporting'],
      ...[`--only-categories=${categories.join(',')}`, '--output=json', `--output-path=${file}`],
      '--chrome-flags=--headless=new --no-sandbox --disable-background-networking',
    ],
    { env: { ...process.env, CHROME_PATH: browser }, timeout: 180_000 },
  );
  return JSON.parse(readFileSync(file, 'utf8')) as Report;
}
