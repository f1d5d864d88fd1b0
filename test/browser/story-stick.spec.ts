/** A story stick is worth its paper only if it is as long as it says: the printed file is measured. */
import { type Page, expect, test } from 'playwright/test';
import { type JointSpec, encodeSetup, mm, planJoint } from '../../src/core/index.ts';
import { STRIP, TICK, arrangeSticks } from '../../src/diagrams/story-stick/arrangeStick.ts';
import { papers } from '../../src/diagrams/story-stick/papers.ts';
import { board, ordinaryJoint } from '../support/joints.ts';
import { type PdfLine, type PdfPage, pagesOfPdf } from '../support/pdf.ts';
import { site } from '../support/site.ts';

const PAPERS = [papers.letter, papers.a4];

/** As far as anything printed may be from its place, mm. */
const TRUE_TO = 0.1;

/** An edge joint of a length, whose strips grow with it. */
function joint(length: number): JointSpec {
  const both = board(mm(19.05), mm(140), mm(length));
  return { kind: 'edge', system: 'mm', a: both, b: both };
}

async function printed(page: Page, paper: string, spec: JointSpec): Promise<readonly PdfPage[]> {
  await page.goto('about:blank');
  await page.goto(`${site.base}/bench/story-stick/${paper}/#${encodeSetup({ joints: [spec] })}`);
  await expect(page.getByRole('button', { name: /^Print on/ })).toBeEnabled();
  return pagesOfPdf(await page.pdf({ preferCSSPageSize: true }));
}

const across = (line: PdfLine) => Math.abs(line.x2 - line.x1);
const lies = (line: PdfLine) => Math.abs(line.y2 - line.y1) < 1e-3;

/** Strips as they stand on a page, from its lines alone. */
function stripsOn({ lines }: PdfPage) {
  const lying = lines.filter(lies);
  const whole = lying.filter((line) => Math.abs(across(line) - STRIP) < 0.5 && line.width > 0.2);
  const columns = [...new Set(whole.map(({ x1, x2 }) => Math.round(Math.min(x1, x2))))];
  return columns
    .sort((one, other) => one - other)
    .map((left) => {
      const [start = NaN, end = NaN, ...more] = whole
        .filter(({ x1, x2 }) => Math.round(Math.min(x1, x2)) === left)
        .map(({ y1 }) => y1)
        .sort((one, other) => one - other);
      expect(more).toEqual([]);
      const ticks = lying.filter(
        (line) =>
          Math.abs(across(line) - TICK) < 0.5 &&
          Math.min(line.x1, line.x2) > left - 1 &&
          Math.max(line.x1, line.x2) < left + STRIP + 1,
      );
      return { start, end, ticks: ticks.map(({ y1 }) => y1).sort((one, other) => one - other) };
    });
}

for (const paper of PAPERS) {
  test(`puts every mark where the plan has it, on ${paper.name}`, async ({ page }) => {
    test.slow();
    for (const length of [100, 235, 420, 760, 1200]) {
      const spec = joint(length);
      const plan = planJoint(spec);
      const pages = await printed(page, paper.id, spec);
      for (const { width, height, lines } of pages) {
        // Chromium rounds a page to whole points.
        expect(Math.abs(width - paper.width)).toBeLessThan(0.5);
        expect(Math.abs(height - paper.height)).toBeLessThan(0.5);
        for (const bar of [100, 4 * 25.4]) {
          const long = (size: number) => Math.abs(size - bar) < TRUE_TO;
          const found = lines.filter(({ x1, y1, x2, y2 }) => long(Math.hypot(x2 - x1, y2 - y1)));
          expect(found.filter(lies), `${bar} mm lying`).toHaveLength(1);
          expect(
            found.filter((line) => !lies(line)),
            `${bar} mm standing`,
          ).toHaveLength(1);
        }
      }
      const [stick] = arrangeSticks(plan, paper);
      const strips = pages.flatMap(stripsOn);
      expect(strips).toHaveLength(stick!.strips);
      let pins = 0;
      strips.forEach((strip, i) => {
        const { from, to, marks } = stick!.pages.flat()[i]!;
        expect(Math.abs(strip.end - strip.start - (to - from))).toBeLessThan(TRUE_TO);
        // A tick at either edge of the strip.
        expect(strip.ticks).toHaveLength(2 * marks.length);
        strip.ticks.forEach((y, tick) => {
          const place = plan.positions[pins + Math.floor(tick / 2)]!;
          expect(Math.abs(y - strip.start - (place - from))).toBeLessThan(TRUE_TO);
        });
        pins += marks.length;
      });
      expect(pins).toBe(plan.positions.length);
    }
  });
}

test('says how to use it, and what goes on which paper', async ({ page }) => {
  const spec = ordinaryJoint('leg', 'mm', mm(18));
  const [first] = await printed(page, 'a4', spec);
  expect(first!.text).toContain('Measure the bars before you cut');
  expect(first!.text).toContain('mark A and B from this strip');
  await expect(page.getByText('both boards from the same strip')).toBeVisible();
  await page.getByRole('link', { name: 'the Letter strips' }).click();
  await expect(page.getByRole('button', { name: 'Print on Letter' })).toBeEnabled();
  await expect(page.getByRole('heading', { level: 1, name: /Leg joint/ })).toBeVisible();
  await page.goto('about:blank');
  await page.goto(`${site.base}/bench/story-stick/a4/#1;kind=leg;a=?`);
  await expect(page.getByRole('alert')).toContainText('This link can’t be read');
});
