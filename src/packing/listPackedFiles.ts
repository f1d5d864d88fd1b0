import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { filesNamed } from '../class/scorm/packagePages.ts';

/** Pages that can go into a package for a learning system. */
const PACKABLE = /^(assignment|lessons\/[^/]+)\/index\.html$/;

/** What every page's frame names, besides the bundler's files. */
const FRAME = ['favicon.svg', 'settings.js'];

/**
 * Writes `packed-files.json` when the site is built: for each page that can be packed, by its
 * folder, the files that it needs. The browser fetches them from the site itself.
 */
export function listPackedFiles(): AstroIntegration {
  return {
    name: 'list-packed-files',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const folder = fileURLToPath(dir);
        const read = (path: string) => readFileSync(join(folder, path), 'utf8');
        const named = new Map(
          readdirSync(join(folder, '_astro')).map((name) => {
            const path = `_astro/${name}`;
            return [name, { path, text: /\.(js|css)$/.test(name) ? read(path) : null }];
          }),
        );
        const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' })
          .map((file) => file.replaceAll('\\', '/'))
          .filter((file) => PACKABLE.test(file))
          .sort()
          .map((file) => [
            file.replace('index.html', ''),
            [...filesNamed(read(file), named), ...FRAME],
          ]);
        writeFileSync(join(folder, 'packed-files.json'), JSON.stringify(Object.fromEntries(pages)));
      },
    },
  };
}
