/** Practice as a student meets it, over days. */
import { type Locator, type Page, expect, test } from 'playwright/test';
import { makeQuestion } from '../../src/practice/made/index.ts';
import type { Level } from '../../src/practice/questions/types.ts';
import { misconceptions } from '../practice/contentFiles.ts';

test.use({ actionTimeout: 10_000, timezoneId: 'America/New_York' });

const DAY = 86_400_000;
/** A Monday at ten, Eastern time. */
const MONDAY = Date.UTC(2026, 10, 23, 15);

async function practice(page: Page, at: number): Promise<Locator> {
  await page.clock.setSystemTime(at);
  await page.goto('practice/');
  await expect(page.getByRole('button', { name: 'Begin' })).toBeEnabled();
  return page.locator('.practice');
}

function says(locator: Locator, text: string | RegExp): Promise<void> {
  return expect(locator).toContainText(text, { useInnerText: true });
}

test('study, miss, learn, and come back: the right question is due tomorrow, and says why', async ({
  page,
}) => {
  await page.clock.install({ time: MONDAY });
  await page.goto('lessons/splitting-the-depth/');
  const stop = page.locator('form.question').filter({ hasText: 'How far from the collar' });
  await stop.scrollIntoViewIfNeeded();
  const field = stop.getByRole('textbox');
  await field.fill('39/64');
  await field.press('Enter');
  await says(stop.getByRole('status'), 'Not yet. Forgot the bushing.');

  // Missed and not made good: due at once.
  let here = await practice(page, MONDAY + 60_000);
  await says(here, 'One question is due');
  await says(here, 'Splitting the depth. Missed today: forgot the bushing');

  // The explanation is read, and the question answered right.
  await page.goto('lessons/splitting-the-depth/');
  await stop.scrollIntoViewIfNeeded();
  await says(stop, 'Answered before: not right yet');
  await field.fill('40.8 mm');
  await field.press('Enter');
  await says(stop.getByRole('status'), 'Right.');
  await expect(page.getByText('1 of 9 answered right.')).toBeVisible();
  here = await practice(page, MONDAY + 120_000);
  await says(here, 'Nothing is due');
  await says(here, 'The next question comes back tomorrow.');

  // Tomorrow, an hour earlier than today.
  here = await practice(page, MONDAY + DAY - 3_600_000);
  await says(here, 'Missed yesterday: forgot the bushing');
  await here.getByRole('button', { name: 'Begin' }).click();
  await says(here, 'Question 1 of 8');
  await says(here, 'Missed yesterday: forgot the bushing');
  await says(here.locator('form'), 'How far from the collar');
  await here.getByRole('textbox').fill('40.8 mm');
  await here.getByRole('textbox').press('Enter');
  await says(here.locator('.verdict'), 'Right.');
  await says(here, '1 right at the first try so far.');
  await here.getByRole('button', { name: 'Next question' }).click();
  // Mixed: the next is of another lesson.
  await says(here, 'Question 2 of 8');
  await expect(here.locator('.why')).not.toContainText('Splitting the depth');
  await here.getByRole('button', { name: 'End here' }).click();
  await says(here, '1 of 1 right at the first try.');

  // Known on the next day: it comes back after three.
  here = await practice(page, MONDAY + 2 * DAY);
  await says(here, 'Nothing is due');
  here = await practice(page, MONDAY + 4 * DAY);
  await says(here, 'Right three days ago: does it stay?');
});

test('begins mixed with nothing done yet, by keyboard alone on a phone, and ends kindly', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.clock.install({ time: MONDAY });
  const here = await practice(page, MONDAY);
  await says(here, 'A mixed start');
  await here.getByRole('button', { name: 'Begin' }).press('Enter');
  const lessons: string[] = [];
  for (let number = 1; number <= 8; number++) {
    await says(here.getByRole('heading'), `Question ${number} of 8`);
    await expect(here).toBeFocused();
    lessons.push(await here.locator('.why').innerText());
    const text = here.getByRole('textbox');
    if (await text.isVisible()) await text.fill('1/7');
    const choice = here.locator('input[type=radio], input[type=checkbox]').first();
    if (await choice.isVisible()) await choice.press('Space');
    await here.getByRole('button', { name: 'Check' }).press('Enter');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    await here.getByRole('button', { name: /Next question|To the end/ }).press('Enter');
  }
  expect(new Set(lessons).size).toBe(8);
  await says(here, 'That is enough for now');
  await says(here, 'of 8 right at the first try.');
  await says(here, 'To look at again');
  await here.getByRole('button', { name: 'Another sitting' }).press('Enter');
  await says(here, 'Missed today');
});

