/** What a learner has done is kept on the machine, shared, carried along, and forgotten on demand. */
import { readFileSync } from 'node:fs';
import { type BrowserContext, expect, type Page, test } from 'playwright/test';

const LESSON = 'lessons/splitting-the-depth/';
const STATE = /^Self-check: /;

test.use({ actionTimeout: 10_000 });

async function open(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(path);
  return page;
}

/** Answers one of two questions of the lesson's self-check right. */
async function answerRight(page: Page, which: 'stop' | 'pin'): Promise<void> {
  const words = which === 'stop' ? 'How far from the collar' : 'Who holds how much now?';
  const form = page.locator('form.question').filter({ hasText: words });
  await form.scrollIntoViewIfNeeded();
  await expect(form.getByRole('button').first()).toBeEnabled();
  if (which === 'stop') await form.getByRole('textbox').fill('40.8 mm');
  else await form.getByRole('radio', { name: /^A ≈1 33\/64 in ?, B ≈31\/64 in$/ }).check();
  await form.getByRole('button', { name: 'Check' }).click();
  await expect(form.getByRole('status').first()).toContainText('Right.');
}

/** How far the lesson says that the learner is. */
const state = (page: Page) => page.getByText(STATE);

/** The line of the contents about the lesson. */
const entry = (page: Page) =>
  page.getByRole('listitem').filter({ hasText: 'Splitting the depth' }).last();

async function nameBench(page: Page, name: string): Promise<void> {
  await page.getByRole('textbox', { name: /name/i }).fill(name);
  await page.getByRole('button', { name: 'Use this name' }).click();
  await expect(page.getByRole('radio', { name, exact: false, checked: true })).toBeVisible();
}

/** Chooses a file of work with this text. */
async function bring(page: Page, text: string): Promise<void> {
  const field = page.getByLabel('Bring work from a file');
  await expect(field).toBeEnabled();
  const file = { name: 'work.json', mimeType: 'application/json', buffer: Buffer.from(text) };
  await field.setInputFiles(file);
}

/** How many entries the browser's databases hold. */
function entriesKept(page: Page): Promise<number> {
  return page.evaluate(async () => {
    let count = 0;
    for (const { name } of await indexedDB.databases()) {
      const opened = indexedDB.open(name!);
      await new Promise((resolve) => (opened.onsuccess = resolve));
      const counted = opened.result.transaction('events').objectStore('events').count();
      await new Promise((resolve) => (counted.onsuccess = resolve));
      count += counted.result;
      opened.result.close();
    }
    return count;
  });
}

