/**
 * How soon a change of input is on the screen, by the browser's own event timing, on this
 * processor and on one slowed fourfold; and what a page weighs against a bare island of the same
 * versions. For a person to read; nothing here passes or fails: `npm run bench:pages`.
 */
import { mkdtempSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import svelte from '@astrojs/svelte';
import { build, preview } from 'astro';
import { type Page, chromium } from 'playwright';
import { findBrowser, launchOptions } from '../support/findBrowser.ts';
import { scriptsOf } from '../support/scripts.ts';
import { pagesOf } from '../support/site.ts';

const root = resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'matched-holes-'));
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';

/** A site with one island and nothing else, made with the same versions. */
async function bareIsland(): Promise<number> {
  const bare = join(folder, 'bare');
  mkdirSync(join(bare, 'src/pages'), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(bare, 'node_modules'));
  writeFileSync(
    join(bare, 'src/Count.svelte'),
    '<script>let n = $state(0);</script><button onclick={() => n++}>{n}</button>',
  );
  writeFileSync(
    join(bare, 'src/pages/index.astro'),
    "---\nimport Count from '../Count.svelte';\n---\n<html><body><Count client:load /></body></html>",
  );
  await build({
    root: bare,
    configFile: false,
    logLevel: 'error',
    integrations: [svelte({ compilerOptions: { runes: true } })],
  });
  return scriptsOf(join(bare, 'dist'), 'index.html', '').total;
}

/** Milliseconds from each press of an arrow key to the frame that shows what came of it. */
async function presses(page: Page, slow: number): Promise<readonly number[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slow });
  await page.evaluate(() => {
    const seen: number[] = [];
    Object.assign(globalThis, { seen });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        if (entry.name === 'keydown') seen.push(entry.duration);
    }).observe({ type: 'event', durationThreshold: 0 } as PerformanceObserverInit);
  });
  for (let i = 0; i < 30; i++) {
    await page.keyboard.press(i % 6 < 3 ? 'ArrowRight' : 'ArrowLeft');
    await page.waitForTimeout(60);
  }
  await page.waitForTimeout(300);
  return page.evaluate(() => (globalThis as unknown as { seen: number[] }).seen);
}

const at = (values: readonly number[], share: number) =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))];

try {
  const outDir = join(folder, 'dist');
  await build({ root, outDir, logLevel: 'error' });

  console.log('JavaScript that a page loads by itself, gzipped, against a bare island');
  const bare = await bareIsland();
  console.log(`  ${'a bare island'.padEnd(52)} ${(bare / 1000).toFixed(1).padStart(6)} kB`);
  for (const { path, file } of pagesOf(outDir)) {
    const { total, onDemand } = scriptsOf(outDir, file, '');
    const later = [...onDemand.values()].reduce((sum, each) => sum + each, 0);
    console.log(
      `  ${path.padEnd(52)} ${(total / 1000).toFixed(1).padStart(6)} kB` +
        ` = ${(total / bare).toFixed(1)} ×; ${(later / 1000).toFixed(1)} kB more on demand`,
    );
  }

  const server = await preview({ root, outDir, logLevel: 'error', server: { port: 0 } });
  const browser = await findBrowser();
  const running = await chromium.launch(launchOptions(browser.path));
  console.log('\nFrom a press of an arrow key to the frame that shows it, ms (30 presses)');
  for (const path of [
    '/bench/',
    ...pagesOf(outDir)
      .map(({ path }) => path)
      .filter((each) => each.startsWith('/lessons/')),
  ]) {
    const page = await running.newPage({ serviceWorkers: 'block' });
    await page.goto(`http://localhost:${server.port}${path}`);
    const prediction = page
      .locator('form')
      .filter({ has: page.getByRole('button', { name: 'This is my prediction' }) });
    if ((await prediction.count()) > 0) {
      await prediction.first().scrollIntoViewIfNeeded();
      await prediction.getByRole('radio').first().check();
      await prediction.getByRole('button').first().click();
    }
    const figure = page.locator('.panel:has(figure)').first();
    if ((await figure.count()) > 0) await figure.scrollIntoViewIfNeeded();
    const slider = page.getByRole('slider').and(page.locator(':enabled')).first();
    const there = await slider.waitFor({ timeout: 5000 }).then(
      () => true,
      () => false,
    );
    if (there) {
      await slider.focus();
      for (const slow of [1, 4]) {
        const times = await presses(page, slow);
        console.log(
          `  ${path.padEnd(52)} ${slow === 1 ? 'as it is   ' : 'four times slower'.padEnd(11)}` +
            ` half within ${at(times, 0.5)}, all but one in twenty within ${at(times, 0.95)}`,
        );
      }
    }
    await page.close();
  }
  await running.close();
  await server.stop();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
