/** The figures of the first lesson and of 'Faces, edges, ends and marks'. */
import { expect, type Page, test } from 'playwright/test';

async function predict(page: Page, choice: string): Promise<void> {
  // A figure wakes when it is seen.
  await page.getByText('The drawing is covered').scrollIntoViewIfNeeded();
  const form = page.locator('form').filter({ hasText: 'This is my prediction' });
  await form.scrollIntoViewIfNeeded();
  await form.getByLabel(choice).check();
  await form.getByRole('button', { name: 'This is my prediction' }).click();
}

test.describe('a joint to take apart', () => {
  test.beforeEach(async ({ page }) => {
    await page.goto('lessons/what-a-dowel-joint-is/');
  });

  test('is covered until predicted, slid home by keyboard, cut open, and taken to the bench', async ({
    page,
  }) => {
    const figure = page.locator('.joint-figure');
    const drawing = figure.getByRole('img', { name: 'The corner joint in space' });
    await expect(drawing).toBeHidden();
    await predict(page, 'Three, one for each pin');
    await expect(drawing).toBeVisible();
    await expect(drawing).toHaveAccessibleName(/3 pins.* stand between the boards/);

    const apart = figure.getByRole('slider', { name: 'Pulled apart' });
    await expect(apart).toHaveAttribute('aria-valuetext', 'pulled apart');
    await apart.focus();
    await page.keyboard.press('Home');
    await expect(apart).toHaveAttribute('aria-valuetext', 'pushed home');
    await expect(drawing).toHaveAccessibleName(/hidden in their holes/);

    await figure.locator('label').filter({ hasText: 'Cut along a pin' }).click();
    await expect(drawing).toBeHidden();
    await expect(figure.getByRole('img', { name: /^Section through the corner/ })).toBeVisible();

    // A longer pin goes into A: B is full.
    const held = figure.getByRole('row', { name: /Pin held/ }).getByRole('cell');
    const inB = (await held.nth(1).textContent())!;
    await figure.getByLabel('Pin', { exact: true }).selectOption('3/8 × 2 in');
    await expect(held.nth(0)).toContainText('1.519');
    await expect(held.nth(1)).toHaveText(inB);

    await figure.getByRole('link', { name: 'Open this joint on the bench' }).click();
    await expect(page).toHaveURL(/\/bench\/#1;.*kind=corner/);
    await expect(page.locator('.title-block')).toContainText(/3\/8 in.* × 2 in/);
  });

  test('slides home by itself, unless the reader wants no motion', async ({ page }) => {
    await predict(page, 'Six, three in the end');
    const figure = page.locator('.joint-figure');
    const apart = figure.getByRole('slider', { name: 'Pulled apart' });
    await figure.getByRole('button', { name: 'Push it home' }).click();
    await expect(apart).toHaveAttribute('aria-valuetext', 'pushed home');
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await figure.getByRole('button', { name: 'Pull it apart' }).click();
    expect(await apart.getAttribute('aria-valuetext')).toBe('pulled apart');
  });

  test('shows each of the six joints', async ({ page }) => {
    await predict(page, 'Six, three in the end');
    const figure = page.locator('.joint-figure');
    for (const kind of ['Edge', 'Tee', 'Frame', 'Miter', 'Leg']) {
      await figure.locator('label').filter({ hasText: kind }).click();
      await expect(
        figure.getByRole('img', { name: `The ${kind.toLowerCase()} joint in space` }),
      ).toBeVisible();
    }
    await expect(figure.locator('figcaption')).toContainText('2 pins in each apron');
  });
});

test.describe('a pair drilled from its marks, or not', () => {
  test.beforeEach(async ({ page }) => {
    await page.goto('lessons/faces-edges-ends-and-marks/');
    await predict(page, 'Off by 1/16 in');
  });

  const choose = (page: Page, group: string, label: string) =>
    page.getByRole('group', { name: group }).locator('label').filter({ hasText: label }).click();

  test('turned over, B steps by twice the guide’s error; turned over too, A takes it back', async ({
    page,
  }) => {
    const figure = page.locator('.marks-figure');
    const caption = figure.locator('figcaption');
    await expect(caption).toContainText('their faces flush and their ends in line');
    await choose(page, 'B: the guide lies against the', 'Other face');
    await expect(caption).toContainText('A step of 1/16 in');
    const across = figure.getByRole('row', { name: /^The row/ }).getByRole('cell');
    await expect(across).toHaveText([/13\/32 in/, /11\/32 in/, /^1\/16 in/]);
    await expect(figure.locator('.caution')).toContainText('What made it');
    await choose(page, 'A: the guide lies against the', 'Other face');
    await expect(caption).toContainText('their faces flush');
    await expect(figure.locator('.caution')).toHaveCount(0);
  });

  test('hooked on the other end, B slides by what it is longer, and by nothing where it is not', async ({
    page,
  }) => {
    const caption = page.locator('.marks-figure figcaption');
    await choose(page, 'B: the rule is hooked on the', 'Other end');
    await expect(caption).toContainText(/1\/16 in.* out of place along the joint/);
    await page.getByRole('textbox', { name: 'B is longer than A by' }).fill('0');
    await expect(caption).toContainText('their ends in line');
  });
});
