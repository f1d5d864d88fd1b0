/** A question of each kind, opened by a link to it: answered by keyboard and pointer, and explained. */
import { type Locator, type Page, expect, test } from 'playwright/test';
import { plainText } from '../../src/core/working/plainText.ts';
import { makeQuestion, templates } from '../../src/practice/made/index.ts';
import { questionLink } from '../../src/practice/review/questionLink.ts';
import type { Level, Question } from '../../src/practice/questions/types.ts';
import { misconceptions } from '../practice/contentFiles.ts';
import { axeFaults } from '../support/axe.ts';

test.use({ actionTimeout: 10_000, contextOptions: { reducedMotion: 'reduce' } });

function made(template: string, seed = 3, level: Level = 'own', system: 'in' | 'mm' = 'in') {
  return makeQuestion(template, seed, { system, level, misconceptions });
}

async function open(page: Page, question: Question): Promise<Locator> {
  await page.goto(`practice/${questionLink(question)}`);
  await expect(page.getByText('A question by a link.')).toBeVisible();
  return page.locator('.practice');
}

/** One template of each kind, and both ways of drawing a fault. */
const ofEachKind = [
  ...new Map(templates.map((template) => [template.kind, template.id])).values(),
  ...templates.filter(({ kind }) => kind === 'fault').map(({ id }) => id),
];

for (const template of new Set(ofEachKind)) {
  test(`${template}: passes axe as it is asked, answered wrong, and worked out`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    const asked = await open(page, made(template));
    expect(await axeFaults(page)).toEqual([]);

    const text = asked.getByRole('textbox');
    if (await text.isVisible()) await text.fill('1/7');
    const choice = asked.locator('input[type=radio], input[type=checkbox]').first();
    if (await choice.isVisible()) await choice.check();
    await asked.getByRole('button', { name: 'Check' }).click();
    await expect(asked.locator('.verdict')).toBeVisible();
    expect(await axeFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);

    await open(page, made(template, 3, 'example'));
    await expect(asked.getByText('Right:').first()).toBeVisible();
    expect(await axeFaults(page)).toEqual([]);
  });
}

test.describe('an order of steps', () => {
  const question = made('order-at-the-bench');
  if (question.kind !== 'order') throw new Error('no order');

  const shown = (asked: Locator) => asked.locator('.order .says').allInnerTexts();

  test('is put right by keyboard alone, and every move is told', async ({ page }) => {
    const asked = await open(page, question);
    const says = new Map(question.steps.map(({ id, says: text }) => [id, plainText(text, 'in')]));
    for (const [place, id] of question.order.entries()) {
      const name = `Up: ${says.get(id)}`;
      const up = asked.getByRole('button', { name, exact: true });
      await up.focus();
      for (;;) {
        const at = (await shown(asked)).indexOf(says.get(id)!);
        if (at <= place) break;
        await page.keyboard.press('Enter');
        await expect(up).toBeFocused();
        await expect(
          asked.getByText(`Now ${at} of ${question.order.length}: ${says.get(id)}`),
        ).toBeAttached();
      }
    }
    // The first step can't go up any more, and pressing does no harm.
    const first = asked.getByRole('button', { name: /^Up: / }).first();
    await expect(first).toHaveAttribute('aria-disabled', 'true');
    await first.press('Enter');
    await asked.getByRole('button', { name: 'Check' }).press('Enter');
    await expect(asked.locator('.verdict')).toContainText('Right.');
  });

  test('is changed by pulling a step with the mouse', async ({ page }) => {
    const asked = await open(page, question);
    const before = await shown(asked);
    await asked.locator('.order').scrollIntoViewIfNeeded();
    const rows = asked.locator('.order li');
    const last = (await rows.last().boundingBox())!;
    await rows.first().locator('.grip').hover();
    await page.mouse.down();
    await page.mouse.move(last.x + last.width - 20, last.y + last.height - 2, { steps: 12 });
    await page.mouse.up();
    expect(await shown(asked)).toEqual([...before.slice(1), before[0]]);
  });

  test('is changed by pulling a step with a finger, and the page stays where it is', async ({
    browser,
    baseURL,
  }) => {
    const context = await browser.newContext({
      baseURL: baseURL!,
      hasTouch: true,
      viewport: { width: 390, height: 700 },
      locale: 'en-US',
    });
    const page = await context.newPage();
    const asked = await open(page, question);
    const before = await shown(asked);
    const rows = asked.locator('.order li');
    await rows.nth(1).evaluate((row) => row.scrollIntoView({ block: 'center' }));
    const scrolled = await page.evaluate(() => scrollY);
    const grip = (await rows.first().locator('.grip').boundingBox())!;
    const second = (await rows.nth(1).boundingBox())!;
    const x = grip.x + grip.width / 2;
    const touch = await context.newCDPSession(page);
    const at = (type: 'touchStart' | 'touchMove', y: number) =>
      touch.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y }] });
    await at('touchStart', grip.y + grip.height / 2);
    for (const part of [0.3, 0.7, 1]) {
      await at('touchMove', grip.y + (second.y + second.height - 4 - grip.y) * part);
    }
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    expect(await shown(asked)).toEqual([before[1], before[0], ...before.slice(2)]);
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
    await context.close();
  });
});

test('a fault is pointed at in the drawing or in the list beside it: one answer, two ways', async ({
  page,
}) => {
  const question = made('wrong-hole');
  if (question.kind !== 'fault') throw new Error('no fault');
  const asked = await open(page, question);
  const spots = asked.getByRole('button', { name: /^[P-Z]: Hole/ });
  const list = asked.getByRole('radio');
  await expect(spots).toHaveCount(question.choices.length);
  for (const spot of await spots.all()) {
    const { width, height } = (await spot.boundingBox())!;
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(24);
  }
  await spots.nth(1).press('Enter');
  await expect(spots.nth(1)).toHaveAttribute('aria-pressed', 'true');
  await expect(list.nth(1)).toBeChecked();
  const right = question.choices.findIndex((choice) => choice.right);
  await list.nth(right).check();
  await expect(spots.nth(right)).toHaveAttribute('aria-pressed', 'true');
  await expect(spots.nth(1)).toHaveAttribute('aria-pressed', right === 1 ? 'true' : 'false');
  await asked.getByRole('button', { name: 'Check' }).click();
  await expect(asked.locator('.verdict')).toContainText('Right.');
});

test('a rule is read in its own unit, whichever the reader has', async ({ page }) => {
  const question = made('read-the-rule', 5, 'own', 'mm');
  if (question.kind !== 'rule') throw new Error('no rule');
  const asked = await open(page, question);
  await expect(asked.getByRole('img', { name: /A rule with a line/ }).first()).toBeVisible();
  await expect(asked.getByText('In millimeters, or write the unit.')).toBeVisible();
  await asked.getByRole('textbox').fill(String(question.right));
  await asked.getByRole('textbox').press('Enter');
  await expect(asked.locator('.verdict')).toContainText('Right.');
});
