/** Two thousand hand-ins marked in the browser, some of them altered, without holding it up. */
import { writeFileSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { expect, test } from 'playwright/test';
import { type HandIn, writeHandIn } from '../../src/class/hand-in/handIn.ts';
import { misconceptions } from '../practice/contentFiles.ts';
import { handInOf, stopAssignment } from '../support/classOf.ts';

const STUDENTS = 2000;
/** Frames that are drawn at the least while the files are marked: a frozen page draws none. */
const FEWEST_FRAMES = 20;

const assignment = { ...stopAssignment, count: 5 };
const handIn = (student: string, skill = 0.6) =>
  handInOf(assignment, student, skill, misconceptions);

/** A file that was changed with an editor: its code stays as it was. */
function edited(original: HandIn, change: Partial<HandIn>): string {
  return JSON.stringify({ ...(JSON.parse(writeHandIn(original)) as object), ...change });
}

test('marks 2,000 hand-ins, finds the altered ones among them, and goes on drawing frames', async ({
  page,
}, info) => {
  test.setTimeout(180_000);
  const files = new Map<string, string>();
  for (let i = 1; i <= STUDENTS; i++) {
    files.set(`week 3/hand-in-bench-${i}.json`, writeHandIn(handIn(`Bench ${i}`, (i % 10) / 10)));
  }
  const own = handIn('Bench 17', 0.7);
  const altered: Record<string, string> = {
    'score.json': writeHandIn({ ...handIn('Score', 0.2), right: 5 }),
    'edited-score.json': edited(handIn('Edited', 0.2), { right: 5 }),
    'seed.json': writeHandIn({ ...handIn('Seed'), seed: 12345 }),
    'answers.json': edited(handIn('Answers', 0), { answers: handIn('Answers', 1).answers }),
    'copy.json': writeHandIn({ ...own, student: 'Copy' }),
    'again.json': writeHandIn({ ...own, handedIn: '2026-11-04T10:00:00Z' }),
    'other.json': writeHandIn(handInOf({ ...assignment, limits: {} }, 'Other', 1, misconceptions)),
    'photo.json': 'not a hand-in',
  };
  for (const [name, text] of Object.entries(altered)) files.set(name, text);
  const archive = zipSync(
    Object.fromEntries([...files].map(([name, text]) => [name, strToU8(text)])),
    { level: 1 },
  );

  const path = info.outputPath('class.zip');
  writeFileSync(path, archive);

  await page.goto('teach/mark/');
  await expect(page.getByLabel('Choose files')).toBeEnabled();
  await page.evaluate(() => {
    const gaps = { longest: 0, frames: 0 };
    let before = performance.now();
    requestAnimationFrame(function frame(now) {
      gaps.longest = Math.max(gaps.longest, now - before);
      gaps.frames += 1;
      before = now;
      requestAnimationFrame(frame);
    });
    Object.assign(window, { gaps });
  });
  const scripts: string[] = [];
  page.on('request', (request) => scripts.push(request.url()));
  const started = Date.now();
  await page.getByLabel('Choose files').setInputFiles(path);
  await expect(page.getByRole('progressbar')).toBeVisible();
  await expect(
    page.getByText(`${STUDENTS + 7} hand-ins, ${STUDENTS + 3} of them count`),
  ).toBeVisible({
    timeout: 120_000,
  });
  // It was marked by the worker: the page itself never loaded what marks.
  expect(scripts.filter((address) => /markFiles/.test(address))).toEqual([]);
  const seconds = (Date.now() - started) / 1000;
  const { longest, frames } = await page.evaluate(
    () => (window as unknown as { gaps: { longest: number; frames: number } }).gaps,
  );
  process.stdout.write(
    `\n  ${STUDENTS} hand-ins of ${assignment.count} questions marked in ${seconds.toFixed(1)} s;` +
      ` ${frames} frames, the longest gap between two ${longest.toFixed(0)} ms\n`,
  );
  expect(frames).toBeGreaterThan(FEWEST_FRAMES);

  await expect(page.getByText('photo.json')).toBeVisible();
  await page.getByLabel('Only those with a remark').check();
  const says = (name: string) => page.getByRole('row', { name: new RegExp(`^${name} `) });
  await expect(says('Score')).toContainText('It says 5 right');
  await expect(says('Edited')).toContainText('changed after it was saved');
  await expect(says('Seed')).toContainText('does not count');
  await expect(says('Answers')).toContainText('changed after it was saved');
  await expect(says('Copy')).toContainText('same answers to the same questions');
  await expect(says('Other')).toContainText('another assignment');
  await expect(page.getByRole('row', { name: /^Bench 17 does not count/ })).toContainText(
    'handed in again later',
  );
  await expect(page.getByRole('row')).toHaveCount(8); // these seven and the head
});
