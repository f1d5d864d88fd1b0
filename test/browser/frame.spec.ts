/** What a reader does with the frame of any page: units, colors, keyboard. */
import { expect, type Page, test } from 'playwright/test';
import { pagesOf, site } from '../support/site.ts';

const lesson = pagesOf(site.folder).find(({ path }) => path.startsWith('/lessons/'))!;
const address = `${site.base}${lesson.path}`;

const lengths = (page: Page, unit: 'in' | 'mm') =>
  page.locator(`main span.${unit}`).filter({ visible: true });
const radio = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });
const html = (page: Page) => page.locator('html');

test.describe('units', () => {
  test('start as the locale has them: inches', async ({ page }) => {
    await page.goto(address);
    await expect(radio(page, 'inches')).toBeChecked();
    await expect(lengths(page, 'in').first()).toBeVisible();
    await expect(lengths(page, 'mm')).toHaveCount(0);
  });

  test.describe('in a metric locale', () => {
    test.use({ locale: 'de-DE' });

    test('start as the locale has them: millimeters', async ({ page }) => {
      await page.goto(address);
      await expect(radio(page, 'mm')).toBeChecked();
      await expect(lengths(page, 'in')).toHaveCount(0);
    });
  });

  test('change by keyboard, on the page and its islands, and stay changed', async ({ page }) => {
    await page.goto(address);
    await radio(page, 'inches').focus();
    await page.keyboard.press('ArrowRight');
    await expect(lengths(page, 'mm').first()).toBeVisible();
    await expect(lengths(page, 'in')).toHaveCount(0);
    await page.reload();
    await expect(radio(page, 'mm')).toBeChecked();
    await expect(lengths(page, 'in')).toHaveCount(0);
  });

  test('follow a link before what is stored, and are not stored by it', async ({ page }) => {
    await page.goto(address);
    await radio(page, 'inches').focus();
    await page.goto(`${address}?again#1;show=mm`);
    await expect(html(page)).toHaveAttribute('data-unit', 'mm');
    await page.goto(`${address}?last`);
    await expect(html(page)).toHaveAttribute('data-unit', 'in');
  });

  test('work where nothing can be stored', async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      });
    });
    await page.goto(address);
    await radio(page, 'mm').check();
    await expect(html(page)).toHaveAttribute('data-unit', 'mm');
  });

  test('print as the reader has them', async ({ page }) => {
    await page.goto(address);
    await radio(page, 'mm').check();
    await page.emulateMedia({ media: 'print' });
    await expect(lengths(page, 'mm').first()).toBeVisible();
    await expect(lengths(page, 'in')).toHaveCount(0);
  });

  test.describe('without JavaScript', () => {
    test.use({ javaScriptEnabled: false });

    test('are both there, the second in brackets', async ({ page }) => {
      await page.goto(address);
      await expect(page.locator('.unit-switch')).toBeHidden();
      await expect(lengths(page, 'in').first()).toBeVisible();
      const second = page.locator('main :not(svg *) > span.in + span.mm').first();
      await expect(second).toBeVisible();
      const bracket = await second.evaluate((span) => getComputedStyle(span, '::before').content);
      expect(bracket).toBe('" ("');
    });
  });
});

test.describe('colors', () => {
  const paper = (page: Page) =>
    page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);

  test('follow the system until the reader chooses, then stay', async ({ page }) => {
    await page.emulateMedia({ colorScheme: 'light' });
    await page.goto(address);
    const light = await paper(page);
    await page.emulateMedia({ colorScheme: 'dark' });
    const dark = await paper(page);
    expect(dark).not.toBe(light);
    await page.getByLabel('Colors').selectOption('light');
    expect(await paper(page)).toBe(light);
    await page.reload();
    expect(await paper(page)).toBe(light);
    await expect(page.getByLabel('Colors')).toHaveValue('light');
  });

  test('give way to forced colors', async ({ page }) => {
    await page.emulateMedia({ forcedColors: 'active' });
    await page.goto(address);
    const token = await page.evaluate(() =>
      getComputedStyle(document.documentElement).getPropertyValue('--wood-a'),
    );
    expect(token.trim().toLowerCase()).toBe('canvas');
  });
});

test('the first press of Tab offers to skip to the text', async ({ page }) => {
  await page.goto(address);
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the text' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
});

test('the contents lead to every lesson', async ({ page }) => {
  await page.goto(`${site.base}/`);
  const lessons = pagesOf(site.folder).filter(({ path }) => path.startsWith('/lessons/'));
  expect(lessons.length).toBeGreaterThanOrEqual(21);
  for (const { path } of lessons) {
    await expect(page.locator(`.units a[href="${site.base}${path}"]`)).toHaveCount(1);
  }
  await page.locator('main a').first().click();
  await expect(page.locator('h1')).toBeVisible();
  expect(new URL(page.url()).pathname).toContain(`${site.base}/lessons/`);
});
