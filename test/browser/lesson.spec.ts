/** The lesson 'Splitting the depth', as a student goes through it. */
import { expect, type Locator, type Page, test } from 'playwright/test';

const LESSON = 'lessons/splitting-the-depth/';

test.use({ actionTimeout: 10_000 });

test.beforeEach(async ({ page }) => {
  await page.goto(LESSON);
});

/** Text as it is seen: of the two units on the page, the reader's. */
function says(locator: Locator, text: string | RegExp): Promise<void> {
  return expect(locator).toContainText(text, { useInnerText: true });
}

/** The question whose text has these words, scrolled to and alive. */
async function question(page: Page, words: string): Promise<Locator> {
  const form = page.locator('form.question').filter({ hasText: words });
  await form.scrollIntoViewIfNeeded();
  await expect(form.getByRole('button').first()).toBeEnabled();
  return form;
}

async function predict(page: Page, choice: string): Promise<void> {
  const form = page.locator('form').filter({ hasText: 'ordinary twist bit' });
  await form.scrollIntoViewIfNeeded();
  await form.getByRole('radio', { name: choice, exact: true }).check();
  await form.getByRole('button', { name: 'This is my prediction' }).click();
  await page.getByRole('heading', { name: 'Move the board' }).evaluate((it) => it.scrollIntoView());
}

test('predict first: the figure is covered until then, and is compared with the prediction', async ({
  page,
}) => {
  const drawing = page.getByRole('img', { name: /Section through the corner joint/ });
  await expect(page.getByText('The drawing is covered')).toBeVisible();
  await expect(drawing).toBeHidden();
  await predict(page, '3/4 in');
  const outcome = page.getByText('You said').locator('..');
  await expect(outcome).toBeFocused();
  await says(outcome, 'You said 3/4 in. The figure shows ≈31/64 in.');
  await says(outcome, 'Half in each, whatever the board.');
  await expect(drawing).toBeVisible();
});

test('nothing predicted, nothing uncovered', async ({ page }) => {
  const button = page.getByRole('button', { name: 'This is my prediction' });
  await button.scrollIntoViewIfNeeded();
  await button.click();
  await expect(page.getByText('Nothing is chosen yet.')).toBeVisible();
  await expect(page.getByText('The drawing is covered')).toBeVisible();
});

test('move the board with the keyboard: drawing, sentence and numbers follow', async ({ page }) => {
  await predict(page, '≈31/64 in');
  const table = page.getByRole('table', { name: 'The same in numbers' });
  const held = table.getByRole('row', { name: /^Pin held/ }).getByRole('cell');
  await says(held.nth(1), '0.481');
  await says(held.nth(0), '1.019');

  const slider = page.getByRole('slider', { name: 'Thickness of B' });
  await slider.focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
  await expect(slider).toHaveAttribute('aria-valuetext', /^1 inch/);
  await says(held.nth(1), '0.731');
  await says(page.locator('figcaption'), 'B holds ≈47/64 in of the pin');

  // Thick enough: half of the pin, and no more.
  await page.keyboard.press('ArrowRight');
  await says(held.nth(1), '3/4 in');
  await says(page.locator('figcaption'), 'A and B each hold half of the pin');
});

test('make B too thin, and the page says which limit fails and what would mend it', async ({
  page,
}) => {
  await predict(page, '≈31/64 in');
  const field = page.getByRole('textbox', { name: 'Thickness of B' });
  await field.fill('1/2');
  await says(
    page.locator('.error'),
    'Board B would hold only ≈15/64 in of the pin, less than its diameter of 3/8 in',
  );
  await says(page.locator('.error'), 'Take a thinner pin');
  await field.fill('thin');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(field).toHaveValue('thin');
});

test('the edge joint halves the pin; a brad and a bit without a point change the hole', async ({
  page,
}) => {
  await predict(page, '≈31/64 in');
  const held = page
    .getByRole('table', { name: 'The same in numbers' })
    .getByRole('row', { name: /^Pin held/ })
    .getByRole('cell');
  await page.getByRole('radio', { name: 'None' }).check();
  await expect(held.nth(1)).toHaveText(/1\/2 in/);
  await page.getByRole('radio', { name: 'Edge' }).check();
  await expect(held.nth(0)).toHaveText(/3\/4 in/);
  await expect(held.nth(1)).toHaveText(/3\/4 in/);
  await expect(page.getByRole('img', { name: /edge joint/ })).toBeVisible();
  await page.getByRole('button', { name: 'Back to the start' }).click();
  await says(held.nth(1), '0.481');
});

test('every number of the figure opens to its working', async ({ page }) => {
  await predict(page, '≈31/64 in');
  const table = page.getByRole('table', { name: 'The same in numbers' });
  const number = table.getByRole('button', { name: /Depth of the hole in B/ });
  await number.click();
  await expect(number).toHaveAttribute('aria-expanded', 'true');
  await says(table, 'Depth of the hole in B, at full diameter');
  await expect(table.locator('math').first()).toBeVisible();
});