test('keeps to the joints and lessons that are chosen', async ({ page }) => {
  await page.clock.install({ time: MONDAY });
  const here = await practice(page, MONDAY);
  await here.getByText('Choose lessons and joints').click();
  await here.getByRole('checkbox', { name: 'Miter', exact: true }).check();
  await here.getByRole('checkbox', { name: 'Leg and apron' }).check();
  await here.getByRole('button', { name: 'Begin' }).click();
  await says(here.getByRole('status').last(), 'Nothing can be asked of what you chose.');
  await here.getByRole('checkbox', { name: 'Leg and apron' }).uncheck();
  await here.getByRole('checkbox', { name: 'Miter joint' }).check();
  await here.getByRole('button', { name: 'Begin' }).click();
  await says(here, 'Question 1 of 2');
  await says(here.locator('.why'), 'Miter joint');
});

test('a link leads to one question and back; one that can’t be read is refused in a sentence', async ({
  page,
}) => {
  await page.goto('practice/#try=splitting-the-depth/stop-for-b');
  const here = page.locator('.practice');
  await says(here, 'How far from the collar');
  await here.getByRole('textbox').fill('40.8 mm');
  await here.getByRole('textbox').press('Enter');
  await here.getByRole('button', { name: 'To practice' }).click();
  expect(new URL(page.url()).hash).toBe('');
  await expect(here.getByRole('button', { name: 'Begin' })).toBeEnabled();
  for (const [hash, refusal] of [
    ['#try=no-such-thing:7', 'There is no such question any more.'],
    ['#try=splitting-the-depth/gone', 'There is no such question any more.'],
    ['#try=stop', 'This link names no question'],
    ['#try=stop-for-a-board:7;system=ft', 'a unit or a level that there is not'],
  ] as const) {
    await page.goto('about:blank');
    await page.goto(`practice/${hash}`);
    await says(here.getByRole('status').last(), refusal);
  }
});

test('fresh numbers in a lesson: worked out more after a miss, less after a right answer', async ({
  page,
}) => {
  // Every seed is 1, 2, 3 …, so that the answers are known here.
  await page.addInitScript(() => {
    let seed = 0;
    const random = crypto.getRandomValues.bind(crypto);
    crypto.getRandomValues = ((array: Uint32Array<ArrayBuffer>) => {
      if (!(array instanceof Uint32Array)) return random(array);
      seed += 1;
      array[0] = seed;
      return array;
    }) as typeof crypto.getRandomValues;
  });
  const right = (seed: number, level: Level) => {
    const question = makeQuestion('free-room', seed, { system: 'in', level, misconceptions });
    if (question.kind !== 'length') throw new Error('no length');
    return `${question.right} mm`;
  };
  await page.goto('lessons/what-a-dowel-joint-is/');
  const panel = page.locator('.fresh');
  await panel.scrollIntoViewIfNeeded();
  await expect(panel.getByText('First an example, worked out')).toBeVisible();
  await panel.getByRole('button', { name: 'Ask me one' }).click();
  await expect(panel).toBeFocused();
  await panel.getByRole('radio').first().check();
  await panel.getByRole('button', { name: 'Check' }).click();
  await panel.getByRole('button', { name: 'Another sort' }).click();

  await says(panel, 'One step is left blank.');
  await panel.getByRole('textbox').fill('1/7');
  await panel.getByRole('textbox').press('Enter');
  await says(panel.locator('.verdict'), 'Not yet.');
  await panel.getByRole('button', { name: 'Another like it' }).click();
  await says(panel, 'An example, worked out.');
  await panel.getByRole('button', { name: 'Now one with a step left blank' }).click();
  await says(panel, 'One step is left blank.');
  await panel.getByRole('textbox').fill(right(4, 'blank'));
  await panel.getByRole('textbox').press('Enter');
  await says(panel.locator('.verdict'), 'Right.');
  await panel.getByRole('button', { name: 'Another like it' }).click();
  await expect(panel.getByText('Worked out so far')).toHaveCount(0);
  await panel.getByRole('textbox').fill(right(5, 'own'));
  await panel.getByRole('textbox').press('Enter');
  await says(panel.locator('.verdict'), 'Right.');
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('fresh numbers show one example, worked out, and practice says what it needs', async ({
    page,
  }) => {
    await page.goto('lessons/what-a-dowel-joint-is/');
    const panel = page.locator('.panel').filter({ has: page.locator('.fresh') });
    await says(panel, 'Fresh numbers need JavaScript.');
    await page.getByText('First an example, worked out').click();
    await says(page.locator('.worked-out'), /Right: .+/);
    await page.goto('practice/');
    await says(page.locator('main'), 'Practice needs JavaScript');
  });
});
