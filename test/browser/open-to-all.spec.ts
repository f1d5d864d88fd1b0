/**
 * Each kind of page as it is read by someone who magnifies it, sets text wider apart, goes by
 * keyboard, or has colors of their own.
 */
import { expect, type Page, test } from 'playwright/test';

const KINDS = [
  '',
  'lessons/splitting-the-depth/',
  'bench/',
  'bench/sheet/',
  'bench/piece/',
  'trial/',
  'measure/',
  'practice/',
  'checks/',
  'search/',
  'teach/assign/',
  'teach/mark/',
  'teach/sign-off/',
];

async function wake(page: Page): Promise<void> {
  for (const island of await page.locator('astro-island').all()) {
    await island.locator(':scope > *').first().scrollIntoViewIfNeeded();
    await expect(island).not.toHaveAttribute('ssr');
  }
  await page.evaluate(() => scrollTo(0, 0));
}

for (const path of KINDS) {
  test.describe(`/${path}`, () => {
    test.describe('magnified four times', () => {
      // 1280 × 1024 at 400 %. The reader's own style sheet is theirs to set, whatever the policy.
      test.use({ viewport: { width: 320, height: 256 }, bypassCSP: true });

      test('fits with text wide apart, and shows what has the focus', async ({ page }) => {
        await page.emulateMedia({ reducedMotion: 'reduce' });
        await page.goto(path);
        await wake(page);
        const narrow = await page.evaluate(() => document.documentElement.scrollWidth);
        expect.soft(narrow, 'width needed').toBeLessThanOrEqual(320);
        // The spacing of WCAG 1.4.12.
        await page.addStyleTag({
          content: `* { line-height: 1.5 !important; letter-spacing: 0.12em !important;
            word-spacing: 0.16em !important } p { margin-block-end: 2em !important }`,
        });
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect.soft(wide, 'width needed with text wide apart').toBeLessThanOrEqual(320);

        const hidden: string[] = [];
        for (let step = 0; step < 40; step += 1) {
          await page.keyboard.press('Tab');
          const look = () =>
            page.evaluate(() => {
              const focused = document.activeElement;
              if (!focused || focused === document.body) return null;
              const shown = [focused, ...((focused as HTMLInputElement).labels ?? [])].some(
                (element) =>
                  [...element.getClientRects()].some(({ left, right, top, bottom }) => {
                    // Any part that is not covered will do: WCAG 2.4.11 asks for no more.
                    const across = [0.05, 0.5, 0.95].map((part) => left + (right - left) * part);
                    const down = [0.05, 0.5, 0.95].map((part) => top + (bottom - top) * part);
                    return across.some((x) =>
                      down.some((y) => {
                        const met = document.elementFromPoint(x, y);
                        return met !== null && (element.contains(met) || met.contains(element));
                      }),
                    );
                  }),
              );
              return shown ? null : focused.outerHTML.slice(0, 120);
            });
          // What comes into view at focus may take a moment.
          for (let turn = 0; turn < 20 && (await look()) !== null; turn += 1) {
            await page.waitForTimeout(50);
          }
          const fault = await look();
          if (fault) hidden.push(fault);
        }
        expect.soft(hidden, 'focused and not to be seen').toEqual([]);
      });
    });

    test('keeps still while it loads; its drawings and choices tell in forced colors', async ({
      page,
    }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      // A page that jumps does so each time; a typeface that came late did not come from the cache.
      let seen = { shift: Infinity, moved: [''] };
      for (let turn = 0; turn < 3 && seen.shift >= 0.01; turn += 1) {
        await page.goto(path);
        await wake(page);
        seen = await page.evaluate(
          () =>
            new Promise<{ shift: number; moved: string[] }>((done) => {
              new PerformanceObserver((list) => {
                const shifts = list.getEntries() as (PerformanceEntry & {
                  value: number;
                  sources: { node: Element | null }[];
                })[];
                done({
                  shift: shifts.reduce((sum, { value }) => sum + value, 0),
                  moved: shifts.flatMap(({ sources }) =>
                    sources.map(
                      ({ node }) => `${node?.nodeName} ${node?.textContent?.slice(0, 40)}`,
                    ),
                  ),
                });
              }).observe({ type: 'layout-shift', buffered: true });
              setTimeout(() => done({ shift: 0, moved: [] }), 300);
            }),
        );
      }
      expect.soft(seen.shift, seen.moved.join('\n')).toBeLessThan(0.01);
      // What changes at once runs for less than a frame.
      const moving = () =>
        page.evaluate(
          () => document.getAnimations().filter(({ playState }) => playState === 'running').length,
        );
      await expect.poll(moving, 'animations for someone who asked for none').toBe(0);

      await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
      const { unseen, alike } = await page.evaluate(() => {
        const seen = (element: Element) =>
          (element as HTMLElement).checkVisibility() && element.getClientRects().length > 0;
        const background = getComputedStyle(document.documentElement).backgroundColor;
        const name = (element: Element) => element.outerHTML.slice(0, 120);
        const texts = [...document.querySelectorAll('main svg text')].filter(seen);
        // Words get a ground of the page's color there, unless they were taken care of.
        const sunk = [...document.querySelectorAll('main :is(button, label, a, p, td, th)')].filter(
          (element) => {
            const { color, forcedColorAdjust } = getComputedStyle(element);
            return seen(element) && color === background && forcedColorAdjust !== 'none';
          },
        );
        const drawings = [...document.querySelectorAll('main svg')].filter(seen);
        const inked = (drawing: Element) =>
          [...drawing.querySelectorAll('path, line, rect, circle')].some((shape) => {
            const { stroke, fill } = getComputedStyle(shape);
            return [stroke, fill].some((color) => color !== 'none' && color !== background);
          });
        const look = (label: Element) => {
          const { backgroundColor, borderColor, color, outlineStyle } = getComputedStyle(label);
          return [backgroundColor, borderColor, color, outlineStyle].join();
        };
        // A choice whose own dot or box is hidden must tell by its label.
        const alike = [...document.querySelectorAll('.switch')].filter(seen).filter((choices) => {
          const chosen = choices.querySelector('input:checked + span');
          const other = choices.querySelector('input:not(:checked) + span');
          return chosen && other && look(chosen) === look(other);
        });
        return {
          unseen: [
            ...sunk,
            ...texts.filter((text) => getComputedStyle(text).fill === background),
            ...drawings.filter((drawing) => !inked(drawing)),
          ].map(name),
          alike: alike.map(name),
        };
      });
      expect.soft(unseen, 'drawn in the color of the background').toEqual([]);
      expect.soft(alike, 'chosen looks like not chosen').toEqual([]);
    });
  });
}
