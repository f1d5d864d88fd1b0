/** From an instructor's choice, through a student's phone, to the mark sheet. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import jsQR from 'jsqr';
import { type Locator, type Page, expect, test } from 'playwright/test';
import type { Assignment } from '../../src/class/assignment/assignment.ts';
import { decodeAssignment, encodeAssignment } from '../../src/class/assignment/assignmentLink.ts';
import { seedOf } from '../../src/class/assignment/student.ts';
import { questionsOf } from '../../src/class/assignment/studentQuestions.ts';
import { readHandIn } from '../../src/class/hand-in/readHandIn.ts';
import type { Question } from '../../src/practice/questions/types.ts';
import { misconceptions } from '../practice/contentFiles.ts';
import { handInOf, stopAssignment } from '../support/classOf.ts';
import { writeHandIn } from '../../src/class/hand-in/handIn.ts';

const phone = { width: 360, height: 740 };

/** What a student is asked, as the page works it out for itself. */
function questionsFor(assignment: Assignment, student: string): readonly Question[] {
  return [...questionsOf(assignment, seedOf(assignment, student), misconceptions)];
}

/** Answers the question that is shown, right or wrong, and goes on. */
async function answer(page: Page, question: Question, right: boolean): Promise<void> {
  switch (question.kind) {
    case 'length':
    case 'rule': {
      const length = right ? question.right : question.mistakes[0]!.length;
      await page.getByRole('textbox', { name: 'Your answer' }).fill(`${length.toFixed(2)} mm`);
      break;
    }
    case 'order':
      break; // as it is shown, which is not the right order
    default: {
      const choice = question.choices.findIndex((each) => each.right === right);
      await page.locator('.choice').nth(choice).locator('input').check();
    }
  }
}

/** Drops a file on the page's file input. */
async function choose(page: Page, name: string, text: string | Buffer): Promise<void> {
  await page
    .getByLabel('Choose files')
    .setInputFiles([{ name, mimeType: 'application/json', buffer: Buffer.from(text) }]);
}

/** What a code says: its modules are read from the drawing and handed to a decoder, magnified. */
async function decoded(code: Locator): Promise<string | undefined> {
  const size = Number((await code.getAttribute('viewBox'))!.split(' ')[2]);
  const path = (await code.locator('path').getAttribute('d'))!;
  const scale = 4;
  const side = size * scale;
  const pixels = new Uint8ClampedArray(4 * side * side).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) {
    for (let i = 0; i < scale * scale; i++) {
      const column = Number(x) * scale + (i % scale);
      const row = Number(y) * scale + Math.floor(i / scale);
      pixels.fill(0, 4 * (row * side + column), 4 * (row * side + column) + 3);
    }
  }
  return jsQR(pixels, side, side)?.data;
}

