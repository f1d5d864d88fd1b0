import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build } from 'vite';

const WORKER = 'offline.js';

/** Writes the service worker with the list of what it keeps, when the site is built. */
export function keepForOffline(): AstroIntegration {
  return {
    name: 'keep-for-offline',
    hooks: {
      'astro:build:done': ({ dir }) => writeWorker(fileURLToPath(dir)),
    },
  };
}

/** Writes `offline.js` into a built site's folder: a worker that keeps what is there now. */
export async function writeWorker(folder: string): Promise<void> {
  await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: {
      KEPT_FILES: JSON.stringify(filesOf(folder)),
      'process.env.NODE_ENV': '"production"',
    },
    build: {
      outDir: folder,
      emptyOutDir: false,
      modulePreload: false,
      lib: {
        entry: join(import.meta.dirname, 'worker.ts'),
        formats: ['iife'],
        name: 'worker',
        fileName: () => WORKER,
      },
    },
  });
}

/** Every file of the built site. A file whose name carries its hash needs no revision. */
function filesOf(folder: string): { url: string; revision: string | null }[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== WORKER)
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((file) => {
      const url = file.slice(folder.length).replaceAll('\\', '/').replace(/^\//, '');
      const hashed = url.startsWith('_astro/');
      const revision = () => createHash('sha256').update(readFileSync(file)).digest('hex');
      return { url, revision: hashed ? null : revision().slice(0, 16) };
    });
}