test('an answer is there after a reload, in the lesson and in the contents', async ({ page }) => {
  await page.goto('');
  await expect(entry(page)).toContainText('Not begun');
  await expect(page.getByRole('heading', { name: 'Begin here' })).toBeVisible();

  await page.goto(LESSON);
  await expect(state(page)).toHaveText('Self-check: Begun');
  await answerRight(page, 'stop');
  await expect(state(page)).toHaveText('Self-check: 1 of 9 right');
  await page.reload();
  await expect(state(page)).toHaveText('Self-check: 1 of 9 right');

  // Even where the browser has lost who is learning.
  await page.evaluate(() => localStorage.clear());
  await page.goto('');
  await expect(entry(page)).toContainText('1 of 9 right');
  const goOn = page.getByRole('region', { name: 'Go on where you stopped' });
  await goOn.getByRole('link', { name: /Splitting the depth/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Splitting the depth');
});

test('what was missed is due in the contents, what was right comes due later', async ({ page }) => {
  await page.clock.install({ time: new Date('2026-11-02T09:00:00') });
  await page.goto(LESSON);
  await answerRight(page, 'stop');
  const pin = page.locator('form.question').filter({ hasText: 'Who holds how much now?' });
  await pin.scrollIntoViewIfNeeded();
  await pin.getByRole('radio', { name: /^A 1 in ?, B 1 in$/ }).check();
  await pin.getByRole('button', { name: 'Check' }).click();
  await expect(pin.getByRole('status').first()).toContainText('Not yet.');

  const due = page.locator('.go-on [data-due]');
  await page.goto('');
  await expect(due).toContainText('One question is due that you missed.');
  await page.clock.setFixedTime(new Date('2026-11-03T09:00:00'));
  await page.reload();
  await expect(due).toContainText('2 questions are due, one of them missed before.');
  await due.getByRole('link', { name: 'Practice' }).click();
  await expect(page.getByRole('heading', { name: '2 questions are due' })).toBeVisible();
});

test('two tabs lose nothing of each other', async ({ context }) => {
  const one = await open(context, LESSON);
  const other = await open(context, LESSON);
  const contents = await open(context, '');
  await answerRight(one, 'stop');
  await answerRight(other, 'pin');
  for (const tab of [one, other]) await expect(state(tab)).toHaveText('Self-check: 2 of 9 right');
  await expect(entry(contents)).toContainText('2 of 9 right');
  await one.reload();
  await expect(state(one)).toHaveText('Self-check: 2 of 9 right');
});

test('where the browser keeps nothing, the page says so and goes on', async ({ page }) => {
  await page.addInitScript(() => {
    const denied = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    Object.defineProperty(window, 'indexedDB', { get: denied });
    Object.defineProperty(window, 'localStorage', { get: denied });
  });
  await page.goto(LESSON);
  await expect(page.getByText('This browser keeps nothing')).toBeVisible();
  await answerRight(page, 'stop');
  await expect(state(page)).toHaveText('Self-check: 1 of 9 right');
  await page.reload();
  await expect(state(page)).toHaveText('Self-check: Begun');
});

test('what a full disk did not take is tried again with the next answer', async ({ page }) => {
  await page.goto(LESSON);
  await expect(state(page)).toHaveText('Self-check: Begun');
  await page.evaluate(() => {
    const { add } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { add }) });
  });
  await answerRight(page, 'stop');
  await expect(page.getByText('This machine has no room left.')).toBeVisible();
  await expect(state(page)).toHaveText('Self-check: 1 of 9 right');
  await page.evaluate(() => (window as unknown as { makeRoom: () => void }).makeRoom());
  await answerRight(page, 'pin');
  await expect(page.getByText('This machine has no room left.')).toBeHidden();
  await page.reload();
  await expect(state(page)).toHaveText('Self-check: 2 of 9 right');
});

test('saved to a file, forgotten, and brought back', async ({ page }) => {
  await page.goto(LESSON);
  await page.locator('label').filter({ hasText: /^mm$/ }).click();
  await answerRight(page, 'stop');
  // What other pages keep, and what a site in a folder of this one keeps.
  await page.evaluate(() => {
    const { base } = document.documentElement.dataset;
    localStorage.setItem(`${base}assignment/7K2M9QXB`, '[]');
    localStorage.setItem(`${base}assignment/7K2M9QXC`, '[]');
    localStorage.setItem(`${base}my-tools`, '{}');
    localStorage.setItem(`${base}other-site/unit`, 'in');
  });
  await page.goto('your-work/');
  await nameBench(page, 'Bench 3');
  const row = page.getByRole('row', { name: /Splitting the depth/ });
  await expect(row).toContainText('1 of 9 right');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the work of Bench 3' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('work-bench-3.json');
  const text = readFileSync(await file.path(), 'utf8');

  expect(await entriesKept(page)).toBe(3);
  await page.getByRole('button', { name: 'Forget everything …' }).click();
  await expect(page.getByRole('button', { name: 'Keep it' })).toBeFocused();
  await page.getByRole('button', { name: 'Forget everything', exact: true }).click();
  const deleted = page.getByText('Deleted:').locator('..');
  await expect(deleted).toContainText('Lessons, answers and sign-offs: 3 entries');
  await expect(deleted).toContainText('Inches or millimeters');
  await expect(deleted).toContainText('Who is learning here');
  await expect(deleted).toContainText('Answers to assignments');
  await expect(deleted).toContainText('Your tools as measured');
  await expect(row).toContainText('Not begun');
  expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([
    expect.stringContaining('other-site/unit'),
  ]);
  expect(await entriesKept(page)).toBe(0);

  await bring(page, text.slice(0, 200));
  await expect(page.getByText('it is cut off or damaged')).toBeVisible();
  await bring(page, text.replace('"version":1', '"version":7'));
  await expect(page.getByText('2 entries to add.')).toBeVisible();
  await expect(page.getByText('one entry, of a newer edition of this workbook')).toBeVisible();
  await page.getByRole('button', { name: 'Leave it' }).click();
  await expect(row).toContainText('Not begun');

  await bring(page, text);
  await expect(page.getByText('Bench 3: one answer')).toBeVisible();
  await page.getByRole('button', { name: 'Add them' }).click();
  await expect(row).toContainText('1 of 9 right');
  await bring(page, text);
  await expect(page.getByText('nothing new. 3 entries are here already.')).toBeVisible();
  await page.goto(LESSON);
  await expect(state(page)).toHaveText('Self-check: 1 of 9 right');
  await expect(page.locator('.lesson-progress')).toContainText('Bench 3');
});

