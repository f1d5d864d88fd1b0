import { type Page, expect, test } from 'playwright/test';
import { axeFaults } from '../support/axe.ts';
import { site } from '../support/site.ts';

const address = `${site.base}/trial/`;

test.use({ contextOptions: { reducedMotion: 'reduce' } });

async function open(page: Page, hash = ''): Promise<void> {
  await page.goto(`${address}${hash}`);
  await expect(page.locator('#start')).toBeEnabled();
}

const press = (page: Page, name: string) =>
  page.getByRole('button', { name, exact: true }).press('Enter');

async function run(page: Page): Promise<void> {
  await press(page, 'Drill');
  await press(page, 'Push together');
}

const verdict = (page: Page) => page.locator('.trial-run .verdict');
const drawing = (page: Page) => page.locator('.trial-run svg.drawing').first();

test('a sound setup closes; a stop set wrong by keyboard is named, and mended by a button', async ({
  page,
}) => {
  await open(page);
  await page.locator('#start').selectOption('sound');
  await run(page);
  await expect(verdict(page)).toHaveText('The joint closes, with room past its pins.');

  // Half an inch too deep: through the 7/8 in board.
  const collar = page.locator('#b-collar');
  await collar.focus();
  await collar.press('ControlOrMeta+a');
  await collar.pressSequentially('2 1/32');
  await collar.press('Enter');
  await expect(verdict(page)).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Push together' })).toBeDisabled();
  await run(page);
  await expect(verdict(page)).toHaveText('The joint closes, but a point came through.');
  const cause = page.locator('.trial-run li.panel');
  await expect(cause).toHaveCount(1);
  await expect(cause).toContainText('The stop for board B is off: its holes are 1/2 in too deep.', {
    useInnerText: true,
  });
  await expect(cause).toContainText('Set the stop for board B at 1 17/32 in from', {
    useInnerText: true,
  });

  await press(page, 'Change just that and run again');
  await expect(verdict(page)).toBeFocused();
  await expect(verdict(page)).toHaveText('The joint closes, with room past its pins.');
  await expect(collar).toHaveValue('1 17/32 in');
});

test('a bare bench can be set up with what the card says', async ({ page }) => {
  await open(page);
  await expect(page.locator('#start')).toHaveValue('own');
  await page.locator('#trial-pin').selectOption({ label: '3/8 × 1 1/2 in' });
  await page.locator('#trial-bit').selectOption({ label: '3/8 in' });
  // Bushing 3/4, gap 1/16, and the depths of the card: 1 1/32 in A, 23/32 in B.
  await page.locator('#a-collar').fill('1 27/32');
  await page.locator('#b-collar').fill('1 17/32');
  await run(page);
  await expect(verdict(page)).toHaveText('The joint closes, with room past its pins.');
});

test('a link opens its start; a start that is not on the list is refused in a sentence', async ({
  page,
}) => {
  await open(page, '#start=same-stop;kind=tee');
  await expect(page.locator('#start')).toHaveValue('same-stop');
  await expect(page.getByRole('radio', { name: 'Tee' })).toBeChecked();
  await run(page);
  await expect(page.locator('.trial-run li.panel').first()).toContainText(
    'The stop for board B was left as it was for the other board',
  );
  await expect(drawing(page)).toHaveAccessibleName(
    /comes 9\/32 inch out of the far side of board B/,
  );

  await page.locator('#start').selectOption('turned-over');
  await expect.poll(() => new URL(page.url()).hash).toBe('#start=turned-over');

  await page.goto('about:blank');
  await open(page, '#start=chair');
  await expect(page.getByRole('alert')).toContainText('there is no start of that name');
  await expect(page.locator('#start')).toHaveValue('own');
});

test('what was expected is compared with what came', async ({ page }) => {
  await open(page, '#start=turned-over');
  await press(page, 'Drill');
  await page.getByRole('radio', { name: 'It closes' }).check();
  await press(page, 'Push together');
  await expect(page.locator('.trial-run')).toContainText(
    'You expected that it closes, and its boards line up. In fact its boards don’t line up.',
  );
  await expect(page.getByRole('status').filter({ hasText: 'do not line up' })).toHaveCount(1);
});

test('nonsense in a field is answered beside it and changes nothing', async ({ page }) => {
  await open(page, '#start=sound');
  for (const nonsense of ['abc', '-3', '1/0', '']) {
    await page.locator('#a-collar').fill(nonsense);
    await expect(page.locator('#a-collar-says')).toBeVisible();
    await run(page);
    await expect(verdict(page)).toHaveText('The joint closes, with room past its pins.');
  }
});

test('passes axe with a joint drilled, and with one pushed together', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await open(page, '#start=no-stop');
  await press(page, 'Drill');
  expect(await axeFaults(page)).toEqual([]);
  await press(page, 'Push together');
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await axeFaults(page)).toEqual([]);
});

test('lengths follow the reader’s unit', async ({ page }) => {
  await open(page, '#start=forgot-bushing');
  await run(page);
  await expect(verdict(page)).toHaveText(/1 1\/4 in/);
  await page.getByRole('radio', { name: 'mm' }).check({ force: true });
  await expect(verdict(page).locator('.mm')).toBeVisible();
  await expect(verdict(page).locator('.in')).toBeHidden();
  await expect(drawing(page)).toHaveAccessibleName(/stays open by about 31.8 millimeters/);
});

test.describe('where motion is allowed', () => {
  test.use({ contextOptions: { reducedMotion: 'no-preference' } });

  test('the boards slide together and come to rest', async ({ page }) => {
    await open(page, '#start=sound');
    await press(page, 'Drill');
    await press(page, 'Push together');
    await expect(verdict(page)).toHaveText('Pushing together …');
    await expect(page.getByText('Pin by pin')).toHaveCount(0);
    await expect(verdict(page)).toHaveText('The joint closes, with room past its pins.');
    await expect(page.getByText('Pin by pin')).toBeVisible();
  });
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('a sound joint and one mistake are drawn and explained', async ({ page }) => {
    await page.goto(address);
    const sections = page.locator('section.example');
    await expect(sections).toHaveCount(2);
    await expect(sections.nth(0)).toContainText('The joint closes, with room past its pins.');
    await expect(sections.nth(1)).toContainText('What made it');
    await expect(sections.nth(1).locator('svg.drawing')).toHaveCount(2);
    await expect(page.getByRole('button', { name: 'Change just that and run again' })).toHaveCount(
      0,
    );
  });
});
