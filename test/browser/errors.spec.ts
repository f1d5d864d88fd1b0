/** The lesson 'Errors, odds and the dry fit', as a student goes through it. */
import { expect, type Locator, type Page, test } from 'playwright/test';

const LESSON = 'lessons/errors-odds-and-the-dry-fit/';

async function predict(page: Page): Promise<void> {
  const form = page.locator('form').filter({ hasText: 'You put a third pin in the row' });
  await form.scrollIntoViewIfNeeded();
  await form.getByLabel(/Fewer/).check();
  await form.getByRole('button', { name: 'This is my prediction' }).click();
  // The figure comes alive when it is scrolled to.
  await page
    .locator('section.panel')
    .filter({ hasText: 'The row as drilled' })
    .scrollIntoViewIfNeeded();
  await expect(page.getByRole('button', { name: 'Drill another row' })).toBeVisible();
}

function odds(page: Page, pins: number): Locator {
  const table = page.getByRole('table', { name: 'Of 100 tries' });
  return table.getByRole('rowheader', { name: new RegExp(`^${pins}( |$)`) }).locator('..');
}

/** So many of 100, of the odds that a row of so many pins goes together. */
async function closing(page: Page, pins: number): Promise<number> {
  const text = await odds(page, pins).getByRole('cell').first().innerText();
  return Number(/^(?:under |over )?(\d+)/.exec(text)![1]);
}

const caption = (page: Page) => page.locator('figcaption').filter({ hasText: 'This row' });

test.beforeEach(async ({ page }) => {
  await page.goto(LESSON);
});

test('predict first; then the figure and the text tell the same odds', async ({ page }) => {
  const targets = page.getByRole('img', { name: /Targets of the pins/ });
  await expect(targets).toBeHidden();
  await predict(page);
  await expect(targets).toBeVisible();
  const two = await closing(page, 2);
  const three = await closing(page, 3);
  expect(three).toBeLessThan(two);
  await expect(
    page.getByText(`With two pins, ${two} % close. With three, ${three} %.`),
  ).toBeVisible();
  await expect(caption(page)).toContainText(`Of 100 rows drilled like it, ${three} go together`);
});

test('three pins bind where two went in', async ({ page }) => {
  await predict(page);
  const another = page.getByRole('button', { name: 'Drill another row' });
  await expect(caption(page)).toContainText('This row goes together');
  for (let i = 0; i < 40; i++) {
    if ((await caption(page).innerText()).includes('Pins 1 and 2 went in; pin 3')) break;
    await another.click();
  }
  await expect(caption(page)).toContainText('This row binds. Pins 1 and 2 went in; pin 3');
  const row = page.getByRole('table', { name: /This row/ });
  await expect(row.getByRole('row').last()).toContainText('no, stops');
  await expect(page.getByRole('img', { name: /no part in common/ })).toBeVisible();
  await page.getByRole('textbox', { name: 'Pins in the row' }).fill('2');
  await expect(caption(page)).toContainText('This row goes together');
});

test('by keyboard: more play raises the odds, a longer row never does', async ({ page }) => {
  await predict(page);
  const before = await closing(page, 3);
  const play = page.getByRole('slider', { name: 'Play: hole less pin' });
  await play.focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
  await expect.poll(() => closing(page, 3)).toBeGreaterThan(before);
  const all: number[] = [];
  for (let pins = 1; pins <= 10; pins++) all.push(await closing(page, pins));
  expect(all).toEqual([...all].sort((a, b) => b - a));
  const pins = page.getByRole('slider', { name: 'Pins in the row' });
  await pins.focus();
  await page.keyboard.press('End');
  await expect(pins).toHaveAttribute('aria-valuetext', '10 pins');
  await expect(page.getByRole('table', { name: /This row/ }).getByRole('row')).toHaveCount(11);
});