test('somebody else sits down, and each finds their own work', async ({ context }) => {
  const page = await open(context, LESSON);
  await answerRight(page, 'stop');
  await page.goto('your-work/');
  await nameBench(page, 'Bench 3');
  const lesson = await open(context, LESSON);
  await expect(state(lesson)).toHaveText('Self-check: 1 of 9 right');

  await page.getByRole('button', { name: 'Somebody else sits down here' }).click();
  await nameBench(page, 'Bench 4');
  const row = page.getByRole('row', { name: /Splitting the depth/ });
  await expect(row).toContainText('Not begun');
  await expect(state(lesson)).toHaveText('Self-check: Not begun');
  await page.goto('');
  await expect(page.getByRole('heading', { name: 'Begin here, Bench 4' })).toBeVisible();

  await page.goto('your-work/');
  await page.getByRole('radio', { name: 'Bench 3' }).check();
  await expect(row).toContainText('1 of 9 right');
  await expect(state(lesson)).toHaveText('Self-check: 1 of 9 right');
  await expect(page.getByRole('button', { name: 'Save everybody’s work' })).toBeVisible();
});

test('a lesson that was finished says so, and the contents lead on to the next', async ({
  page,
}) => {
  await page.goto(LESSON);
  const questions = await page.locator('.lesson-progress').getAttribute('data-questions');
  const events = questions!.split(' ').map((question, i) => ({
    version: 1,
    id: i.toString(16).padStart(24, '0'),
    learner: 'c'.repeat(24),
    at: Date.now() - 1000 + i,
    calc: 1,
    bank: 1,
    kind: 'answer',
    question,
    given: { kind: 'one', choices: ['half'] },
    right: true,
    mistakes: i === 0 ? ['forgot-the-point'] : [],
  }));
  await page.goto('your-work/');
  await bring(page, JSON.stringify({ progress: 1, events }));
  await page.getByRole('button', { name: 'Add them' }).click();
  // The machine's own learner had opened the lesson; who brought work is chosen by hand.
  await page.getByRole('radio', { name: /9 answers/ }).check();
  await expect(page.getByText('Forgot the point: once')).toBeVisible();
  await page.goto('');
  await expect(entry(page)).toContainText('Finished');
  const goOn = page.getByRole('region', { name: 'Go on where you stopped' });
  await expect(goOn).toContainText('Splitting the depth is finished.');
  await expect(goOn.getByRole('link')).not.toHaveText(/Splitting the depth/);
});

test('a sign-off is kept with its bench and day, and can be taken back', async ({ page }) => {
  await page.goto(LESSON);
  const tick = page.getByRole('checkbox', { name: 'Whoever watched ticks this' });
  const bench = page.getByRole('textbox', { name: 'Bench that is signed off' });
  await bench.fill('Bench 3');
  await tick.check();
  await expect(bench).toBeDisabled();
  const today = new Date().toLocaleDateString('en-US', { dateStyle: 'medium' });
  await expect(state(page)).toHaveText(`Self-check: Begun. Signed off ${today}`);
  await page.reload();
  await expect(tick).toBeChecked();
  await expect(bench).toHaveValue('Bench 3');
  await page.goto('');
  await expect(entry(page)).toContainText('Begun, signed off');
  await page.goto(LESSON);
  await tick.uncheck();
  await expect(state(page)).toHaveText('Self-check: Begun');
  await expect(bench).toBeEnabled();
});
