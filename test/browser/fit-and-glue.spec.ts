/** The figures of 'Clearance and the glue line' and 'Glue, trapped air and the end gap'. */
import { expect, type Locator, type Page, test } from 'playwright/test';

const FIT = 'lessons/clearance-and-the-glue-line/';
const GLUE = 'lessons/glue-trapped-air-and-the-end-gap/';

async function predict(page: Page, choice: string): Promise<void> {
  // A figure wakes when it is seen.
  await page.getByText('The drawing is covered').scrollIntoViewIfNeeded();
  const form = page.locator('form').filter({ hasText: 'This is my prediction' });
  await form.scrollIntoViewIfNeeded();
  await form.getByLabel(choice).check();
  await form.getByRole('button', { name: 'This is my prediction' }).click();
}

/** A row of the figure's table. */
function row(page: Page, name: string): Locator {
  return page
    .getByRole('table', { name: 'The same in numbers' })
    .getByRole('row', { name })
    .getByRole('cell');
}

test.describe('a pin in its hole', () => {
  test.beforeEach(async ({ page }) => {
    await page.goto(FIT);
  });

  test('is covered until predicted, then eased from too tight to good by keyboard alone', async ({
    page,
  }) => {
    const drawing = page.getByRole('img', { name: 'A pin in its hole' });
    await expect(drawing).toBeHidden();
    await predict(page, 'Nothing: the tighter');
    await expect(page.getByText('You said')).toContainText(
      /The figure shows 2 thousandths.* to 7\.9 thousandths/,
    );
    await expect(drawing).toBeVisible();
    await expect(row(page, 'Verdict')).toHaveText('good');

    await page.getByLabel('Hole and pin').selectOption('3/8 in pin, swollen');
    await expect(row(page, 'Verdict')).toHaveText('ease the pin');
    await expect(page.locator('figcaption')).toContainText('Ease the pin until it slides');
    const slider = page.getByRole('slider', { name: 'Diameter of the pin, as it is' });
    await slider.focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowLeft');
    await expect(slider).toHaveAttribute('aria-valuetext', '3/8 in');
    await expect(row(page, 'Verdict')).toHaveText('starved');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    await expect(row(page, 'Verdict')).toHaveText('good');
    await expect(page.getByLabel('Hole and pin')).toHaveValue('My own');
    // A screen reader hears where it came to.
    await expect(page.getByRole('status').filter({ hasText: 'thin line of glue' })).toHaveCount(1);
  });

  test('shows both units, the reader’s first, and takes a diameter as a caliper gives it', async ({
    page,
  }) => {
    await predict(page, 'Nothing: the tighter');
    await expect(row(page, 'Clearance')).toHaveText(/^3\.9.thousandths \(100.µm\)$/);
    await page.locator('label').filter({ hasText: /^mm$/ }).click();
    await expect(row(page, 'Clearance')).toHaveText(/^100.µm \(3\.9.thousandths\)$/);
    const pin = page.getByRole('textbox', { name: 'Diameter of the pin, as it is' });
    await expect(pin).toHaveValue('9.43 mm');
    await pin.fill('9.3');
    await expect(row(page, 'Verdict')).toHaveText('thick');
    await expect(row(page, 'Clearance')).toHaveText(/^225.µm/);
    await pin.fill('9,3x');
    await expect(pin).toHaveAttribute('aria-invalid', 'true');
    await expect(row(page, 'Clearance')).toHaveText(/^225.µm/);
  });

  test('shows where each published number comes from, and how far to trust it', async ({
    page,
  }) => {
    await predict(page, 'Nothing: the tighter');
    const judged = page.getByRole('table', { name: 'What it is judged by' });
    await expect(judged.getByRole('row')).toHaveCount(3);
    await expect(judged.getByRole('row', { name: /Hoadley.*\(read\)/ })).toContainText('203');
    await expect(judged.getByRole('row', { name: /EN 205.*\(read\)/ })).toContainText('100');
  });
});

test.describe('glue in its hole', () => {
  test.beforeEach(async ({ page }) => {
    await page.goto(GLUE);
  });

  test('holds the joint open until it has room, or flutes to rise along', async ({ page }) => {
    const drawing = page.getByRole('img', { name: 'Room for glue in a hole' });
    await expect(drawing).toBeHidden();
    await predict(page, 'The joint stays open');
    await expect(drawing).toBeVisible();
    await expect(row(page, 'Joint stays open by')).toHaveText(/^≈3\/32 in/);
    await expect(page.locator('figcaption')).toContainText('nowhere to go');

    // Fluted: what is over gets out.
    const plain = page.getByRole('radio', { name: 'Plain' });
    await plain.focus();
    await page.keyboard.press('ArrowRight');
    await expect(page.locator('figcaption')).toContainText('rises along the flutes');
    await expect(row(page, 'Joint stays open by')).toHaveText(/^0 in/);
    await page.keyboard.press('ArrowLeft');

    // Plain again, with an end gap: it closes, but the glue lies under the pin.
    const free = page.getByRole('slider', { name: "Free depth past the pin's end" });
    await free.focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
    await expect(free).toHaveAttribute('aria-valuetext', '1/8 inch');
    await expect(row(page, 'End gap')).toHaveText('0.23 ml');
    await expect(row(page, 'Joint stays open by')).toHaveText(/^0 in/);
    await expect(page.locator('figcaption')).toContainText('Spread it on the wall');
    await page.getByRole('button', { name: 'Back to the start' }).click();
    await expect(row(page, 'End gap')).toHaveText('0 ml');
  });
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('both are drawn for their starting values, in both units, with their tables', async ({
    page,
  }) => {
    await page.goto(FIT);
    await expect(page.getByRole('img', { name: 'A pin in its hole' })).toBeVisible();
    await expect(row(page, 'Clearance')).toHaveText(/^3\.9.thousandths \(100.µm\)$/);
    await page.goto(GLUE);
    const drawing = page.getByRole('img', { name: 'Room for glue in a hole' });
    await expect(drawing).toBeVisible();
    await expect(drawing.locator('desc')).toContainText('2.3 millimeters');
    await expect(row(page, 'Joint stays open by')).toHaveText(/3\/32 in.*2\.3 mm/);
  });
});
