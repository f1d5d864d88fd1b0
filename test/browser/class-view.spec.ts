/** A figure in front of a class, driven by the keys of a presenter's remote. */
import { expect, test } from 'playwright/test';

test.use({ viewport: { width: 1920, height: 1080 } });

test('one figure fills the screen, twice as large, and the four keys drive it', async ({
  page,
}) => {
  await page.goto('lessons/clearance-and-the-glue-line/');
  const prediction = page.locator('form').first();
  await prediction.scrollIntoViewIfNeeded();
  await prediction.getByRole('radio').first().check();
  await prediction.getByRole('button').first().click();
  const panel = page.locator('.panel:has(figure)').first();
  await panel.scrollIntoViewIfNeeded();
  const sliders = panel.getByRole('slider');
  await expect(sliders.first()).toBeEnabled();
  const open = panel.getByRole('button', { name: 'Show to the class' });
  const numbers = panel.locator('svg text').first();
  const before = (await numbers.boundingBox())!.height;
  await open.click();

  await expect.poll(() => page.evaluate(() => document.fullscreenElement !== null)).toBe(true);
  const bar = panel.locator('.class-view-bar');
  await expect(bar).toBeVisible();
  expect((await numbers.boundingBox())!.height).toBeGreaterThan(1.8 * before);

  const first = await bar.innerText();
  await page.keyboard.press('ArrowRight');
  await expect(bar).not.toHaveText(first);
  await page.keyboard.press('PageUp');
  await expect(bar).toHaveText(first);
  await page.keyboard.press('ArrowDown');
  await expect(sliders.nth(1)).toBeFocused();

  await page.evaluate(() => document.exitFullscreen());
  await expect(bar).toBeHidden();
  await expect(open).toBeFocused();
});
