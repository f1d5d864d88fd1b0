/** The page that lays the calculator beside published values. */
import { expect, test } from 'playwright/test';
import { checkGroups } from '../../src/checks/index.ts';
import { site } from '../support/site.ts';

const address = `${site.base}/checks/`;
const rows = checkGroups.flatMap((group) => group.rows);

test.use({ locale: 'en-US' });

test('the checks show every row that the tests go through, and none that differs', async ({
  page,
}) => {
  await page.goto(address);
  await expect(page.locator('table.checks td.verdict')).toHaveCount(rows.length);
  await expect(page.locator('table.checks tr.differs')).toHaveCount(0);
  const whiteFir = page.getByRole('row', { name: /White fir flooring/, includeHidden: true });
  await expect(whiteFir).toContainText('1.7 mm');
  await expect(whiteFir).toContainText('agrees');
  const habit = page.getByRole('row', { name: /Hole past the pin’s end/, includeHidden: true });
  await expect(habit).toContainText('shown');
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('a long table of the checks opens by keyboard, and prints open', async ({ page }) => {
    await page.goto(address);
    const cell = page.getByRole('row', { name: /70 °F and 45 % humidity/ });
    await expect(cell).toBeHidden();
    await page.locator('#moisture ~ * summary').focus();
    await page.keyboard.press('Enter');
    await expect(cell).toContainText('8.5 %');
    await page.keyboard.press('Enter');
    await page.emulateMedia({ media: 'print' });
    const height = () => page.locator('#moisture ~ details').evaluate((box) => box.clientHeight);
    expect(await height()).toBeGreaterThan(1500);
    await page.emulateMedia({ media: 'screen' });
    expect(await height()).toBeLessThan(200);
  });
});
