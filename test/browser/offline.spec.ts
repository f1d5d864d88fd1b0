import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { type Page, expect, test } from 'playwright/test';
import { writeWorker } from '../../src/offline/keepForOffline.ts';
import { site } from '../support/site.ts';

/* The site from a folder of this test's own, so that a newer version can be put there. */
test.use({ serviceWorkers: 'allow' });
test.describe.configure({ mode: 'serial' });

let root: string;
let server: Server;
let origin: string;

const TYPES: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

test.beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'matched-holes-'));
  cpSync(site.folder, root, { recursive: true });
  server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname.slice(site.base.length);
    const file = join(root, path.endsWith('/') ? `${path}index.html` : path);
    try {
      const body = readFileSync(file);
      response.writeHead(200, {
        'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
        'cache-control': 'no-cache',
      });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((listening) => server.listen(0, listening));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  origin = `http://localhost:${address.port}${site.base}`;
});

test.afterAll(() => {
  server.close();
  server.closeAllConnections();
  rmSync(root, { recursive: true, force: true });
});

const state = (page: Page) => page.locator('[data-offline]');

test('after one visit every page opens with the network gone', async ({ page, context }) => {
  await page.goto(`${origin}/`);
  await expect(state(page)).toHaveText(/^Kept on this machine/, { timeout: 30_000 });
  await context.setOffline(true);

  const lessons = readdirSync(join(root, 'lessons'));
  expect(lessons.length).toBeGreaterThan(5);
  for (const lesson of lessons) {
    await page.goto(`${origin}/lessons/${lesson}/`);
    await expect(page.locator('h1')).toBeVisible();
  }
  // Not the text alone: islands come alive, and a worker starts and counts.
  await page.goto(`${origin}/bench/?from=somewhere`);
  await page.getByRole('radio', { name: 'Tee', exact: true }).check();
  await expect(page).toHaveURL(/kind=tee/);
  await page.goto(`${origin}/lessons/errors-odds-and-the-dry-fit/`);
  const prediction = page.locator('form').filter({ hasText: 'You put a third pin in the row' });
  await prediction.scrollIntoViewIfNeeded();
  await prediction.getByLabel(/Fewer/).check();
  await prediction.getByRole('button', { name: 'This is my prediction' }).click();
  await page
    .locator('section.panel')
    .filter({ hasText: 'The row as drilled' })
    .scrollIntoViewIfNeeded();
  const odds = page.getByRole('table', { name: 'Of 100 tries' });
  await expect(odds.getByRole('row', { name: /^3/ })).toContainText(/\d/);
});

test('a newer version waits until no page of the old one is open, and is never mixed with it', async ({
  context,
}) => {
  const first = await context.newPage();
  await first.goto(`${origin}/`);
  await expect(state(first)).toHaveText(/^Kept on this machine/, { timeout: 30_000 });
  await first.reload();
  const second = await context.newPage();
  await second.goto(`${origin}/bench/`);

  // The same site with another title everywhere, as after an update.
  for (const file of readdirSync(root, { recursive: true, encoding: 'utf8' })) {
    if (!file.endsWith('.html')) continue;
    const text = readFileSync(join(root, file), 'utf8');
    writeFileSync(join(root, file), text.replaceAll('· Matched Holes</title>', '· Newer</title>'));
  }
  await writeWorker(root);

  await first.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await expect(state(first)).toHaveText(/^A newer version is kept/, { timeout: 30_000 });
  await first.goto(`${origin}/trial/`);
  await expect(first).toHaveTitle(/· Matched Holes$/);

  await expect(state(first)).toHaveText(/^A newer version is kept/);
  await first.getByRole('button', { name: 'Open the newer version' }).click();
  await expect(state(first)).toHaveText(/^Close the other tabs/);
  await second.close();
  await first.getByRole('button', { name: 'Open the newer version' }).click();
  await expect(first).toHaveTitle(/· Newer$/);
});