test('switch units: prose, drawing, working and questions follow, and what was typed stays', async ({
  page,
}) => {
  const stop = await question(page, 'How far from the collar');
  await stop.scrollIntoViewIfNeeded();
  await stop.getByRole('textbox').fill('39/64');
  await page.locator('label').filter({ hasText: /^mm$/ }).click();
  await says(page.locator('.prose > p').nth(1), 'Both are ≈19 mm thick.');
  await says(stop, "B's hole is to be ≈15.4 mm deep");
  await expect(stop.getByRole('textbox')).toHaveValue('39/64');
  await expect(page.locator('.step > .step-lines.mm').first()).toBeVisible();
  await expect(page.locator('.step > .step-lines.in').first()).toBeHidden();
});

test('a wrong answer is called by its name, a right one explained, by keyboard alone', async ({
  page,
}) => {
  const stop = await question(page, 'How far from the collar');
  const field = stop.getByRole('textbox');
  await field.scrollIntoViewIfNeeded();
  await field.fill('39/64');
  await field.press('Enter');
  const feedback = stop.getByRole('status');
  await says(feedback, 'Not yet. Forgot the bushing.');
  await expect(field).toHaveValue('39/64');
  await expect(field).toBeFocused();

  // 'Try again' goes back to the field with the text chosen, ready to be typed over.
  await stop.getByRole('button', { name: 'Try again' }).press('Enter');
  await expect(field).toBeFocused();
  await page.keyboard.type('40.8 mm');
  await page.keyboard.press('Enter');
  await says(feedback, 'Right.');
  await expect(page.getByText('1 of 9 answered right.')).toBeVisible();

  await stop.getByText('The working, with these numbers').click();
  await says(stop.locator('.steps li').last(), 'Stop for B');
});

test('the right number in the wrong unit is told apart, and text that is no length is kept', async ({
  page,
}) => {
  const stop = await question(page, 'How far from the collar');
  const field = stop.getByRole('textbox');
  await field.fill('40.8');
  await field.press('Enter');
  await says(stop.getByRole('status'), 'Right number, wrong unit.');
  await field.fill('a bit more');
  await field.press('Enter');
  await says(stop.getByRole('status'), '“a bit more” is not a length.');
  await expect(field).toHaveValue('a bit more');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
});

test('choose one of several and several of several', async ({ page }) => {
  const pin = await question(page, 'Who holds how much now?');
  await pin.getByRole('radio', { name: /^A 1 in ?, B 1 in$/ }).check();
  await pin.getByRole('button', { name: 'Check' }).click();
  await says(pin.getByRole('status'), 'Half in each, whatever the board.');
  await says(pin.locator('.choice').first(), 'Not this one');
  await pin.getByRole('radio', { name: /^A ≈1 33\/64 in ?, B ≈31\/64 in$/ }).check();
  await pin.getByRole('button', { name: 'Check' }).click();
  await says(pin.getByRole('status'), 'Right.');

  const hold = await question(page, 'Which of these do it?');
  await hold.getByRole('checkbox', { name: 'A longer pin' }).check();
  await hold.getByRole('checkbox', { name: 'A thicker board B' }).check();
  await hold.getByRole('button', { name: 'Check' }).click();
  const feedback = hold.getByRole('status');
  await says(feedback, 'A longer pin is held deeper everywhere.');
  await says(feedback, 'A bit with a shorter point');
  await hold.getByRole('checkbox', { name: 'A longer pin' }).uncheck();
  await hold.getByRole('checkbox', { name: 'A bit with a shorter point' }).check();
  await hold.getByRole('button', { name: 'Check' }).click();
  await says(feedback, 'Right.');
});

test('a word of the trade opens where it stands', async ({ page }) => {
  const word = page.getByRole('button', { name: 'Free depth', exact: true });
  const meaning = page.getByText('Without it the boards stay apart.').first();
  await expect(meaning).toBeHidden();
  await word.click();
  await expect(meaning).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(meaning).toBeHidden();
  await expect(word).toBeFocused();
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('the figure stands, and every question has its answer and explanations', async ({
    page,
  }) => {
    await expect(page.getByRole('img', { name: /Section through the corner joint/ })).toBeVisible();
    await expect(page.getByText('The drawing is covered')).toBeHidden();
    await expect(page.getByRole('table', { name: 'The same in numbers' })).toBeVisible();
    const keys = page.getByText('Answer and explanation');
    await expect(keys).toHaveCount(13);
    for (const key of await keys.all()) {
      await key.click();
      await says(key.locator('..'), /Right: .+/);
    }
    await expect(page.getByText('Forgot the bushing.')).toBeVisible();
  });
});

test.describe('on paper', () => {
  test('the questions have room for an answer and give none away', async ({ page }) => {
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('img', { name: /Section through the corner joint/ })).toBeVisible();
    await expect(page.getByText('Seen and signed off')).toBeVisible();
    await expect(
      page
        .locator('form.question')
        .filter({ hasText: 'How far from the collar' })
        .getByRole('textbox'),
    ).toBeVisible();
    for (const key of await page.getByText('Answer and explanation').all()) {
      await expect(key).toBeHidden();
    }
  });
});
