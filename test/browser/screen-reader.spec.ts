/**
 * What a screen reader says of each kind of figure at its starting values, word for word: the
 * drawing with its description, its sentence, its controls, its numbers, and what each slider says
 * of its value. A number that changes shows here.
 */
import { type Locator, type Page, expect, test } from 'playwright/test';

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
  ['row of pins', 'placing-the-pins'],
  ['rule', 'reading-a-rule'],
  ['stop', 'setting-the-stop'],
  ['order of work', 'the-working-order-and-the-setup-sheet'],
] as const;

/** Everything that is said, and each slider's step among its steps with the words for it. */
async function heard(...parts: readonly Locator[]): Promise<string> {
  const said: string[] = [];
  for (const part of parts) {
    // Addresses depend on where the site lives.
    const lines = (await part.ariaSnapshot()).split('\n').filter((line) => !/- \/url:/.test(line));
    const sliders = await part
      .getByRole('slider')
      .evaluateAll((inputs: HTMLInputElement[]) =>
        inputs.map(
          ({ ariaLabel, ariaValueText, value, min, max }) =>
            `- ${ariaLabel}: “${ariaValueText}”, ${value} of ${min} to ${max}`,
        ),
      );
    said.push(...lines, ...(sliders.length > 0 ? ['', 'Sliders say:', ...sliders] : []), '');
  }
  return said.join('\n');
}

/** The figure of a lesson, once the prediction has let the reader at it. */
async function figureOf(page: Page, lesson: string): Promise<Locator> {
  await page.goto(`lessons/${lesson}/`);
  return uncover(page, 0);
}

async function uncover(page: Page, nth: number): Promise<Locator> {
  const prediction = page
    .locator('form')
    .filter({ has: page.getByRole('button', { name: 'This is my prediction' }) })
    .first();
  await prediction.scrollIntoViewIfNeeded();
  await prediction.getByRole('radio').first().check();
  await prediction.getByRole('button').first().click();
  const panel = page.locator('.panel:has(figure)').nth(nth);
  await panel.scrollIntoViewIfNeeded();
  await expect(panel.getByRole('img').first()).toBeVisible();
  await expect(panel.locator(':is(input, button):enabled').first()).toBeVisible();
  return panel;
}

test.use({
  locale: 'en-US',
  viewport: { width: 1280, height: 800 },
  contextOptions: { reducedMotion: 'reduce' },
});

for (const [figure, lesson] of FIGURES) {
  test(`the ${figure} figure says what it shows`, async ({ page }) => {
    const panel = await figureOf(page, lesson);
    expect(await heard(panel)).toMatchSnapshot(`${figure.replaceAll(' ', '-')}.txt`);
  });
}

test('the figures of moisture and of movement say what they show', async ({ page }) => {
  const moisture = await figureOf(page, 'moisture-and-seasons');
  expect(await heard(moisture)).toMatchSnapshot('moisture.txt');
  expect(await heard(await uncover(page, 1))).toMatchSnapshot('movement.txt');
});

test('the split figure says what it shows, and before a class what the keys do', async ({
  page,
}) => {
  const panel = await figureOf(page, 'splitting-the-depth');
  const alone = await heard(panel);
  expect(alone).toMatchSnapshot('split.txt');
  await panel.getByRole('button', { name: 'Show to the class' }).click();
  const bar = panel.locator('.class-view-bar');
  await expect(bar).toHaveText(
    'Thickness of B: 3/4 inch · keys left and right change it, up and down choose another',
  );
  const keys = `- paragraph: "${await bar.innerText()}"`;
  expect(await heard(panel)).toBe(alone.replace('- button "Show to the class"', keys));
});

test('the bench says what it draws and plans', async ({ page }) => {
  await page.goto('bench/');
  const region = (name: string) => page.getByRole('region', { name });
  await expect(region('In numbers').getByRole('button').first()).toBeVisible();
  expect(
    await heard(
      region('Section through the joint'),
      region('In numbers'),
      region('The stop on the bit'),
      region('Along the joint'),
    ),
  ).toMatchSnapshot('bench.txt');
});

test('a trial run says what was drilled and what came of it', async ({ page }) => {
  await page.goto('trial/#start=same-stop;kind=tee');
  await expect(page.locator('#start')).toBeEnabled();
  await page.getByRole('button', { name: 'Drill', exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Push together', exact: true }).press('Enter');
  await expect(page.locator('.trial-run .verdict')).toBeVisible();
  expect(
    await heard(
      page.getByRole('region', { name: 'Job card' }),
      page.getByRole('form', { name: 'Your setup' }),
      page.getByRole('region', { name: 'Drill and try' }),
    ),
  ).toMatchSnapshot('trial.txt');
});

test('a piece says its joints and what to drill', async ({ page }) => {
  await page.goto('bench/piece/');
  await expect(page.getByRole('button', { name: 'Print the plan' })).toBeEnabled();
  expect(
    await heard(
      page.getByRole('region', { name: 'Joints' }),
      page.getByRole('region', { name: 'Drill list' }),
    ),
  ).toMatchSnapshot('piece.txt');
});

test('a setup sheet says what to set and to drill', async ({ page }) => {
  await page.goto('bench/sheet/');
  const sheet = page.getByRole('article').first();
  await expect(sheet.getByRole('checkbox').first()).toBeEnabled();
  // A code for a phone is there where the site has an address that a phone can reach.
  const lines = (await heard(sheet)).split('\n');
  const here = lines.filter((line) => !/QR code|this joint on a phone$/.test(line));
  expect(here.join('\n')).toMatchSnapshot('setup-sheet.txt');
});

test.describe('where lengths are metric', () => {
  test.use({ locale: 'en-GB' });

  test('the split figure says every length in millimeters', async ({ page }) => {
    const panel = await figureOf(page, 'splitting-the-depth');
    expect(await heard(panel)).toMatchSnapshot('split-metric.txt');
  });
});
