/**
 * What must hold on every page that was built, whatever is on it. The pages are found in the
 * site's folder, so that a new page needs no line here.
 */
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parse } from 'node-html-parser';
import { expect, type Page, test } from 'playwright/test';
import { axeFaults } from '../support/axe.ts';
import { scriptsOf } from '../support/scripts.ts';
import { fileOf, pagesOf, site } from '../support/site.ts';

const pages = pagesOf(site.folder);

/** At the host's root these stand for all: islands, a worker, a late import, nothing but text. */
const SAMPLE = ['/', '/bench/', '/lessons/errors-odds-and-the-dry-fit/', '/404.html'];

/**
 * The most JavaScript that a page may load by itself, gzipped, in kB: for a lesson and the contents
 * what was promised, for the others what they need and a little room.
 */
function budget(path: string): number {
  if (path.startsWith('/lessons/')) return 60;
  const tools: Readonly<Record<string, number>> = {
    '/assignment/': 92,
    '/bench/': 98,
    '/bench/piece/': 82,
    '/bench/sheet/': 84,
    '/bench/story-stick/a4/': 55,
    '/bench/story-stick/letter/': 55,
    '/measure/': 128,
    '/practice/': 40,
    '/search/': 35,
    '/teach/assign/': 102,
    '/teach/mark/': 93,
    '/teach/order/': 60,
    '/teach/sign-off/': 30,
    '/teach/stations/': 30,
    '/teach/worksheets/': 113,
    '/trial/': 92,
    '/your-work/': 40,
  };
  return tools[path] ?? 15;
}

/** The most that all style sheets of a page may weigh, gzipped, and all its fonts, in kB. */
const STYLES = 26;
const FONTS = 75;

/** Scrolls through the page, so that every island that waits to be seen comes alive. */
async function wakeIslands(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (const island of document.querySelectorAll('astro-island > :first-child')) {
      island.scrollIntoView({ behavior: 'instant' });
      // Whether it is in sight is told between two frames.
      for (let i = 0; i < 2; i++) await new Promise((next) => requestAnimationFrame(next));
    }
  });
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await page.evaluate(() => scrollTo({ top: 0, behavior: 'instant' }));
}

test('the site was built and has pages', () => {
  expect(pages.map(({ path }) => path)).toEqual(expect.arrayContaining(['/', '/404.html']));
});

test('every component that a script can show has its styles in the build', () => {
  // A component that no page is built with loses them: its class is in a script and in no sheet.
  const classes = (end: string) => {
    const folder = join(site.folder, '_astro');
    const texts = readdirSync(folder)
      .filter((name) => name.endsWith(end))
      .map((name) => readFileSync(join(folder, name), 'utf8'));
    return new Set(texts.join('\n').match(/\bsvelte-[a-z0-9]{5,7}\b/g));
  };
  const styled = classes('.css');
  const unstyled = [...classes('.js')].filter((name) => !styled.has(name));
  expect(unstyled.filter((name) => name !== 'svelte-trusted')).toEqual([]);
  expect(styled.size).toBeGreaterThan(20);
});

test('every page shares two style sheets and a typeface that keep to the budget', () => {
  const folder = join(site.folder, '_astro');
  const weightOf = (end: string, packed: boolean) =>
    readdirSync(folder)
      .filter((name) => name.endsWith(end))
      .map((name) => readFileSync(join(folder, name)))
      .reduce((sum, bytes) => sum + (packed ? gzipSync(bytes).length : bytes.length), 0) / 1000;
  const [styles, fonts] = [weightOf('.css', true), weightOf('.woff2', false)];
  process.stdout.write(`\n  Styles ${styles.toFixed(1)} kB, fonts ${fonts.toFixed(1)} kB\n`);
  expect(styles).toBeLessThanOrEqual(STYLES);
  expect(fonts).toBeLessThanOrEqual(FONTS);
  for (const { path } of pages) {
    const links = parse(readFileSync(fileOf(path), 'utf8')).querySelectorAll('[rel=stylesheet]');
    expect(links, path).toHaveLength(2);
  }
});

