import { ESLint } from 'eslint';
import { describe, expect, it } from 'vitest';

const eslint = new ESLint({
  cwd: `${import.meta.dirname}/../..`,
  overrideConfigFile: 'test/eslint.config.js',
});

async function faults(filePath: string, code: string): Promise<readonly string[]> {
  const [result] = await eslint.lintText(code, { filePath });
  return result!.messages
    .filter(({ ruleId }) => ruleId?.startsWith('no-restricted'))
    .map(({ message }) => message);
}

const script = (code: string) => `<script lang="ts">\n${code}\n</script>\n`;
const front = (code: string) => `---\n${code}\n---\n`;

describe('the layering rules', () => {
  it.each([
    ['src/core/joint/example.ts', `export * from '../../widgets/units.svelte.ts';`],
    ['src/core/joint/example.ts', `import '../../diagrams/section/example.ts';`],
    ['src/core/joint/example.ts', `import { scaleLinear } from 'd3-scale'; scaleLinear();`],
    ['src/core/joint/example.ts', `await import('../../practice/example.ts');`],
    ['src/core/joint/example.ts', `import { readFileSync } from 'node:fs'; readFileSync('');`],
    ['src/practice/example.ts', `import Example from './Example.svelte'; Example;`],
    ['src/practice/example.ts', `import '../class/example.ts';`],
    ['src/diagrams/section/example.ts', `import '../../widgets/units.svelte.ts';`],
    ['src/diagrams/section/Example.svelte', script(`import '../../practice/example.ts';`)],
    ['src/widgets/bench/Example.svelte', script(`import '../../layouts/example.ts';`)],
    ['src/widgets/bench/Example.astro', front(`import '../../pages/example.ts';`)],
    ['src/layouts/Example.astro', front(`import '../pages/example.ts';`)],
  ])('refuse in %s: %s', async (file, code) => {
    expect(await faults(file, code)).toHaveLength(1);
  });

  it.each([
    ['src/core/joint/example.ts', `import '../length/mm.ts';`],
    [
      'src/diagrams/section/Example.svelte',
      script(`import 'd3-scale'; import '../../core/index.ts';`),
    ],
    ['src/practice/example.ts', `import '../core/index.ts';`],
    ['src/class/example.ts', `import '../practice/example.ts';`],
    ['src/widgets/bench/Example.svelte', script(`import '../../diagrams/section/Example.svelte';`)],
    ['src/widgets/bench/Example.astro', front(`import '../../href.ts';`)],
    [
      'src/pages/example.astro',
      front(`import '../layouts/Page.astro'; import '../core/index.ts';`),
    ],
  ])('allow in %s: %s', async (file, code) => {
    expect(await faults(file, code)).toEqual([]);
  });
});
