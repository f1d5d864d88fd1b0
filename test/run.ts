/**
 * Everything that must hold before a change is kept. Each gate runs even where an earlier one
 * failed, unless it needs what that one makes. The last line is 'N passed, N failed': every unit
 * and browser test counts one, and so does every other gate.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { join, resolve } from 'node:path';
import { findBrowser } from './support/findBrowser.ts';

const root = resolve(import.meta.dirname, '..');
const results = join(root, 'test-results');
const outcomes: Outcome[] = [];

interface Outcome {
  readonly gate: string;
  readonly passed: number;
  readonly failed: number;
}

interface Gate {
  /** What it holds, in a few words. */
  readonly name: string;
  readonly command: readonly string[];
  readonly env?: Record<string, string>;
  /** Shows the tool's output while it runs; else only where it fails. */
  readonly live?: boolean;
  /** How many tests passed and failed; without it the gate counts one. */
  readonly count?: () => { passed: number; failed: number };
}

rmSync(results, { recursive: true, force: true });
mkdirSync(results);

// Each of these keeps one processor busy: two at a time.
await Promise.all([
  inTurn([
    { name: 'Format', command: ['prettier', '--check', '.'] },
    {
      name: 'Lint, and which folder may import which',
      command: ['eslint', '-c', 'test/eslint.config.js', '--max-warnings', '0', '.'],
    },
    {
      name: 'Nothing unused: files, exports, packages',
      command: ['knip', '-c', 'test/knip.json', '--no-config-hints'],
    },
  ]),
  inTurn([
    ...['src/core', 'src/practice', 'src/class'].map((folder) => ({
      name: `Types of ${folder}, without a browser's`,
      command: ['tsc', '-p', folder],
    })),
    {
      name: 'Types of pages and tests',
      command: ['astro', 'check', '--minimumFailingSeverity', 'warning'],
    },
    {
      name: 'Types of islands',
      command: ['svelte-check', '--tsconfig', 'test/tsconfig.svelte.json', '--fail-on-warnings'],
    },
  ]),
]);
await gate({
  name: 'Unit tests',
  command: [
    ...['vitest', 'run', '--config', 'test/vitest.config.ts', '--root', '.'],
    ...['--reporter=dot', '--reporter=json', '--outputFile.json=test-results/unit.json'],
  ],
  live: true,
  count: () => {
    const { numPassedTests, numFailedTests } = readJson('unit.json');
    return { passed: numPassedTests, failed: numFailedTests };
  },
});

const browser = await findBrowser().catch((error: unknown) => {
  record('A browser', 0, 1);
  console.log(String(error));
});
if (browser) {
  console.log(`\nThe browser: ${browser.how}`);
  const away = { SITE_BASE: '/woodshop/holes', SITE_URL: 'https://school.example' };
  await siteGates('under a folder', 'away', away, []);
  const atRoot = { SITE_BASE: '/', GATES: 'addresses' };
  await siteGates("at the host's root", 'root', atRoot, ['--grep', '@root']);
}

console.log('\nIn all');
for (const { gate: name, passed, failed } of outcomes) {
  console.log(
    `  ${failed === 0 ? 'passed' : 'FAILED'}  ${name}: ${passed} passed, ${failed} failed`,
  );
}
const sum = (of: 'passed' | 'failed') => outcomes.reduce((total, one) => total + one[of], 0);
console.log(`\n${sum('passed')} passed, ${sum('failed')} failed`);
process.exitCode = sum('failed') === 0 ? 0 : 1;

/** Builds the site somewhere, then tries it in the browser. */
async function siteGates(
  where: string,
  folder: string,
  address: Record<string, string>,
  only: readonly string[],
): Promise<void> {
  const built = await gate({
    name: `Build ${where}`,
    command: ['astro', 'build', '--outDir', `test-results/${folder}`],
    env: address,
  });
  if (!built) return;
  await gate({
    name: `Browser tests ${where}`,
    command: ['playwright', 'test', '-c', 'test/playwright.config.ts', ...only],
    env: {
      ...address,
      SITE_FOLDER: `test-results/${folder}`,
      SITE_PORT: String(await freePort()),
      BROWSER_PATH: browser!.path,
    },
    live: true,
    count: () => {
      const { expected, unexpected, flaky } = readJson('browser.json').stats;
      return { passed: expected, failed: unexpected + flaky };
    },
  });
}

async function inTurn(gates: readonly Gate[]): Promise<void> {
  for (const each of gates) await gate(each);
}

/** Runs one tool and records how it went; true where nothing failed. */
async function gate({ name, command, env, live, count }: Gate): Promise<boolean> {
  if (live) console.log(`\n── ${name} ──`);
  const started = Date.now();
  const { code, output } = await run(command, env ?? {}, live ?? false);
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  const { passed, failed: counts } = count
    ? counted(count)
    : { passed: code === 0 ? 1 : 0, failed: 0 };
  // A tool that stops without a failed test has failed all the same.
  const failed = code === 0 ? counts : Math.max(1, counts);
  if (failed > 0) console.log(output);
  console.log(`${failed === 0 ? 'passed' : 'FAILED'} in ${seconds} s: ${name}`);
  record(name, passed, failed);
  return failed === 0;
}

function record(name: string, passed: number, failed: number): void {
  outcomes.push({ gate: name, passed, failed });
}

/** A report that is missing or holds no test is a failure: the tool never got that far. */
function counted(count: NonNullable<Gate['count']>): { passed: number; failed: number } {
  try {
    const { passed, failed } = count();
    return passed + failed > 0 ? { passed, failed } : { passed: 0, failed: 1 };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

function run(
  [tool, ...args]: readonly string[],
  env: Record<string, string>,
  live: boolean,
): Promise<{ code: number; output: string }> {
  return new Promise((done) => {
    const child = spawn(tool!, args, {
      cwd: root,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...env },
      stdio: ['ignore', live ? 'inherit' : 'pipe', live ? 'inherit' : 'pipe'],
      shell: process.platform === 'win32',
    });
    let output = '';
    child.stdout?.on('data', (chunk: Buffer) => (output += chunk.toString()));
    child.stderr?.on('data', (chunk: Buffer) => (output += chunk.toString()));
    child.on('error', (error) => done({ code: 1, output: String(error) }));
    child.on('close', (code) => done({ code: code ?? 1, output }));
  });
}

function readJson(name: string) {
  return JSON.parse(readFileSync(join(results, name), 'utf8'));
}

function freePort(): Promise<number> {
  return new Promise((done) => {
    const probe = createServer().listen(0, () => {
      const address = probe.address();
      const port = typeof address === 'object' && address ? address.port : 0;
      probe.close(() => done(port));
    });
  });
}
