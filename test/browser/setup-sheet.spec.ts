/** What a student takes to the bench on paper: the setup sheet. */
import { type Page, expect, test } from 'playwright/test';
import { encodeSetup, inches, mm } from '../../src/core/index.ts';
import { KINDS, ordinaryJoint } from '../support/joints.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { site } from '../support/site.ts';

const sheet = `${site.base}/bench/sheet/`;

async function openSheet(page: Page, fragment: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(`${sheet}${fragment}`);
  await expect(page.getByRole('button', { name: /^Print/ })).toBeEnabled();
}

test('takes a joint from the bench to paper, with its name and the same stops', async ({
  page,
}) => {
  await page.goto(`${site.base}/bench/`);
  await page.getByRole('textbox', { name: 'What the joint is called' }).fill('Side to top');
  const stops = await page
    .getByRole('row', { name: /^Stop on the bit/ })
    .getByRole('cell')
    .all();
  const [a, b] = await Promise.all(stops.map((cell) => cell.locator('.in .main').innerText()));
  await page.getByRole('link', { name: 'Print the setup sheet' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Side to top' })).toBeVisible();
  await expect(page.getByRole('definition').nth(0)).toContainText(a!);
  await expect(page.getByRole('definition').nth(1)).toContainText(b!);
  expect(a).not.toBe(b);
  await page.getByRole('checkbox', { name: /^Measure/ }).check();
  // The code is there where the site was built for an address that a phone can open.
  const published = (await page.locator('link[rel=canonical]').count()) > 0;
  await expect(page.getByRole('img', { name: /^QR code/ })).toHaveCount(published ? 1 : 0);
  await expect(page.getByText(/It has no QR code/)).toHaveCount(published ? 0 : 1);
});

test('is one page a joint, on Letter and on A4, whatever the kind', async ({ page }) => {
  test.slow();
  for (const [format, unit] of [
    ['Letter', 'in'],
    ['A4', 'mm'],
  ] as const) {
    const thickness = unit === 'in' ? inches(3 / 4) : mm(18);
    const joints = KINDS.map((kind) => ordinaryJoint(kind, unit, thickness));
    await openSheet(page, `#${encodeSetup({ joints, show: unit })}`);
    await expect(page.getByRole('article')).toHaveCount(KINDS.length);
    const pages = await pagesOfPdf(await page.pdf({ format }));
    const kinds = pages.map(({ text }) => /Setup sheet, joint (\d)\. (\w+) joint/.exec(text));
    expect(kinds.map((found) => found?.[2]?.toLowerCase())).toEqual(KINDS);
    for (const { text } of pages) {
      for (const part of ['Stop for A', 'Stop for B', 'Order of work', 'Test joint', 'Sign-off']) {
        expect(text).toContain(part);
      }
    }
  }
});

test('refuses what is no setup, and a joint that can’t be made, in sentences', async ({ page }) => {
  await openSheet(page, '#1;kind=corner;system=in;a=19.05x140x600;b=oops');
  await expect(page.getByRole('alert')).toContainText('This link can’t be read');
  const thick = { ...ordinaryJoint('corner', 'in', inches(1 / 4)) };
  const pin = { diameter: inches(1 / 2), length: inches(2) };
  await openSheet(page, `#${encodeSetup({ joints: [{ ...thick, pin }] })}`);
  await expect(page.getByText('There is no sheet for this joint')).toBeVisible();
  await expect(page.getByText('Stop for A')).toHaveCount(0);
});
