/** An assignment on paper. */
import { expect, test } from 'playwright/test';
import { encodeAssignment } from '../../src/class/assignment/assignmentLink.ts';
import { stopAssignment } from '../support/classOf.ts';

const assignment = {
  ...stopAssignment,
  templates: [
    'stop-for-a-board',
    'wrong-depth',
    'order-at-the-drill',
    'read-the-rule',
    'name-the-joint',
  ],
  count: 5,
  limits: {},
};

test('prints other numbers for each bench, with a key; refuses what is no link', async ({
  page,
}) => {
  await page.goto('teach/worksheets/');
  const link = page.getByLabel('Link of the assignment');
  await link.fill('https://school.example/assignment/#1;nonsense');
  await page.getByRole('button', { name: 'Make worksheets' }).click();
  await expect(page.locator('#worksheet-link-says')).not.toBeEmpty();
  await link.fill(`https://school.example/assignment/#${encodeAssignment(assignment)}`);
  await page.getByRole('button', { name: 'Make worksheets' }).click();
  const sheets = page.getByRole('region', { name: /^Worksheet/ });
  await expect(sheets).toHaveCount(12);
  const [one, two] = [sheets.nth(0), sheets.nth(1)];
  await expect(one.getByRole('listitem').first()).toBeVisible();
  expect(await one.innerText()).not.toBe(await two.innerText());
  const key = page.getByRole('region', { name: 'Key' });
  await expect(key.getByRole('row')).toHaveCount(13);
  await expect(key.getByRole('row').nth(1).getByRole('cell').first()).toContainText(/\d/);
  await page.getByRole('radio', { name: 'The same for all' }).check();
  await expect(sheets).toHaveCount(1);

  const pdf = (await page.pdf({ format: 'Letter' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeGreaterThanOrEqual(2);
});
