/** How a reader finds a place again. */
import { expect, test } from 'playwright/test';

test('finds a word by its beginning, leads to its section, and comes back to the same list', async ({
  page,
}) => {
  await page.goto('search/');
  const field = page.getByRole('searchbox', { name: 'What are you looking for?' });
  await field.fill('free depth');
  await expect(page.getByRole('status').first()).toContainText(/\d+ places/);
  const first = page.locator('.found a').first();
  const name = (await first.innerText()).split(':').at(-1)!.trim();
  await first.click();
  await expect(page).not.toHaveURL(/search/);
  await expect(page.getByRole('heading', { name }).first()).toBeVisible();
  await page.goBack();
  await expect(field).toHaveValue('free depth');
  await expect(page.locator('.found mark').first()).toHaveText(/free|depth/i);
});

test('forgives a slip of the keyboard, and says so where there is nothing', async ({ page }) => {
  await page.goto('search/#find=mitter%20joint');
  await expect(page.locator('.found a').first()).toBeVisible();
  await page.getByRole('searchbox').fill('<script>zebra</script>');
  await expect(page.getByRole('status').first()).toHaveText(/^Nothing found/);
});
