/** What an instructor plans before a class: what to buy, who drills when, who may drill. */
import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { expect, test } from 'playwright/test';

test('orders for a class, changes it, comes back to it, and saves the list', async ({ page }) => {
  await page.goto('teach/order/');
  const pins = page.getByRole('table', { name: 'Pins' });
  const total = async () => Number(await pins.getByRole('cell').last().innerText());
  const benches = page.getByRole('textbox', { name: 'Benches' });
  await expect(benches).toBeEnabled();
  const before = await total();
  await benches.fill('24');
  await expect.poll(total).toBeGreaterThan(1.9 * before);
  await page.getByRole('textbox', { name: 'Benches' }).fill('many');
  await expect(page.getByText(/Type a number/)).toBeVisible();
  await benches.fill('24');
  const now = await total();

  await page.getByRole('textbox', { name: /paste its address/ }).fill('#1;kind=dovetail');
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.locator('#add-link-says')).not.toBeEmpty();
  await page.getByRole('combobox').first().selectOption({ label: 'Leg' });
  await expect.poll(total).toBeGreaterThan(now);
  const kept = await total();
  await page.reload();
  await expect(benches).toBeEnabled();
  await expect.poll(total).toBe(kept);

  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as CSV' }).click(),
  ]);
  const rows = csvParse(readFileSync(await file.path(), 'utf8').replace(/^\uFEFF/, ''));
  const inFile = rows.filter((row) => row['What'] === 'Dowel pins');
  expect(inFile.reduce((sum, row) => sum + Number(row['How many']), 0)).toBeGreaterThanOrEqual(
    kept,
  );
});

test('plans turns at the guides, and says what won’t fit', async ({ page }) => {
  await page.goto('teach/stations/');
  await expect(page.getByText('4 rounds, over 2 lessons.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Guides' }).fill('4');
  await expect(page.getByText('3 rounds, in one lesson.')).toBeVisible();
  await page.getByRole('textbox', { name: 'A turn at the guide' }).fill('40');
  await expect(page.getByText(/doesn’t fit into 30 minutes/)).toBeVisible();
});

test('ticks off what a bench has shown, and still knows it tomorrow', async ({ page }) => {
  await page.goto('teach/sign-off/');
  const boxes = page.getByRole('checkbox', { name: /^Bench 2:/ });
  await expect(boxes.first()).toBeEnabled();
  for (const box of await boxes.all()) await box.check();
  await expect(page.getByText('May drill: bench 2.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('May drill: bench 2.')).toBeVisible();
});
