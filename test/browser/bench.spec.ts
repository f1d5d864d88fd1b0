/** What a student does at the bench. */
import { type Page, expect, test } from 'playwright/test';
import { site } from '../support/site.ts';

const bench = `${site.base}/bench/`;

async function openBench(page: Page, fragment = ''): Promise<void> {
  await page.goto(`${bench}${fragment}`);
  await expect(page.getByLabel('Thickness of A', { exact: true }).last()).toBeEnabled();
}

/** A number of the plan, as the table shows it. */
function numberIn(page: Page, row: string, board: 'A' | 'B') {
  return page
    .getByRole('row', { name: new RegExp(`^${row}`) })
    .getByRole('cell')
    .nth(board === 'A' ? 0 : 1);
}

const choose = (page: Page, name: string) => page.getByRole('radio', { name, exact: true }).check();
const typed = (page: Page, label: string) =>
  page.getByRole('textbox', { name: label, exact: true });
const slider = (page: Page, label: string) =>
  page.getByRole('slider', { name: label, exact: true });

test.use({ locale: 'en-US' });

test('moves a board’s thickness by keyboard, and the joint answers', async ({ page }) => {
  await openBench(page);
  await expect(numberIn(page, 'Pin held', 'B')).toContainText('31/64 in');
  await slider(page, 'Thickness of A').focus();
  await page.keyboard.press('ArrowRight');
  await expect(typed(page, 'Thickness of A')).toHaveValue('13/16 in');
  await expect(slider(page, 'Thickness of A')).toHaveAttribute('aria-valuetext', '13/16 inch');
  // B is as thick as A until the student says otherwise.
  await expect(typed(page, 'Thickness of B')).toHaveValue('13/16 in');
  await expect(numberIn(page, 'Pin held', 'B')).toContainText('35/64 in');
});

test('types a length between two marks of the slider and keeps it exactly', async ({ page }) => {
  await openBench(page);
  await typed(page, 'Thickness of A').fill('23/32');
  await typed(page, 'Thickness of A').blur();
  await expect(typed(page, 'Thickness of A')).toHaveValue('23/32 in');
  await choose(page, 'mm');
  await expect(typed(page, 'Thickness of A')).toHaveValue('≈18.3 mm');
  await choose(page, 'inches');
  await expect(typed(page, 'Thickness of A')).toHaveValue('23/32 in');
});

test('keeps nonsense as it was typed, says what to do, and draws on', async ({ page }) => {
  await openBench(page);
  const field = typed(page, 'Thickness of A');
  await field.fill('three quarters');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText(/“three quarters” is not a length/)).toBeVisible();
  await field.blur();
  await choose(page, 'mm');
  await expect(field).toHaveValue('three quarters');
  await expect(page.getByRole('img', { name: /joint/i }).first()).toBeVisible();
  await field.fill('0');
  await expect(page.getByText('This has to be more than zero.', { exact: false })).toBeVisible();
  await field.fill('18');
  await expect(field).not.toHaveAttribute('aria-invalid');
  await field.blur();
  await expect(field).toHaveValue('18 mm');
});

test('switches units without changing the joint', async ({ page }) => {
  await openBench(page);
  await choose(page, 'mm');
  await expect(numberIn(page, 'Pin held', 'B')).toContainText('12.2 mm');
  await expect(page.getByRole('radio', { name: 'Inch', exact: true })).toBeChecked();
});

test('plans and draws a joint of every kind', async ({ page }) => {
  await openBench(page);
  for (const [name, says] of [
    ['Edge', /edge/i],
    ['Corner', /corner/i],
    ['Tee', /tee/i],
    ['Frame', /frame/i],
    ['Miter', /miter/i],
    ['Leg', /leg/i],
  ] as const) {
    await choose(page, name);
    await expect(page.getByRole('img', { name: says }).first()).toBeVisible();
    await expect(numberIn(page, 'Stop on the bit', 'B')).toContainText(/\d/);
    await expect(page.getByText('This can’t be made')).toHaveCount(0);
  }
});

test('opens the working of a number, down to what was set', async ({ page }) => {
  await openBench(page);
  const stop = numberIn(page, 'Stop on the bit', 'B').getByRole('button');
  await stop.click();
  await expect(stop).toHaveAttribute('aria-expanded', 'true');
  const working = page.locator('#bench-working');
  await expect(working).toContainText('Stop for B');
  await expect(working).toContainText('The shape of the joint');
  await working.getByText('Depth of the hole in B').click();
  await working.getByText('Length of pin that B holds').click();
  await expect(working.getByText('as much as B can hold', { exact: false })).toBeVisible();
  await expect(working.locator('math').first()).toBeVisible();
});

test('says in words why a joint can’t be made, and what would mend it', async ({ page }) => {
  await openBench(page);
  await choose(page, 'My own');
  await typed(page, 'Diameter of the pin').fill('5/8');
  await expect(page.getByText('This can’t be made as it is set').first()).toBeVisible();
  await expect(page.getByText(/less than its diameter/).first()).toBeVisible();
  await expect(page.getByText(/Take a thinner pin/).first()).toBeVisible();
});

test('keeps the setup in the address, and a link brings it back', async ({ page }) => {
  await openBench(page);
  await choose(page, 'Frame');
  await typed(page, 'Thickness of A').fill('7/8');
  await choose(page, 'mm');
  await expect.poll(() => new URL(page.url()).hash).toContain('kind=frame');
  await expect.poll(() => new URL(page.url()).hash).toContain('a=22.225x');
  await expect.poll(() => new URL(page.url()).hash).toContain('show=mm');
  const address = page.url();
  await page.goto('about:blank');
  await page.goto(address);
  await expect(page.getByRole('radio', { name: 'Frame', exact: true })).toBeChecked();
  await expect(typed(page, 'Thickness of A')).toHaveValue('≈22.2 mm');
  await choose(page, 'inches');
  await expect(typed(page, 'Thickness of A')).toHaveValue('7/8 in');
});

