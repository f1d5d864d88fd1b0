/** Tools as measured on this machine, and from a real dry fit to its correction. */
import { type Page, expect, test } from 'playwright/test';
import { site } from '../support/site.ts';

const measure = `${site.base}/measure/`;
const bench = `${site.base}/bench/`;
const key = `${site.base}/my-tools`;

test.use({ locale: 'en-US' });

const field = (page: Page, label: string) =>
  page.getByRole('textbox', { name: label, exact: true });
const radio = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });
const says = (page: Page) => page.getByRole('region', { name: 'What the readings say' });

async function open(page: Page, address = measure): Promise<void> {
  await page.goto(address);
  await expect(page.locator('astro-island').first()).not.toHaveAttribute('ssr');
}

/** Pastes into the field that has the focus. */
async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((list) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', list);
    const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
    document.activeElement?.dispatchEvent(event);
  }, text);
}

test.describe('my tools', () => {
  test('take readings, show mean and spread, and are there after a reload', async ({ page }) => {
    await open(page);
    await field(page, 'Pin 1').fill('9.4 mm');
    await field(page, 'Pin 2').fill('9.5 mm');
    await field(page, 'Pin 3').fill('9.6 mm');
    await radio(page, 'mm').check();
    await expect(says(page)).toContainText('9.5 mm');
    await expect(says(page)).toContainText('0.1 mm');
    await field(page, 'Diameter of a hole that it makes').fill('9.62');
    // 9.6 in 9.62 leaves too little for glue, 9.4 too much; 9.5 is good.
    await expect(says(page)).toContainText('2 of 3');
    await page.reload();
    await expect(field(page, 'Pin 2')).toHaveValue('9.5 mm');
    await expect(field(page, 'Diameter of a hole that it makes')).toHaveValue('9.62 mm');
    await expect(says(page)).toContainText('2 of 3');
  });

  test('take a pasted list, and keep what can’t be read as it was', async ({ page }) => {
    await open(page);
    await field(page, 'Pin 1').focus();
    await paste(page, '0.372 0.375 nine 0.371 0.374 0.370');
    await expect(field(page, 'Pin 6')).toHaveValue('0.37 in');
    await expect(field(page, 'Pin 3')).toHaveValue('nine');
    await expect(page.getByText(/“nine” is not a length/)).toBeVisible();
    await expect(page.getByText('5 readings pasted; 1 could not be read.')).toBeVisible();
    await field(page, 'Pin 3').fill('0.373');
    await expect(says(page).getByRole('definition').first()).toHaveText('6');
  });

  test('find the guide’s offset and its way, by keyboard', async ({ page }) => {
    await open(page);
    await field(page, 'Distance between the two holes').focus();
    await page.keyboard.type('1/16');
    await expect(page.getByText(/off the middle, away from/)).toBeVisible();
    await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowRight');
    await expect(page.getByText(/off the middle, toward/)).toBeVisible();
    await expect(page.getByRole('img', { name: /turn-over test/ }).first()).toHaveAccessibleName(
      /1\/32 inch off the middle: toward/,
    );
  });

  test('serve on the bench', async ({ page }) => {
    await open(page);
    await field(page, 'Length of the bushing').fill('1 1/4');
    await field(page, 'Distance between the two holes').fill('1/16');
    await field(page, 'Diameter of a hole that it makes').fill('9.6 mm');
    await radio(page, 'Brad').check();
    await field(page, 'How far the spur stands out').fill('3/32');
    await open(page, bench);
    await page.getByText('Drilling guide', { exact: true }).click();
    await page.getByRole('button', { name: 'Use my tools' }).click();
    await expect(field(page, 'Length of the bushing')).toHaveValue('1 1/4 in');
    await expect(field(page, 'Off the middle (offset)')).toHaveValue('1/32 in');
    await page.getByText('Bit and depth', { exact: true }).click();
    await expect(field(page, 'Spur, measured')).toHaveValue('3/32 in');
    await expect(field(page, 'Diameter of the bit')).toHaveValue('≈3/8 in');
    await expect.poll(() => new URL(page.url()).hash).toContain('9.6');
  });

  test('are offered to be measured where there are none', async ({ page }) => {
    await open(page, bench);
    await page.getByText('Drilling guide', { exact: true }).click();
    await expect(page.getByRole('button', { name: 'Use my tools' })).toHaveCount(0);
    await page.getByRole('link', { name: 'Measure your own guide and bit' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Measure and correct');
  });

  test('can be several sets, and are forgotten when asked', async ({ page }) => {
    await open(page);
    await field(page, 'Name of this set').fill('School guide');
    await field(page, 'Length of the bushing').fill('1');
    await page.getByRole('button', { name: 'Another set' }).click();
    await expect(field(page, 'Length of the bushing')).toHaveValue('');
    await field(page, 'Length of the bushing').fill('3/4');
    await page.getByLabel('Set of tools').selectOption({ label: 'School guide' });
    await expect(field(page, 'Length of the bushing')).toHaveValue('1 in');
    await page.getByRole('button', { name: 'Forget my tools' }).click();
    await expect(field(page, 'Length of the bushing')).toHaveValue('');
    expect(await page.evaluate((name) => localStorage.getItem(name), key)).toBeNull();
  });

  test('keep in step with another tab', async ({ page, context }) => {
    await open(page);
    const other = await context.newPage();
    await open(other);
    await field(other, 'Length of the bushing').fill('7/8');
    await expect(field(page, 'Length of the bushing')).toHaveValue('7/8 in');
  });

  for (const [what, kept] of [
    ['damaged', '{"version":1,"sets":[{"na'],
    ['someone else’s', '[1,2,3]'],
    ['odd in its fields', '{"version":1,"inUse":9,"sets":[{"name":7,"guide":{"bushing":"x"}}]}'],
  ] as const) {
    test(`start anew where what is kept is ${what}`, async ({ page }) => {
      await page.addInitScript(
        ([name, text]) => {
          if (sessionStorage.getItem('planted')) return;
          sessionStorage.setItem('planted', 'yes');
          localStorage.setItem(name!, text!);
        },
        [key, kept],
      );
      await open(page);
      await field(page, 'Length of the bushing').fill('1');
      await page.reload();
      await expect(field(page, 'Length of the bushing')).toHaveValue('1 in');
    });
  }

  test('leave alone what a later version kept, and say so', async ({ page }) => {
    const later = '{"version":2,"tools":"new"}';
    await page.addInitScript(([name, text]) => localStorage.setItem(name!, text!), [key, later]);
    await open(page);
    await field(page, 'Length of the bushing').fill('1');
    await expect(page.getByRole('alert')).toContainText('later version');
    expect(await page.evaluate((name) => localStorage.getItem(name), key)).toBe(later);
  });

  for (const [why, breakIt] of [
    [
      'storage is closed',
      () =>
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('denied', 'SecurityError');
          },
        }),
    ],
    [
      'the disk is full',
      () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      },
    ],
  ] as const) {
    test(`serve the page where ${why}, and say that they are not kept`, async ({ page }) => {
      await page.addInitScript(breakIt);
      await open(page);
      await field(page, 'Pin 1').fill('0.372');
      await expect(says(page)).toContainText('0.372 in');
      await expect(page.getByRole('alert')).toContainText('keeps nothing');
    });
  }
});

