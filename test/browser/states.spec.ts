/**
 * What a reader brings about is as open to all as the page was: WCAG 2.2 AA, on a phone in light
 * and on a desk in the dark, and targets large enough for a thumb.
 */
import { expect, type Page, test } from 'playwright/test';
import { axeFaults } from '../support/axe.ts';

/** Targets under 24 px whose circle of 24 px meets another target (WCAG 2.5.8). */
function smallTargets(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const shown = [
      ...document.querySelectorAll('a[href], button, input, select, textarea, summary'),
    ].flatMap((it) => {
      // A box is pressed by its label too.
      const label = it instanceof HTMLInputElement ? it.closest('label') : null;
      const box = (label ?? it).getBoundingClientRect();
      const visible = it.checkVisibility({ visibilityProperty: true }) && box.width > 1;
      const inSentence = getComputedStyle(it).display === 'inline' && it.closest('p, li, dd, td');
      const ownSlider = it instanceof HTMLInputElement && it.type === 'range';
      return visible && !inSentence && !ownSlider ? [{ it, box }] : [];
    });
    const small = shown.filter(({ box }) => box.width < 23.9 || box.height < 23.9);
    return small.flatMap(({ it, box }) => {
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      const meets = shown.some((other) => {
        if (other.it === it || other.it.contains(it) || it.contains(other.it)) return false;
        const dx = Math.max(other.box.left - x, 0, x - other.box.right);
        const dy = Math.max(other.box.top - y, 0, y - other.box.bottom);
        return Math.hypot(dx, dy) < 12;
      });
      const size = `${box.width.toFixed(0)} by ${box.height.toFixed(0)}`;
      return meets ? [`${size}: ${it.outerHTML.slice(0, 90)}`] : [];
    });
  });
}

async function holds(page: Page, state: string): Promise<void> {
  await test.step(state, async () => {
    for (const [width, colorScheme] of [
      [360, 'light'],
      [1280, 'dark'],
    ] as const) {
      await page.setViewportSize({ width, height: 800 });
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      const found = await axeFaults(
        page,
        colorScheme === 'dark' ? ['color-contrast', 'target-size'] : undefined,
      );
      expect.soft(found, `${state}, ${width} px`).toEqual([]);
      if (width === 360) expect.soft(await smallTargets(page), state).toEqual([]);
    }
  });
}

const press = (page: Page, name: string) =>
  page.getByRole('button', { name, exact: true }).first().click();

test('a lesson answered, its working open, a word explained', async ({ page }) => {
  test.slow();
  await page.goto('lessons/splitting-the-depth/');
  for (const island of await page.locator('astro-island').all()) {
    await island.locator(':scope > *').first().scrollIntoViewIfNeeded();
    await expect(island).not.toHaveAttribute('ssr');
  }
  const predicts = page.locator('form').filter({
    has: page.getByRole('button', { name: 'This is my prediction' }),
  });
  await predicts.getByRole('radio').first().check();
  await press(page, 'This is my prediction');
  for (const form of await page.locator('form').all()) {
    const check = form.getByRole('button', { name: 'Check', exact: true });
    if ((await check.count()) === 0) continue;
    const choice = form.getByRole('radio').or(form.getByRole('checkbox'));
    const text = form.getByRole('textbox');
    if ((await choice.count()) > 0) await choice.last().check();
    else if ((await text.count()) > 0) await text.fill('a bit more');
    await check.click();
  }
  await page.getByRole('textbox', { name: 'Thickness of B' }).first().fill('a lot');
  await page
    .getByRole('button', { name: /Depth of the hole in B/ })
    .first()
    .click();
  await expect(page.getByText(/is not a length/).first()).toBeVisible();
  await press(page, 'Free depth');
  await expect(page.locator('.term-says:popover-open')).toBeVisible();
  await holds(page, 'answered, nonsense typed, working open, a word explained');
});

test('the bench comparing, a kept joint removed, nonsense typed', async ({ page }) => {
  test.slow();
  await page.goto('bench/');
  await expect(page.getByLabel('Thickness of A', { exact: true }).last()).toBeEnabled();
  await page.getByLabel('What the joint is called').fill('Side to top');
  await press(page, 'Keep it on this machine');
  await press(page, 'Set it aside, to compare');
  await page.getByRole('textbox', { name: 'Thickness of A', exact: true }).fill('thick');
  await press(page, 'Remove Side to top');
  await expect(page.getByRole('button', { name: 'Put it back' })).toBeVisible();
  await expect(page.getByRole('region', { name: 'Compared' })).toBeVisible();
  await holds(page, 'compared, removed, nonsense typed');
});

test('search with places and with none', async ({ page }) => {
  await page.goto('search/#find=free%20depth');
  await expect(page.locator('.found a').first()).toBeVisible();
  await holds(page, 'found');
  await page.getByRole('searchbox').fill('zebra');
  await expect(page.getByRole('status').first()).toHaveText(/^Nothing found/);
  await holds(page, 'nothing found');
});

test('what went wrong, with its likely causes', async ({ page }) => {
  await page.goto('measure/');
  await page.getByLabel('The joint stands open: a gap').check();
  await expect(
    page.getByRole('region', { name: 'What fits' }).getByRole('heading', { level: 4 }).first(),
  ).toBeVisible();
  await holds(page, 'causes');
});

test('asked whether to forget everything', async ({ page }) => {
  await page.goto('bench/');
  await expect(page.getByLabel('Thickness of A', { exact: true }).last()).toBeEnabled();
  await page.getByLabel('What the joint is called').fill('Shelf');
  await press(page, 'Keep it on this machine');
  await page.goto('your-work/');
  await press(page, 'Forget everything …');
  await expect(page.getByRole('button', { name: 'Keep it', exact: true })).toBeVisible();
  await holds(page, 'asked');
});
