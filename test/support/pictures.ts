/** The pictures of the README, taken of the built site: `npm run build && npm run pictures`. */
import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { preview } from 'astro';
import { type Locator, type Page, chromium } from 'playwright';
import { findBrowser, launchOptions } from './findBrowser.ts';

const root = resolve(import.meta.dirname, '../..');
const folder = join(root, '.readme');
mkdirSync(folder, { recursive: true });

const server = await preview({ root, logLevel: 'error', server: { port: 0 } });
const { path: executable } = await findBrowser();
const browser = await chromium.launch(launchOptions(executable));
const page = await browser.newPage({
  viewport: { width: 1100, height: 900 },
  locale: 'en-US',
  colorScheme: 'light',
  serviceWorkers: 'block',
});

async function joint({ goto, locator }: Opened): Promise<Locator> {
  await goto('/lessons/leg-and-apron/');
  const prediction = locator('form').first();
  await prediction.scrollIntoViewIfNeeded();
  await prediction.getByRole('radio').first().check();
  await prediction.getByRole('button').first().click();
  const figure = locator('.panel:has(figure)').first();
  await figure.scrollIntoViewIfNeeded();
  await figure.getByRole('button', { name: 'Push it home' }).waitFor();
  return figure.locator('figure').first();
}

async function trial({ goto, locator }: Opened): Promise<Locator> {
  await goto('/trial/#start=same-stop;kind=tee');
  for (const name of ['Drill', 'Push together']) {
    const press = page.getByRole('button', { name, exact: true });
    await press.waitFor();
    await press.click();
  }
  const drawing = locator('.trial-run').getByRole('img').first();
  await drawing.waitFor();
  return drawing;
}

interface Opened {
  readonly goto: (path: string) => Promise<void>;
  readonly locator: Page['locator'];
}

const opened: Opened = {
  goto: async (path) => void (await page.goto(`http://localhost:${server.port}${path}`)),
  locator: page.locator.bind(page),
};
try {
  for (const [name, show] of Object.entries({ joint, trial })) {
    const shown = await show(opened);
    await page.waitForTimeout(500);
    await shown.screenshot({ path: join(folder, `${name}.png`) });
  }
} finally {
  await browser.close();
  await server.stop();
}
