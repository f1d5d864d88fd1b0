/** What a student does with a whole piece. */
import { type Page, expect, test } from 'playwright/test';
import { encodeSetup, inches } from '../../src/core/index.ts';
import { ordinaryJoint } from '../support/joints.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { site } from '../support/site.ts';

const address = `${site.base}/bench/piece/`;

const region = (page: Page, name: string) => page.getByRole('region', { name, exact: true });
const title = (page: Page) => page.getByRole('heading', { level: 1 });
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

async function openPiece(page: Page, fragment = ''): Promise<void> {
  await page.goto('about:blank');
  await page.goto(`${address}${fragment}`);
  await expect(button(page, 'Print the plan')).toBeEnabled();
}

/** Opens what can be changed about a joint. */
async function changing(page: Page, name: string) {
  await page.getByText(`Change: ${name}`).click();
  return page.getByRole('group', { name: new RegExp(`^${name}, joint`) });
}

async function type(page: Page, id: string, text: string): Promise<void> {
  await page.locator(id).fill(text);
  await page.locator(id).press('Enter');
}

test.use({ locale: 'en-US' });

test('makes the plant stand from thinner boards, mends what that breaks, and prints it', async ({
  page,
}) => {
  await openPiece(page);
  await expect(title(page)).toHaveText('Two-shelf plant stand');
  const drill = region(page, 'Drill list');
  await expect(drill).toContainText('62 holes with 4 settings');
  // A test of the lists stands with the calculator; here, that they follow, and say what is wrong.
  const side = await changing(page, 'Side to top');
  await expect(side).toContainText('Side is in other joints too');
  await type(page, '#joint-1-a-thickness', '1/2');
  const cautions = region(page, 'Cautions');
  await expect(cautions).toContainText('Lower shelf (joints 4 to 5) can’t be made as set');
  await expect(drill).toContainText('38 holes');
  await button(page, 'Choose another pin for me: Lower shelf').click();
  await button(page, 'Choose another pin for me: Upper shelf').click();
  await expect(cautions).not.toContainText('can’t be made');
  await expect(drill).toContainText('Bit 1/4 in');
  await button(page, 'Undo').click();
  await expect(cautions).toContainText('Upper shelf (joints 6 to 7) can’t be made as set');
  await type(page, '#joint-1-a-thickness', '3/4');
  await expect(drill).toContainText('62 holes');

  for (const format of ['Letter', 'A4'] as const) {
    const pages = await pagesOfPdf(await page.pdf({ format }));
    const text = pages.map((each) => each.text).join(' ');
    for (const part of ['10B to 11B', 'Drill list', 'Material', 'Order of work', 'Cautions']) {
      expect(text).toContain(part);
    }
    expect(pages).toHaveLength(3);
    expect(text).not.toContain('Add a joint');
  }
  // What was changed and what was ticked off is there after the machine was off.
  const row = drill.getByRole('checkbox', { name: /^1A Top board/ });
  await row.check();
  await openPiece(page);
  await expect(row).toBeChecked();
  await expect(page).toHaveURL(/#1;.*Two-shelf/);
  await expect(page.locator('#joint-0')).toBeHidden();
  // Nonsense is told so, and changes nothing.
  await changing(page, 'Side to top');
  await type(page, '#joint-1-a-thickness', 'thick');
  await expect(page.getByText('“thick” is not a length')).toBeVisible();
  await expect(drill).toContainText('1/4 in');
});

test('plans a piece of their own, joint by joint, by way of the bench and back', async ({
  page,
}) => {
  await openPiece(page);
  await button(page, 'An empty list').click();
  await expect(page.getByText('No joint yet.')).toBeVisible();
  await page.getByLabel('What the piece is called').fill('Bird house');
  await page.getByLabel('As it comes').selectOption('Tee');
  await button(page, 'Add the joint').click();
  const joint = encodeSetup({ joints: [ordinaryJoint('corner', 'in', inches(3 / 4))] });
  await page.getByLabel('From a link').fill(`https://example.org/bench/#${joint}`);
  await button(page, 'Add it').click();
  const list = page.getByRole('heading', { level: 3 });
  await expect(list.nth(0)).toHaveText('1 Tee joint');
  await expect(list.nth(1)).toHaveText('2 Corner joint');

  await changing(page, 'Corner joint');
  await button(page, 'Earlier: Corner joint').click();
  await expect(list.nth(0)).toHaveText('1 Corner joint');
  await expect(button(page, 'Later: Corner joint')).toBeFocused();
  await type(page, '#joint-0', 'Roof');
  await type(page, '#joint-0-count', '2');
  await expect(list.nth(1)).toHaveText('3 Tee joint');

  // To the bench, a longer free depth there, and back into its place.
  await page.getByRole('link', { name: 'Open Roof on the bench' }).click();
  await expect(page.getByLabel('What the joint is called')).toHaveValue('Roof');
  const onBench = new URL(page.url()).hash.replace('corner;', 'corner;allowance=5;');
  await openPiece(page, onBench);
  await expect(title(page)).toHaveText('Bird house');
  await button(page, 'Put it back as Roof, joints 1 to 2').click();
  await expect(list.nth(0)).toHaveText('1–2 Roof');
  await expect(region(page, 'Drill list').getByText('1A to 2A')).toBeVisible();

  await changing(page, 'Roof');
  await button(page, 'Take off Roof').click();
  await expect(list.nth(0)).toHaveText('1 Tee joint');
  await button(page, 'Undo').click();
  await expect(list.nth(0)).toHaveText('1–2 Roof');
});

test('keeps a piece, hands it on, and loses nothing to what others send', async ({ page }) => {
  await openPiece(page);
  await page.getByLabel('What the piece is called').fill('Hall stand');
  await page.getByLabel('What the piece is called').press('Enter');
  await expect(page).toHaveURL(/#1;.*piece=Hall%20stand/);
  const sent = new URL(page.url()).hash;
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Save as a file').click(),
  ]);

  await openPiece(page, '#1;piece=Evil;kind=corner;system=in;a=1x2x3;b=<script>');
  await expect(page.getByRole('alert')).toContainText(/can’t be read.*as you left it/);
  await expect(title(page)).toHaveText('Hall stand');

  // Somebody else’s piece is shown; changing it keeps the own one beside it.
  await openPiece(page, sent.replace('Hall%20stand', 'Sent%20stand'));
  await expect(title(page)).toHaveText('Sent stand');
  await page.getByLabel('What the piece is called').fill('Porch stand');
  await page.getByLabel('What the piece is called').press('Enter');
  await button(page, 'Open Hall stand').click();
  await expect(title(page)).toHaveText('Hall stand');
  await button(page, 'Back to ‘Porch stand’').click();
  await expect(title(page)).toHaveText('Porch stand');
  await page.getByLabel('Open a file').setInputFiles(await file.path());
  await expect(title(page)).toHaveText('Hall stand');
  await page.getByRole('link', { name: 'Setup sheets' }).click();
  await expect(page.getByRole('article')).toHaveCount(6);
});
