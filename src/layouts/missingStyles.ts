import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/**
 * Lets a script that is loaded later wait for no style sheet that there is not. Astro links a
 * component's styles in the pages that can come to show it, and may leave out the sheet that the
 * bundler had for its script; the bundler's list still names it, and the import would fail. Its
 * place in the list is taken by the script that has the list.
 */
export function forgetMissingStyles(): AstroIntegration {
  return {
    name: 'forget-missing-styles',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const folder = join(fileURLToPath(dir), '_astro');
        for (const script of readdirSync(folder).filter((name) => name.endsWith('.js'))) {
          const code = readFileSync(join(folder, script), 'utf8');
          const known = code.replace(/"\.\/[^"]+\.css"/g, (name) =>
            existsSync(join(folder, basename(name.slice(1, -1)))) ? name : `"./${script}"`,
          );
          if (known !== code) writeFileSync(join(folder, script), known);
        }
      },
    },
  };
}
