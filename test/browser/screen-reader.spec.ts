/**
 * What a screen reader says of each kind of figure at its starting values: the drawing with its
 * description, its sentence, its controls with their values, its numbers.
 */
import { expect, test } from 'playwright/test';

const FIGURES = [
  ['pin choice', 'choosing-the-pin'],
  ['fit', 'clearance-and-the-glue-line'],
  ['joint', 'corner-joint'],
  ['behind the board', 'drilling-safely'],
  ['clamps', 'edge-joint-and-the-panel'],
  ['drilling errors', 'errors-odds-and-the-dry-fit'],
  ['marks', 'faces-edges-ends-and-marks'],
  ['glue', 'glue-trapped-air-and-the-end-gap'],
  ['strength', 'how-strong-and-when-not-to-use-dowels'],
  ['moisture', 'moisture-and-seasons'],
  ['row of pins', 'placing-the-pins'],
  ['rule', 'reading-a-rule'],
  ['stop', 'setting-the-stop'],
  ['split', 'splitting-the-depth'],
  ['order of work', 'the-working-order-and-the-setup-sheet'],
] as const;

test.use({ locale: 'en-US', viewport: { width: 1280, height: 800 } });

for (const [figure, lesson] of FIGURES) {
  test(`the ${figure} figure says what it shows`, async ({ page }) => {
    await page.goto(`lessons/${lesson}/`);
    const prediction = page
      .locator('form')
      .filter({ has: page.getByRole('button', { name: 'This is my prediction' }) })
      .first();
    await prediction.scrollIntoViewIfNeeded();
    await prediction.getByRole('radio').first().check();
    await prediction.getByRole('button').first().click();
    const panel = page.locator('.panel:has(figure)').first();
    await panel.scrollIntoViewIfNeeded();
    await expect(panel.getByRole('img').first()).toBeVisible();
    await expect(panel.locator(':is(input, button):enabled').first()).toBeVisible();
    await expect(panel).toMatchAriaSnapshot({ name: `${figure.replaceAll(' ', '-')}.aria.yml` });
  });
}