test('a guide off the middle: nothing from the same face, a step and no less closing with one board turned', async ({
  page,
}) => {
  await predict(page);
  const start = await odds(page, 3).innerText();
  const three = await closing(page, 3);
  const step = await caption(page).innerText();
  await page.getByRole('textbox', { name: 'Guide off the middle of the board' }).fill('0.5 mm');
  await expect.poll(() => odds(page, 3).innerText()).toBe(start);
  await expect.poll(() => caption(page).innerText()).toBe(step);

  await page.getByRole('radio', { name: 'one board turned over' }).check();
  await expect.poll(() => odds(page, 3).getByRole('cell').nth(1).innerText()).toMatch(/^0\b/);
  expect(await closing(page, 3)).toBe(three);
  await expect(caption(page)).toContainText('not flush');

  await page.getByRole('button', { name: 'Back to the start' }).click();
  expect(await odds(page, 3).innerText()).toBe(start);
  await expect.poll(() => caption(page).innerText()).toBe(step);
});

test('the odds come from a worker of the site, and only once something is changed', async ({
  page,
}) => {
  await predict(page);
  await page.getByRole('button', { name: 'Drill another row' }).click();
  expect(page.workers()).toHaveLength(0);
  await page.getByRole('button', { name: 'More: Play: hole less pin' }).click();
  await expect.poll(() => page.workers().length).toBe(1);
  expect(page.workers()[0]!.url()).toMatch(
    new RegExp(`^${new URL('.', page.url()).origin}/.*odds\\.worker.*\\.js$`),
  );
});

test('without workers the figure answers all the same', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'Worker', { value: undefined });
  });
  await page.reload();
  await predict(page);
  const before = await closing(page, 3);
  await page.getByRole('textbox', { name: 'Play: hole less pin' }).fill('0.2 mm');
  await expect.poll(() => closing(page, 3)).toBeGreaterThan(before);
  expect(page.workers()).toHaveLength(0);
});

test('units: drawing, sentence, numbers and controls follow', async ({ page }) => {
  await predict(page);
  await expect(caption(page)).toContainText(/0\.\d{3}\sin/);
  await page.locator('label').filter({ hasText: /^mm$/ }).click();
  await expect(caption(page)).toContainText(/0\.\d\d\smm/);
  await expect(caption(page)).not.toContainText(/\sin\b(?! )/);
  await expect(page.getByRole('textbox', { name: 'Play: hole less pin' })).toHaveValue('0.1 mm');
  await expect(page.getByRole('table', { name: 'This row, in millimeters' })).toBeVisible();
});

test('a wrong answer is called by its name', async ({ page }) => {
  const form = page
    .locator('form.question')
    .filter({ hasText: 'How far do the faces stand off each other?' });
  await form.scrollIntoViewIfNeeded();
  const field = form.getByRole('textbox');
  await field.fill('3/64');
  await field.press('Enter');
  await expect(form.getByRole('status')).toContainText('Counted the offset once.');
  await field.fill('3/32');
  await field.press('Enter');
  await expect(form.getByRole('status')).toContainText('Right.');
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('the figure stands for its starting values, with both tables', async ({ page }) => {
    for (const name of [/Targets of the pins/, /laid on one another/, /Odds from one pin to 10/]) {
      await expect(page.getByRole('img', { name })).toBeVisible();
    }
    await expect(caption(page)).toContainText('This row goes together');
    await expect(caption(page)).toContainText(/in \(.*mm\)|in.*mm/);
    await expect(odds(page, 3)).toContainText('(this row)');
    expect(await closing(page, 3)).toBeLessThan(await closing(page, 2));
    await expect(page.getByRole('button', { name: 'Drill another row' })).toHaveCount(0);
  });
});

test.describe('on paper', () => {
  test('the figure is there with its numbers, its controls are not', async ({ page }) => {
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('img', { name: /Odds from one pin to 10/ })).toBeVisible();
    await expect(page.getByRole('table', { name: 'Of 100 tries' })).toBeVisible();
    await expect(page.getByRole('slider')).toHaveCount(0);
  });
});