for (const { path, file } of pages) {
  const address = `${site.base}${path}`;

  test.describe(path, () => {
    const tag = SAMPLE.includes(path) ? ' @root' : '';
    test(`comes alive without a fault, fits, passes axe (WCAG 2.2 AA) and prints${tag}`, async ({
      page,
    }) => {
      test.slow(); // a long page, looked at in many ways
      const faults: string[] = [];
      page.on('console', (message) => {
        const own = message.text() !== 'Service Worker registration blocked by Playwright';
        if (own && ['error', 'warning'].includes(message.type())) faults.push(message.text());
      });
      page.on('pageerror', (error) => faults.push(error.message));
      page.on('request', (request) => {
        const { origin, protocol } = new URL(request.url());
        if (origin !== `http://localhost:${site.port}` && protocol !== 'blob:') {
          faults.push(`asks ${request.url()}`);
        }
      });
      page.on('requestfailed', (request) => faults.push(`no answer from ${request.url()}`));
      await page.addInitScript(() => {
        document.addEventListener('securitypolicyviolation', (event) => {
          console.error(`security policy: ${event.violatedDirective} ${event.blockedURI}`);
        });
      });
      await page.goto(address, { waitUntil: 'networkidle' });
      await wakeIslands(page);
      expect(faults).toEqual([]);
      const policy = page.locator('meta[http-equiv="content-security-policy"]');
      await expect(policy).toHaveAttribute('content', /default-src 'none'/);
      expect(await policy.getAttribute('content')).not.toMatch(/unsafe|\*/);
      // test/run.ts tries the site twice; the second time only where its addresses lead.
      if (process.env['GATES'] === 'addresses') return;

      await test.step('does not scroll sideways, from a phone to a desk', async () => {
        for (const width of [360, 768, 1280]) {
          await page.setViewportSize({ width, height: 740 });
          for (const unit of ['in', 'mm']) {
            await page.evaluate((chosen) => {
              const detail = { unit: chosen, keep: false };
              document.dispatchEvent(new CustomEvent('choose-unit', { detail }));
            }, unit);
            const needed = await page.evaluate(() => document.documentElement.scrollWidth);
            expect.soft(needed, `at ${width} px, in ${unit}`).toBeLessThanOrEqual(width);
          }
        }
      });

      // Structure doesn't depend on the colors: in the dark only they are looked at again, and all
      // lessons are made of the same.
      const isSample = !path.startsWith('/lessons/') || SAMPLE.includes(path);
      for (const [width, colorScheme] of [
        [360, 'light'],
        [1280, 'dark'],
      ] as const) {
        if (colorScheme === 'dark' && !isSample) continue;
        await test.step(`passes axe at ${width} px, ${colorScheme}`, async () => {
          await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
          await page.setViewportSize({ width, height: 800 });
          const found = await axeFaults(
            page,
            colorScheme === 'dark' ? ['color-contrast'] : undefined,
          );
          expect.soft(found, `${width} px, ${colorScheme}`).toEqual([]);
        });
      }

      await test.step('prints', async () => {
        // One lesson is set in pages for all of them.
        if (isSample) {
          const pdf = (await page.pdf({ format: 'Letter' })).toString('latin1');
          expect.soft(pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeGreaterThan(0);
        }
        await page.emulateMedia({ media: 'print', colorScheme: 'light' });
        await expect.soft(page.locator('h1').first()).toBeVisible();
        await expect.soft(page.locator('header.site-head')).toBeHidden();
        // The browser takes a moment to change over.
        const paper = () =>
          page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
        await expect.poll(paper).toBe('rgb(255, 255, 255)');
      });
    });

    test('its JavaScript keeps to the budget', () => {
      const kilobytes = (bytes: number) => (bytes / 1000).toFixed(1);
      const { loaded, inline, total, onDemand } = scriptsOf(site.folder, file, site.base);
      const most = budget(path);
      const later = [...onDemand.values()].reduce((sum, weight) => sum + weight, 0);
      process.stdout.write(
        `\n  JavaScript ${path.padEnd(36)} ${kilobytes(total).padStart(6)} kB` +
          ` of ${most}; on demand ${kilobytes(later)} kB\n`,
      );
      const parts = [...loaded, ['inline scripts', inline] as const];
      const list = parts.map(([name, weight]) => `${kilobytes(weight)} ${name}`).join('\n');
      expect(total / 1000, list).toBeLessThanOrEqual(most);
    });

    test('every address on it starts with the base and leads somewhere @root', () => {
      const faults: string[] = [];
      const html = parse(readFileSync(fileOf(path), 'utf8'));
      for (const element of html.querySelectorAll(
        '[href], [src], [component-url], [renderer-url]',
      )) {
        for (const name of ['href', 'src', 'component-url', 'renderer-url']) {
          const written = element.getAttribute(name);
          if (written !== undefined) faults.push(...faultOf(written));
        }
      }
      expect(faults).toEqual([]);

      function faultOf(written: string): string[] {
        const here = `http://localhost${site.base}${path}`;
        const url = new URL(written, here);
        if (url.origin !== 'http://localhost') return []; // another site: nothing loads from it
        if (!url.pathname.startsWith(`${site.base}/`)) return [`${written}: not under the base`];
        const target = fileOf(decodeURIComponent(url.pathname.slice(site.base.length)));
        if (!existsSync(target)) return [`${written}: there is no ${target}`];
        const id = decodeURIComponent(url.hash.slice(1));
        if (id === '' || /^\d+;/.test(id)) return []; // a setup link is not an element's id
        const ids = parse(readFileSync(target, 'utf8')).querySelectorAll('[id]');
        return ids.some((element) => element.id === id) ? [] : [`${written}: no such id there`];
      }
    });
  });
}

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  // A few pages a test: to begin anew for each would take longer than to read it.
  const PART = 8;
  for (let from = 0; from < pages.length; from += PART) {
    const part = pages.slice(from, from + PART);
    test(`read: a heading, the text, every figure, and no control that only looks alive (${part[0]!.path} and ${part.length - 1} more)`, async ({
      page,
    }) => {
      for (const { path } of part) {
        await test.step(path, async () => {
          await page.goto(`${site.base}${path}`);
          await expect(page.locator('h1')).toHaveCount(1);
          await expect(page.locator('h1')).toBeVisible();
          expect((await page.locator('main').innerText()).length).toBeGreaterThan(80);
          for (const island of await page.locator('astro-island').all()) {
            // What only a script can say is not there without one.
            if ((await island.locator('.needs-script').count()) > 0) continue;
            const said = (await island.innerText()).trim();
            expect(said.length, 'an empty island').toBeGreaterThan(20);
          }
          // What is there but disabled looks it; what looks alive must be, as a popover's button is.
          const alive = page.locator(
            ':is(button:not([popovertarget]), input, select, textarea):enabled',
          );
          await expect(alive.filter({ visible: true })).toHaveCount(0);
        });
      }
    });
  }
});
