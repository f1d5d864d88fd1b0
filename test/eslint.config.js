import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import astro from 'eslint-plugin-astro';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';

/**
 * Which folders of src a folder may import from, besides itself and the files beside the folders.
 * pages → layouts, widgets → diagrams → core; widgets → practice, class → core.
 */
const arrows = {
  core: [],
  diagrams: ['core'],
  practice: ['core'],
  class: ['core', 'practice'],
  checks: ['core'],
  offline: [],
  search: [],
  packing: ['class'],
  widgets: ['core', 'diagrams', 'practice', 'class', 'search'],
  layouts: ['core', 'diagrams', 'practice', 'class', 'widgets'],
};

const folders = [...Object.keys(arrows), 'pages'];

/** These run in any JavaScript: in the browser, in a worker, and from a shell with Node. */
const plain = ['core', 'practice', 'class', 'checks'];

function layering(folder) {
  const closed = folders.filter((other) => other !== folder && !arrows[folder].includes(other));
  const inside = String.raw`(^|/)(${closed.join('|')})/`;
  const library = String.raw`^(svelte|astro|d3-(?!dsv)|@astrojs/|node:)|\.(svelte|astro)$`;
  const message = `src/${folder} may import from ${arrows[folder].join(', ') || 'itself'} only.`;
  const banned = plain.includes(folder) ? [inside, library] : [inside];
  return {
    files: [`src/${folder}/**/*.{ts,svelte,astro}`],
    rules: {
      'no-restricted-imports': ['error', { patterns: banned.map((regex) => ({ regex, message })) }],
      'no-restricted-syntax': [
        'error',
        ...banned.map((regex) => ({
          selector: `ImportExpression > Literal[value=/${regex.replaceAll('/', String.raw`\/`)}/]`,
          message,
        })),
      ],
    },
  };
}

export default defineConfig(
  { ignores: ['dist', 'test-results', '.astro', 'node_modules'] },
  js.configs.recommended,
  ts.configs.strict,
  ts.configs.stylistic,
  svelte.configs.recommended,
  astro.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      'no-undef': 'off', // the type checkers know better
      eqeqeq: 'error',
      'no-console': 'error',
      '@typescript-eslint/no-non-null-assertion': 'off', // under noUncheckedIndexedAccess it says: I looked
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      'svelte/prefer-writable-derived': 'off', // takes `mounted`, set true in an effect, for a derived
      'svelte/no-useless-mustaches': 'off', // {' '} is how a space survives
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser } },
  },
  { files: ['test/**', '.ci/**'], rules: { 'no-console': 'off' } },
  ...Object.keys(arrows).map(layering),
);
