/** The figures of 'Placing the pins' and 'The working order and the setup sheet'. */
import { expect, type Page, test } from 'playwright/test';
import { planJoint } from '../../src/core/joint/planJoint.ts';
import { formatReadable } from '../../src/core/length/formatLength.ts';
import { inches } from '../../src/core/length/mm.ts';

async function predict(page: Page, choice: string): Promise<void> {
  await page.getByText('The drawing is covered').scrollIntoViewIfNeeded();
  const form = page.locator('form').filter({ hasText: 'This is my prediction' });
  await form.getByLabel(choice).check();
  await form.getByRole('button', { name: 'This is my prediction' }).click();
}

test('wider boards take another pin, and one mark that is off keeps the joint open', async ({
  page,
}) => {
  await page.goto('lessons/placing-the-pins/');
  await predict(page, 'It does not close');
  const figure = page.locator('.panel').filter({ has: page.getByText('The row in numbers') });
  const marks = figure.getByRole('table', { name: /^Marks from the reference end/ });
  const rows = marks.locator('tbody').getByRole('row');
  await expect(rows).toHaveCount(3);

  // As many pins and the same marks as the calculator gives such a joint.
  const width = figure.getByRole('textbox', { name: 'Width of the boards' });
  await width.fill('16');
  await width.press('Enter');
  const board = { thickness: inches(3 / 4), width: inches(16), length: inches(27) };
  const plan = planJoint({
    kind: 'corner',
    system: 'in',
    a: board,
    b: board,
    pin: { diameter: inches(3 / 8), length: inches(1.5) },
  });
  await expect(rows).toHaveCount(plan.marks.length);
  expect(plan.marks.length).toBeGreaterThan(3);
  for (const [i, mark] of plan.marks.entries()) {
    const onA = rows.nth(i).getByRole('cell').first().locator('.in');
    await expect(onA).toHaveText(formatReadable(mark, 'in'));
  }
  await expect(rows.getByRole('cell', { name: 'no' })).toHaveCount(0);

  // One mark off by more than its play: that pin finds no hole, and the caption says which.
  const off = figure.getByRole('textbox', { name: 'It is off by' });
  await off.fill('1/32');
  await off.press('Enter');
  await expect(rows.nth(1)).toContainText('off');
  await expect(rows.getByRole('cell', { name: 'no' })).not.toHaveCount(0);
  await expect(figure.locator('figcaption').first()).toContainText(/pin 2/i);

  // Too many marks for too little wood is said, and nothing typed is lost.
  await width.fill('a hand');
  await width.press('Enter');
  await expect(width).toHaveValue('a hand');
  await expect(rows).toHaveCount(plan.marks.length);

  await figure.getByRole('button', { name: 'Back to the start' }).click();
  await expect(rows).toHaveCount(3);
  await expect(width).toHaveValue('9 1/4 in');
});

test('each order of work costs what it costs, and the sheet of the lesson opens', async ({
  page,
}) => {
  await page.goto('lessons/the-working-order-and-the-setup-sheet/');
  await predict(page, 'Joint by joint');
  const figure = page.locator('.panel').filter({ has: page.getByText('What it costs') });
  const set = figure.getByRole('row', { name: /Collar set/ }).getByRole('cell');
  const cost = async (): Promise<number> => Number(await set.first().textContent());
  const fewest = Number(await set.nth(1).textContent());
  expect(await cost()).toBeGreaterThan(fewest);

  const choose = (order: string) => figure.locator('label').filter({ hasText: order }).click();
  await choose('Hole by hole');
  await expect.poll(cost).toBeGreaterThan(fewest + 2);
  await choose('Stop by stop');
  await expect.poll(cost).toBe(fewest);

  // Moved by hand, the order is the reader's own, the focus stays with it, and it costs more.
  const down = figure.getByRole('button', { name: /^Down: / }).first();
  const name = await down.getAttribute('aria-label');
  await down.press('Enter');
  await figure.getByRole('button', { name: name! }).press('Enter');
  await expect(figure.getByRole('button', { name: name! })).toBeFocused();
  await expect(figure.getByRole('radio', { name: 'My own' })).toBeChecked();
  await expect.poll(cost).toBeGreaterThan(fewest);

  // What is done so far is drawn by the slider, step by step.
  const done = figure.getByRole('slider', { name: 'Steps done' });
  await done.press('Home');
  await expect(done).toHaveAttribute('aria-valuetext', '1 step');

  // The order question, wrong and then right.
  const question = page.locator('.self-check li').filter({ hasText: 'You make a corner' }).first();
  await question.scrollIntoViewIfNeeded();
  const check = question.getByRole('button', { name: 'Check', exact: true });
  await expect(check).toBeEnabled();
  await check.click();
  await expect(question).toContainText('Too soon');
  await expect(question).toContainText('Not yet.');

  await page.getByRole('link', { name: 'Open this sheet to print it' }).click();
  await expect(page).toHaveURL(/\/bench\/sheet\/#\d;.*kind=corner/);
  await expect(page.getByRole('heading', { name: 'Side to top' })).toBeVisible();
});