test.describe('what went wrong', () => {
  const fits = (page: Page) => page.getByRole('region', { name: 'What fits' });
  const causes = (page: Page) => fits(page).getByRole('heading', { level: 4 });

  test('leads from a gap to the bushing that was left out, and to the right stop', async ({
    page,
  }) => {
    await open(page);
    await expect(fits(page)).toContainText('Tick what the dry fit shows');
    await page.getByLabel('The joint stands open: a gap').check();
    await field(page, 'How wide the gap is').fill('1 3/8');
    await expect(causes(page).first()).toHaveText('The bushing was left out of the stop');
    await expect(fits(page)).toContainText('Set the stop at ≈2 9/64 in for board A', {
      useInnerText: true,
    });
    await expect(fits(page)).toContainText('move the collar 1 in farther from the tip', {
      useInnerText: true,
    });
    await radio(page, 'mm').check();
    await expect(fits(page)).toContainText('≈54.5 mm for board A', { useInnerText: true });
  });

  test('tells an end out of square from drilling, where one end stands open', async ({ page }) => {
    await open(page);
    await page.getByLabel('The joint stands open: a gap').check();
    await radio(page, 'At the other end').check();
    await field(page, 'How wide the gap is').fill('1/32');
    await page.getByText('Depths, if you measured them').click();
    await field(page, 'Depth of its hole in A').fill('1 9/64');
    await field(page, 'Depth of its hole in B').fill('39/64');
    await expect(causes(page).first()).toHaveText('An end or edge out of square');
    await expect(fits(page)).toContainText('Take the pins out and put the boards together');
  });

  test('counts the pins as they were measured, where they bind', async ({ page }) => {
    await open(page);
    await radio(page, 'Bind').check();
    await expect(page.getByText('Measure a handful of your pins')).toBeVisible();
    await expect(causes(page).first()).not.toHaveText('Swollen or thick pins');
    await field(page, 'Pin 1').fill('0.379');
    await field(page, 'Pin 2').fill('0.381');
    await field(page, 'Pin 2').blur();
    await expect(page.getByText(/Your pins as measured count: 2/)).toContainText('0.38 in', {
      useInnerText: true,
    });
    await expect(causes(page).first()).toHaveText('Swollen or thick pins');
    await expect(fits(page)).toContainText('By your 2 readings they are', { useInnerText: true });
  });

  test('tries the mistakes in a worker of the site; without workers it answers all the same', async ({
    page,
    context,
  }) => {
    await open(page);
    expect(page.workers()).toHaveLength(0);
    await page.getByLabel('The joint stands open: a gap').check();
    await expect.poll(() => page.workers().length).toBe(1);
    const likeliest = await causes(page).first().innerText();

    const other = await context.newPage();
    await other.addInitScript(() => {
      Object.defineProperty(window, 'Worker', { value: undefined });
    });
    await open(other);
    await other.getByLabel('The joint stands open: a gap').check();
    await expect(causes(other).first()).toHaveText(likeliest);
    expect(other.workers()).toHaveLength(0);
  });

  test('takes the joint from a link, and refuses a damaged one in a sentence', async ({ page }) => {
    await open(page, `${measure}#1;show=mm;kind=edge;system=mm;a=18x120x500;b=18x120x500`);
    await expect(radio(page, 'Edge')).toBeChecked();
    await open(page, `${measure}?again#1;kind=edge;a=oops`);
    await expect(page.getByRole('alert')).toContainText('This link can’t be read');
  });

  test('takes the joint from the bench', async ({ page }) => {
    await open(page, bench);
    await radio(page, 'Frame').check();
    await page.getByRole('link', { name: /Find what went wrong/ }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Measure and correct');
    await expect(radio(page, 'Frame')).toBeChecked();
  });

  test('keeps a size that can’t be read, and says so', async ({ page }) => {
    await open(page);
    await page.getByLabel('A step: one face stands proud').check();
    const size = field(page, 'How high the step is');
    await size.fill('a hair');
    await size.blur();
    await expect(size).toHaveValue('a hair');
    await expect(page.getByText(/“a hair” is not a length/)).toBeVisible();
  });
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('the page tells what it does and works an example, with nothing dead on it', async ({
    page,
  }) => {
    await page.goto(measure);
    await expect(page.getByText('the guide’s offset is')).toBeVisible();
    await expect(page.getByText('The bushing was left out of the stop').first()).toBeVisible();
    await expect(
      page.locator('main :is(input, button, select)').filter({ visible: true }),
    ).toHaveCount(0);
  });
});

test('the trial run does its job with the tools that were measured', async ({ page }) => {
  await open(page);
  await field(page, 'Length of the bushing').fill('1 1/4');
  await field(page, 'Length of the bushing').blur();
  await open(page, `${site.base}/trial/`);
  const card = page.getByRole('region', { name: 'Job card' });
  await expect(card).toContainText('The shop’s guide');
  await page.getByRole('checkbox', { name: /my own guide/ }).check();
  await expect(card).toContainText('Your guide');
  await expect(card).toContainText('1 1/4 in');
  await page.getByRole('checkbox', { name: /my own guide/ }).uncheck();
  await expect(card).toContainText('3/4 in');
});