test('an instructor assigns, a student does it on a phone and hands in, the instructor marks', async ({
  page,
  browser,
}) => {
  test.slow(); // a whole class period in one test

  // The instructor chooses.
  await page.goto('teach/assign/');
  await page.getByRole('checkbox', { name: '2.3 Setting the stop' }).check();
  await page.getByRole('checkbox', { name: '3.4 Frame joint' }).check();
  for (const name of ['Miter', 'Leg']) {
    await page.getByRole('checkbox', { name, exact: true }).uncheck();
  }
  await page.getByLabel('Thicknesses of your boards').fill('3/4, 7/8');
  await page.getByLabel('Title').fill('Stops, week 3');
  await page.getByRole('textbox', { name: 'Questions for each student' }).fill('5');
  await page.getByRole('radio', { name: 'at the end' }).check();
  const link = page.getByRole('textbox', { name: 'Link', exact: true });
  await expect(link).toHaveValue(/#1;.*;sum=\w{4}$/);
  const address = await link.inputValue();
  const read = decodeAssignment(new URL(address).hash);
  if (!read.ok) throw new Error(read.reason);
  const { assignment } = read;
  expect(assignment).toMatchObject({ title: 'Stops, week 3', count: 5, feedback: 'end' });
  expect(assignment.limits.thicknesses).toEqual([19.05, 22.225]);

  // From this machine's own address there is no code; for the school's there is.
  await expect(page.getByRole('img', { name: /Code of the link/ })).toHaveCount(0);
  await page.getByLabel('Address where your class opens').fill('school.example/woodshop');
  const code = page.getByRole('img', { name: /Code of the link/ });
  expect(await decoded(code)).toBe(
    `https://school.example/woodshop/assignment/#${encodeAssignment(assignment)}`,
  );
  await page.getByText('What two students would be asked').click();
  await expect(
    page.getByRole('region', { name: 'Questions of Bench 2' }).getByRole('listitem'),
  ).toHaveCount(5);
  // It is there after a reload.
  await page.reload();
  await expect(page.getByLabel('Title')).toHaveValue('Stops, week 3');

  // The student opens it on a phone.
  const context = await browser.newContext({ viewport: phone, acceptDownloads: true });
  const student = await context.newPage();
  await student.goto(address);
  await student.getByRole('button', { name: 'Begin' }).click();
  await expect(student.getByText('Type the name of your bench')).toBeVisible();
  await student.getByLabel('Name of your bench').fill('  bench 7 ');
  await student.getByRole('button', { name: 'Begin' }).click();
  const questions = questionsFor(assignment, 'Bench 7');
  await expect(student.getByRole('heading', { name: 'Question 1 of 5' })).toBeVisible();
  await answer(student, questions[0]!, false);
  await student.getByRole('button', { name: 'Keep and go on' }).click();
  await answer(student, questions[1]!, true);
  await student.getByRole('button', { name: 'Keep and go on' }).click();

  // The phone is put away, and taken out again.
  await student.reload();
  await expect(student.getByLabel('Name of your bench')).toHaveValue('bench 7');
  await student.getByRole('button', { name: 'Go on' }).click();
  await expect(student.getByRole('heading', { name: 'Question 3 of 5' })).toBeVisible();

  // Back to the first, which is put right; then forward over the others.
  await student.getByRole('button', { name: 'Question 1, answered' }).click();
  await answer(student, questions[0]!, true);
  await student.getByRole('button', { name: 'Forward' }).click();
  for (const [i, question] of questions.entries()) {
    if (i < 2) continue;
    await student.getByRole('button', { name: `Question ${i + 1}` }).click();
    await answer(student, question, i === 2);
    await student.getByRole('button', { name: 'Keep and go on' }).click();
  }
  const needed = await student.evaluate(() => document.documentElement.scrollWidth);
  expect(needed).toBeLessThanOrEqual(phone.width);
  await expect(student.getByText('All 5 questions are answered.')).toBeVisible();
  await student.getByRole('button', { name: 'Hand in', exact: true }).last().click();
  await expect(student.getByText('3 of 5 right.')).toBeVisible();
  const [download] = await Promise.all([
    student.waitForEvent('download'),
    student.getByRole('button', { name: 'Save the hand-in file' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('hand-in-bench-7.json');
  const file = readFileSync(await download.path(), 'utf8');
  const handIn = readHandIn(file);
  if (!handIn.ok) throw new Error(handIn.reason);
  expect(handIn.edited).toBe(false);
  expect(handIn.handIn.answers[0]!.tries).toBe(2);
  await expect(
    student.getByText(`${handIn.code.slice(0, 3)} ${handIn.code.slice(3)}`),
  ).toBeVisible();
  // What was missed can be looked at, and not changed.
  await student.getByRole('button', { name: 'Question 5, not right' }).click();
  await expect(student.getByText('Right:').first()).toBeVisible();
  await expect(student.getByRole('button', { name: /Keep|Check/ })).toHaveCount(0);
  await context.close();

  // The instructor marks.
  await page.goto('teach/mark/');
  await choose(page, download.suggestedFilename(), file);
  const row = page.getByRole('row', { name: /bench 7/ });
  await expect(row.getByRole('cell').nth(0)).toHaveText('3');
  await expect(row.getByRole('cell').nth(1)).toContainText('60');
  await expect(row).toContainText(handIn.code);
  await row.getByRole('button', { name: 'Judge the joint of bench 7' }).click();
  const judge = page.getByRole('dialog', { name: 'bench 7 at the bench' });
  for (const criterion of ['Gap', 'Step', 'Wood left', 'Process']) {
    const level = criterion === 'Gap' ? /^2 / : /^3 /;
    await judge.getByRole('group', { name: criterion }).getByRole('radio', { name: level }).check();
  }
  await expect(judge.getByText('11 of 12 points.')).toBeVisible();
  await judge.getByRole('button', { name: 'Done' }).click();
  await page.getByLabel('Identifiers').fill('Bench 7, =20417');
  await page.getByLabel('Name of the first column').fill('SIS ID');
  const [sheet] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the mark sheet (CSV)' }).click(),
  ]);
  const [head, line]: string[][] = parse(readFileSync(await sheet.path()), { bom: true });
  const cell = (name: string) => line![head!.indexOf(name)];
  expect(head![0]).toBe('SIS ID');
  expect(cell('SIS ID')).toBe("'=20417"); // inert in a spreadsheet
  expect([cell('Right'), cell('Of'), cell('Passed'), cell('Bench points')]).toEqual([
    ...['3', '5', 'no', '11'],
  ]);
  // The assessment is there when the files are marked again.
  await page.reload();
  await choose(page, download.suggestedFilename(), file);
  await expect(page.getByRole('button', { name: 'bench 7: 11 points. Change' })).toBeVisible();
});

test('explains each answer at once where the instructor wants it, and counts the first', async ({
  page,
}) => {
  const assignment = { ...stopAssignment, feedback: 'each', count: 2 } as const;
  const [question] = questionsFor(assignment, 'Bench 3');
  await page.goto(`assignment/#${encodeAssignment(assignment)}`);
  await page.getByLabel('Name of your bench').fill('Bench 3');
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByRole('button', { name: 'Check' }).click();
  await expect(page.getByRole('button', { name: 'Question 1', exact: true })).toBeVisible();
  await answer(page, question!, false);
  await page.getByRole('button', { name: 'Check' }).click();
  await expect(page.getByText('Not yet.')).toBeVisible();
  await expect(page.getByText('This is the answer that counts.')).toBeVisible();
  await page.getByRole('button', { name: 'Try again' }).click();
  await answer(page, question!, true);
  await page.getByRole('button', { name: 'Check' }).click();
  await expect(page.getByText('Right.', { exact: true })).toBeVisible();
  await expect(page.getByText('Your first answer is the one that counts.')).toBeVisible();
  await page.getByRole('button', { name: 'Hand in', exact: true }).click();
  await expect(page.getByText('Still open: 2.')).toBeVisible();
  await page.getByRole('button', { name: 'Hand in all the same' }).click();
  await expect(page.getByText('0 of 2 right.')).toBeVisible();
});

test('keeps two students of one phone apart', async ({ page }) => {
  await page.goto(`assignment/#${encodeAssignment(stopAssignment)}`);
  const name = page.getByLabel('Name of your bench');
  await name.fill('Bench 1');
  await page.getByRole('button', { name: 'Begin' }).click();
  await answer(page, questionsFor(stopAssignment, 'Bench 1')[0]!, true);
  await page.getByRole('button', { name: 'Keep and go on' }).click();
  await page.getByRole('button', { name: 'That’s not me' }).click();
  await name.fill('Bench 2');
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.getByRole('heading', { name: 'Question 1 of 8' })).toBeVisible();
  await page.getByRole('button', { name: 'That’s not me' }).click();
  await name.fill('BENCH 1');
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(page.getByRole('heading', { name: 'Question 2 of 8' })).toBeVisible();
});

test('refuses a damaged link in a sentence', async ({ page }) => {
  const link = encodeAssignment(stopAssignment);
  await page.goto(`assignment/#${link.slice(0, -9)}`);
  await expect(page.getByRole('alert')).toContainText('a part of it is missing');
  await page.goto(`teach/assign/?damaged#${link.replace('n=8', 'n=9')}`);
  await expect(page.getByRole('alert')).toContainText('This link can’t be read');
});

test('says what can’t be asked of one thickness of board', async ({ page }) => {
  await page.goto('teach/assign/');
  await page.getByRole('checkbox', { name: '3.3 Tee joint for a fixed shelf' }).check();
  await page.getByLabel('Title').fill('Shelves');
  await page.getByLabel('Thicknesses of your boards').fill('3/4');
  const result = page.getByRole('region', { name: 'The link for your class' });
  await expect(result).toContainText('nothing fair to ask: Height of the shelf.');
  await page.getByLabel('Thicknesses of your boards').fill('3/4, eleven');
  await expect(result).toContainText('“eleven” is not a length');
});

test('marks where no worker can be started', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'Worker', {
      value: () => {
        throw new Error('not here');
      },
    });
  });
  await page.goto('teach/mark/');
  const file = writeHandIn(handInOf(stopAssignment, 'Bench 9', 1, misconceptions));
  await choose(page, 'a.json', file);
  await expect(page.getByRole('row', { name: /Bench 9/ })).toContainText('100');
  await choose(page, 'b.json', '{}');
  await expect(page.getByRole('alert')).toContainText('No file tells what was assigned');
});