test('refuses a damaged link in a sentence and starts from a sound joint', async ({ page }) => {
  await openBench(page, '#1;kind=corner;system=in;a=19.05x140x600;b=oops');
  await expect(page.getByRole('alert')).toContainText('This link can’t be read');
  await expect(numberIn(page, 'Pin held', 'B')).toContainText('31/64 in');
});

test('picks a board by the name that it is sold under', async ({ page }) => {
  await openBench(page);
  await page.locator('#a-sold').selectOption({ label: '5/4' });
  await expect(typed(page, 'Thickness of A')).toHaveValue('1 1/16 in');
  await page.locator('#a-sold').selectOption({ label: '1 × 4' });
  await expect(typed(page, 'Thickness of A')).toHaveValue('3/4 in');
  await expect(typed(page, 'Width of A')).toHaveValue('3 1/2 in');
});

test('shows why each other pin was passed over', async ({ page }) => {
  await openBench(page);
  await page.getByText('Why this pin and none of the others').click();
  const rows = page.getByRole('row').filter({ hasText: /Taken|Fits|No/ });
  await expect(rows.filter({ hasText: 'Taken' }).last()).toContainText('3/8 × 1 1/2');
  await expect(page.getByText(/Too thin/).first()).toBeVisible();
});

test('brings back what was set when the student goes back to a kind of joint', async ({ page }) => {
  await openBench(page);
  await typed(page, 'Width of A').fill('7');
  await choose(page, 'Leg');
  await choose(page, 'Corner');
  await expect(typed(page, 'Width of A')).toHaveValue('7 in');
});

test('lays the whole working open, each step with its source', async ({ page }) => {
  await openBench(page);
  await page.getByText('The whole working, from the boards to the marks').click();
  const steps = page.getByRole('listitem').filter({ has: page.locator('math') });
  expect(await steps.count()).toBeGreaterThan(20);
  for (const step of await steps.all()) {
    await expect(step).toContainText(
      /geometry|common practice|from memory|second-hand|your setting/,
    );
  }
});

test('keeps two joints, compares them, swaps them, and puts back what was removed', async ({
  page,
}) => {
  await openBench(page);
  await page.getByLabel('What the joint is called').fill('Side to top');
  await page.getByRole('button', { name: 'Keep it on this machine' }).click();
  await page.getByRole('button', { name: 'Set it aside, to compare' }).click();
  const compared = page.getByRole('region', { name: 'Compared' });
  await expect(compared).toBeFocused();
  await expect(compared).toContainText('Both are the same');
  await typed(page, 'Thickness of A').fill('1 1/2');
  await typed(page, 'Thickness of A').blur();
  const thickness = compared.getByRole('row', { name: /^Thickness of A/ });
  await expect(thickness).toContainText('+3/4 in');
  await expect(compared.getByRole('img')).toHaveCount(2);
  await expect.poll(() => new URL(page.url()).hash).toContain('38.1'); // 1 1/2 in
  await page.reload();
  await expect(thickness).toContainText('+3/4 in');
  await compared.getByRole('button', { name: 'Swap them' }).click();
  await expect(typed(page, 'Thickness of A')).toHaveValue('3/4 in');
  await expect(thickness).toContainText('−3/4 in');
  await compared.getByRole('button', { name: 'Stop comparing' }).click();
  await expect(compared).toHaveCount(0);

  const kept = page.getByRole('region', { name: 'Kept on this machine' });
  await kept.getByRole('button', { name: 'Remove Side to top' }).click();
  await expect(kept.getByRole('button', { name: 'Put it back' })).toBeFocused();
  await page.keyboard.press('Enter');
  await kept.getByRole('button', { name: 'Open Side to top' }).click();
  await expect(page.getByLabel('What the joint is called')).toHaveValue('Side to top');

  // Opening one loses nothing: what lay on the bench comes back, until the new one is changed.
  await typed(page, 'Thickness of A').fill('1');
  await typed(page, 'Thickness of A').blur();
  await kept.getByRole('button', { name: 'Open Side to top' }).click();
  await expect(typed(page, 'Thickness of A')).toHaveValue('3/4 in');
  const back = page.getByRole('button', { name: 'Back to the joint before' });
  await expect(back).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(typed(page, 'Thickness of A')).toHaveValue('1 in');
  await kept.getByRole('button', { name: 'Open Side to top' }).click();
  await typed(page, 'Thickness of A').fill('5/8');
  await typed(page, 'Thickness of A').blur();
  await expect(back).toHaveCount(0);
});

test('draws the joint in space, and sends it home', async ({ page }) => {
  await openBench(page);
  await choose(page, 'In space');
  await expect(page.getByRole('img', { name: /in space/i })).toBeVisible();
  await slider(page, 'Pulled apart').press('Home');
  await expect(slider(page, 'Pulled apart')).toHaveAttribute('aria-valuetext', 'pushed home');
});

test('leaves out kept joints that nobody here kept', async ({ page }) => {
  await page.addInitScript((base) => {
    const bad = [{ name: 'Bad', link: '<script>' }, null, 7, { name: {}, link: [] }];
    localStorage.setItem(`${base}kept-joints`, JSON.stringify(bad));
    localStorage.setItem(`${base}joint-aside`, '{"name":"Bad","link":"9;"}');
  }, `${site.base}/`);
  await openBench(page);
  await expect(page.getByText('Bad', { exact: true })).toHaveCount(0);
  await expect(page.getByRole('region', { name: 'Compared' })).toHaveCount(0);
});
