import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { passagesOf } from './passages.ts';

/** Writes search/passages.json, all that the search page looks through, when the site is built. */
export function writePassages(): AstroIntegration {
  return {
    name: 'write-passages',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const folder = fileURLToPath(dir);
        const passages = readdirSync(folder, { recursive: true, encoding: 'utf8' })
          .map((file) => file.replaceAll('\\', '/'))
          .filter((file) => file.endsWith('/index.html') && !file.startsWith('search/'))
          .sort()
          .flatMap((file) =>
            passagesOf(readFileSync(join(folder, file), 'utf8'), file.replace('index.html', '')),
          );
        writeFileSync(join(folder, 'search/passages.json'), JSON.stringify(passages));
      },
    },
  };
}
