import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';

/**
 * The built site under test. test/run.ts sets these; by hand, build first and run
 * `npx playwright test -c test/playwright.config.ts` for the site at the root in dist/.
 */
export const site = {
  /** Where the built files are. */
  folder: resolve(import.meta.dirname, '../..', process.env['SITE_FOLDER'] ?? 'dist'),
  /** The folder that the site lives in, without a slash at its end: '' or '/woodshop'. */
  base: (process.env['SITE_BASE'] ?? '').replace(/\/$/, ''),
  port: Number(process.env['SITE_PORT'] ?? 4397),
};

/** One page of the built site. */
export interface BuiltPage {
  /** The address below the base: '/', '/lessons/one/', '/404.html'. */
  readonly path: string;
  /** The file, from the site's folder. */
  readonly file: string;
}

/** Every page in a built site's folder. */
export function pagesOf(folder: string): readonly BuiltPage[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.html'))
    .sort()
    .map((file) => ({ file, path: `/${file.replace(/(^|\/)index\.html$/, '$1')}` }));
}

/** The file that an address below the base leads to. */
export function fileOf(path: string): string {
  return join(site.folder, path.endsWith('/') ? `${path}index.html` : path);
}
