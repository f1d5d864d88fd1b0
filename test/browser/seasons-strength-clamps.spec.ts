/** The figures of moisture, movement, strength and clamps, as a student uses them. */
import { expect, type Locator, type Page, test } from 'playwright/test';

/** Opens a lesson, makes a prediction and goes on to the figure that it uncovers. */
async function open(page: Page, lesson: string, choice: RegExp): Promise<void> {
  await page.goto(`lessons/${lesson}/`);
  const button = page.getByRole('button', { name: 'This is my prediction' });
  const panel = page
    .locator('section.panel')
    .filter({ has: button })
    .filter({ has: page.getByLabel(choice) });
  await panel.scrollIntoViewIfNeeded();
  await panel.getByLabel(choice).check();
  await panel.getByRole('button', { name: 'This is my prediction' }).click();
  // A figure comes alive when it is seen.
  await page.locator('section.panel:has(figure)').first().scrollIntoViewIfNeeded();
}

async function cell(table: Locator, row: RegExp, column = 0): Promise<string> {
  return table.getByRole('row', { name: row }).getByRole('cell').nth(column).innerText();
}

async function press(slider: Locator, key: string, times: number): Promise<void> {
  await slider.scrollIntoViewIfNeeded();
  await expect(slider).toBeEnabled();
  await slider.focus();
  for (let i = 0; i < times; i++) await slider.page().keyboard.press(key);
}

test.describe('moisture', () => {
  const lesson = 'moisture-and-seasons';

  test('dry the air by keyboard: the pin comes loose in the face, and the drawing says so', async ({
    page,
  }) => {
    await open(page, lesson, /Along the board/);
    const table = page.getByRole('table', { name: 'Hole and pin in numbers' });
    expect(await cell(table, /^Least clearance in B's face/, 1)).toMatch(/^−0\.00/);
    await press(page.getByRole('slider', { name: 'Humidity of the air' }), 'ArrowLeft', 30);
    expect(await cell(table, /^Least clearance in B's face/, 1)).toMatch(/^0\.00/);
    expect(await cell(table, /^Hole in B's face, along the grain/, 1)).toBe('0.375');
    await expect(
      page.getByRole('img', { name: /35 % humidity, wood comes to 6\.\d % moisture/ }),
    ).toBeVisible();
    await expect(page.locator('figcaption').first()).toContainText('The pin still goes in');
  });

  test('the temperature follows the unit, and what is beyond the table is said', async ({
    page,
  }) => {
    await open(page, lesson, /Along the board/);
    const slider = page.getByRole('slider', { name: 'Temperature of the air' });
    await expect(slider).toHaveAttribute('aria-valuetext', '77 degrees Fahrenheit');
    await page.getByRole('radio', { name: 'mm', exact: true }).check();
    await expect(slider).toHaveAttribute('aria-valuetext', '25 degrees Celsius');
    const typed = page.getByRole('textbox', { name: 'Temperature of the air' });
    await typed.fill('60');
    await expect(page.locator('figcaption').first()).toContainText('beyond the table');
    await typed.fill('warm');
    await expect(typed).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByRole('alert')).toContainText('Type a number');
  });
});

test('movement: bring the outer pins together until the play is enough', async ({ page }) => {
  await open(page, 'moisture-and-seasons', /Both boards widen alike/);
  const table = page.getByRole('table', { name: 'Change against play' });
  const field = page.getByRole('textbox', { name: 'First pin to last' });
  await field.scrollIntoViewIfNeeded();
  await expect(field).toBeEnabled();
  expect(await cell(table, /^Held back/)).not.toBe('0.000');
  await field.fill('3/8');
  expect(await cell(table, /^Held back/)).toMatch(/^0\.00[01]$/);
  await page.getByRole('radio', { name: 'Shelf', exact: true }).check();
  await field.fill('14');
  expect(await cell(table, /^One board moves more by/)).toBe('0.000');
  await expect(page.getByRole('img', { name: /Both boards swell the same way/ })).toBeVisible();
});

test('strength: a ratio, its standing and no force; what was not tested is refused', async ({
  page,
}) => {
  await open(page, 'how-strong-and-when-not-to-use-dowels', /About half/);
  const table = page.getByRole('table', { name: 'How many times the first' });
  expect(await cell(table, /^By the depth/)).toBe('0.54');
  await page.getByRole('radio', { name: 'Grooved' }).check();
  expect(await cell(table, /^By the grooves/)).toBe('0.90');
  expect(await cell(table, /^Pull that draws/)).toBe('0.49');
  const figure = page.locator('section.panel').filter({ has: table });
  await expect(figure).toContainText('second-hand');
  expect(await figure.innerText()).not.toMatch(/\d\s?(lb|N|psi|MPa)\b/);

  await page.getByRole('radio', { name: 'A case corner' }).check();
  await page.getByRole('textbox', { name: 'Depth in the face' }).fill('1');
  await expect(page.locator('figcaption').first()).toContainText('were tested');
  await page.getByRole('radio', { name: 'A frame' }).check();
  await expect(figure).toContainText('from memory');
});

test('clamps: with one clamp too few the glue line goes bare; the rule mends it', async ({
  page,
}) => {
  await open(page, 'edge-joint-and-the-panel', /spread evenly/);
  const table = page.getByRole('table', { name: 'The clamps in numbers' });
  expect(await cell(table, /^Bare between two/)).toBe('0 in');
  await press(page.getByRole('slider', { name: 'Number of clamps' }), 'ArrowLeft', 1);
  expect(await cell(table, /^Bare between two/)).toBe('1 1/4 in');
  await expect(
    page.getByRole('img', { name: /1 1\/4 inches of the glue line is bare/ }),
  ).toBeVisible();
  await page.getByRole('button', { name: 'As many as the rule asks for' }).click();
  expect(await cell(table, /^Clamps set/)).toBe('3');
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  for (const [lesson, name, table] of [
    ['moisture-and-seasons', /Moisture that wood comes to/, 'Hole and pin in numbers'],
    ['moisture-and-seasons', /A rail and its row/, 'Change against play'],
    ['how-strong-and-when-not-to-use-dowels', /Two joints compared/, 'How many times the first'],
    ['edge-joint-and-the-panel', /Two boards in their clamps/, 'The clamps in numbers'],
  ] as const) {
    test(`${table}: drawn for its starting values, told in both units`, async ({ page }) => {
      await page.goto(`lessons/${lesson}/`);
      const image = page.getByRole('img', { name });
      await expect(image).toBeVisible();
      await expect(page.getByRole('table', { name: table })).toBeVisible();
      const text = await image.locator('desc').innerHTML();
      const units =
        lesson === 'moisture-and-seasons' && /Moisture/.test(name.source)
          ? [/°F/, /°C/]
          : [/\d inch/, /\d millimeter/];
      for (const unit of units) expect(text).toMatch(unit);
    });
  }
});
