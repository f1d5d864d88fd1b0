/** The figures of the rule, the choice of a pin and the point of the bit, as a student uses them. */
import { expect, type Page, test } from 'playwright/test';

async function predict(page: Page, lesson: string, choice: string | RegExp): Promise<void> {
  await page.goto(`lessons/${lesson}/`);
  const button = page.getByRole('button', { name: 'This is my prediction' });
  const form = page.locator('form').filter({ has: button });
  await form.scrollIntoViewIfNeeded();
  await form.getByRole('radio', { name: choice }).check();
  await button.click();
  // A figure comes alive when it is seen.
  await page.locator('section.panel:has(figure)').first().scrollIntoViewIfNeeded();
}

/** The other unit's text is in the page too, but not shown. */
const shown = { useInnerText: true };

const cell = (page: Page, table: string, row: string) =>
  page.getByRole('table', { name: table }).getByRole('row', { name: row }).getByRole('cell').last();

test('read a board on a rule, on a finer one, and from a worn end', async ({ page }) => {
  await predict(page, 'reading-a-rule', '23/64 in');
  const says = page.locator('figcaption').first();
  await expect(says).toHaveText(
    'The rule shows 23/32 in: 1/2 + 1/8 + 1/16 + 1/32. The last mark is a thirty-second.',
  );
  await page.getByRole('button', { name: 'More: Length of the board' }).click();
  await expect(says).toHaveText('The rule shows 3/4 in: 1/2 + 1/4. The last mark is a quarter.');
  await page.getByRole('radio', { name: 'a worn end' }).check();
  await expect(says).toContainText('The rule shows 25/32 in', shown);
  await expect(says).toContainText('But the board is 3/4 in long.', shown);
  await expect(cell(page, 'The same in numbers', 'Error of the start')).toHaveText(
    '1/32 in too much',
  );
  await page.getByRole('radio', { name: 'the end', exact: true }).check();
  await page.getByRole('radio', { name: '1 mm', exact: true }).check();
  await expect(says).toContainText('The rule shows 19 mm', shown);
  await expect(says).toContainText('a little past that mark, by 0.05 mm', shown);
  await page.getByRole('textbox', { name: 'Length of the board' }).fill('47');
  await expect(cell(page, 'The same in numbers', 'Built up')).toHaveText('40 + 5 + 2');
  await expect(cell(page, 'The same in numbers', 'Half of the board')).toHaveText('23.5 mm');
});

test('a reader of millimeters starts with a metric rule', async ({ page }) => {
  await predict(page, 'reading-a-rule', '23/64 in');
  await page.getByRole('radio', { name: 'mm', exact: true }).check();
  await expect(page.locator('figcaption').first()).toContainText('The rule shows 47 mm');
});

test('make the side thinner until another pin is taken, and read why the others are not', async ({
  page,
}) => {
  await predict(page, 'choosing-the-pin', /^3\/8 in/);
  const says = page.locator('figcaption').first();
  await expect(says).toContainText('Taken: the pin of 3/8 × 1 1/2 in.', shown);
  await expect(cell(page, 'Every pin in the drawer', '1/2 × 1 1/2')).toHaveText(
    'Too thick: a board 3/4 in thick takes 5/16 in to 3/8 in.',
    shown,
  );
  await page.getByRole('button', { name: 'Less: Thickness of A' }).click();
  await expect(says).toContainText('Taken: the pin of 5/16 ×', shown);
  await expect(
    page.getByRole('img', { name: /5\/16 inch across, .* of wood on either side: taken/ }),
  ).toBeVisible();
  await page.getByRole('radio', { name: 'a third to a half', exact: true }).check();
  await expect(says).toContainText('A third to a half of a board 11/16 in thick', shown);
  await page.getByRole('radio', { name: 'metric sizes' }).check();
  await expect(says).toContainText('Taken: the pin of 8 ×', shown);
  await page.getByRole('button', { name: 'Back to the start' }).click();
  await expect(says).toContainText('Taken: the pin of 3/8 × 1 1/2 in.', shown);
});

test('let the collar slip by keyboard until the point is through, with a hand behind it', async ({
  page,
}) => {
  await predict(page, 'drilling-safely', 'Still in the board');
  const says = page.locator('figcaption').first();
  await expect(says).toContainText('The point stops 1/32 in short of the far face.', shown);
  const slip = page.getByRole('slider', { name: 'The collar has slipped by' });
  await expect(slip).toBeEnabled();
  await slip.focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
  await expect(says).toContainText('through the far face by 3/32 in, in the waste board', shown);
  await page.getByRole('radio', { name: 'a hand' }).check();
  await expect(says).toContainText('Here it is a hand', shown);
  await expect(page.getByText('Take the hand away, however much wood is left.')).toBeVisible();
  await expect(
    page.getByRole('img', { name: /through the far face by 3\/32 inch, in the hand/ }),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Set the stop for this board' }).click();
  await expect(says).toContainText('The point stops 1/32 in short of the far face.', shown);
  await expect(page.getByText('Take the hand away, however much wood is left.')).toBeVisible();
});
