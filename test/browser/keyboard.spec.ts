/**
 * By keyboard alone: into every widget of a page, through all of its controls and out again at
 * both ends, with the focus always to be seen; sliders obey, and what closes gives the focus back.
 */
import { expect, type Locator, type Page, test } from 'playwright/test';

/**
 * A page for each kind of widget. A lesson is there for its figure; one is walked whole. Figures
 * that are set by the same fields as these have none.
 */
const WHOLE = 'lessons/splitting-the-depth/';
const PAGES = [
  WHOLE,
  'lessons/what-a-dowel-joint-is/',
  'lessons/reading-a-rule/',
  'lessons/faces-edges-ends-and-marks/',
  'lessons/the-working-order-and-the-setup-sheet/',
  'lessons/edge-joint-and-the-panel/',
  'lessons/moisture-and-seasons/',
  'lessons/errors-odds-and-the-dry-fit/',
  'bench/',
  'bench/piece/',
  'bench/story-stick/letter/',
  'trial/',
  'measure/',
  'practice/',
  'search/',
  'your-work/',
  'teach/assign/',
  'teach/mark/',
  'teach/order/',
  'teach/sign-off/',
  'teach/stations/',
  'teach/worksheets/',
];

const CONTROLS =
  ':is(a[href], button, input, select, textarea, summary, [tabindex="0"]):not(:disabled)';

/** Where the focus is: what is wrong with it, and whether it is in the widget. */
function focusIn(widget: Locator) {
  return widget.evaluate((island) => {
    const it = document.activeElement;
    if (!it || it === document.body) return { inside: false, slider: false, fault: 'on nothing' };
    const inside = island.contains(it);
    const words = it.getAttribute('aria-label') ?? it.textContent?.trim().slice(0, 40) ?? '';
    const name = `${it.tagName.toLowerCase()} '${words || it.id}'`;
    // A radio that is drawn as a button shows the focus on its label.
    const shown = [it, it.closest('label'), it.nextElementSibling].filter((at) => at !== null);
    const marked = shown.some((at) => {
      const style = getComputedStyle(at);
      const outlined = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) > 0;
      return outlined || style.boxShadow !== 'none';
    });
    const seen = shown.some((at) => {
      const { top, left, bottom, right, width, height } = at.getBoundingClientRect();
      const within = bottom > 0 && right > 0 && top < innerHeight && left < innerWidth;
      return within && width > 1 && height > 1 && getComputedStyle(at).visibility === 'visible';
    });
    const slider = it instanceof HTMLInputElement && it.type === 'range';
    const fault = !seen ? `${name} is out of sight` : !marked ? `${name} shows no focus` : '';
    return { inside, slider, fault };
  });
}

/** The ends by Home and End, a step by an arrow: each is another value, said in other words. */
async function slide(page: Page): Promise<string> {
  const slider = page.locator(':focus');
  const states: string[] = [];
  for (const key of ['End', 'Home', 'ArrowRight']) {
    await page.keyboard.press(key);
    states.push(
      await slider.evaluate((it) => {
        const { value, min, max } = it as HTMLInputElement;
        const where = value === max ? 'last' : value === min ? 'first' : 'between';
        return `${where}: ${it.getAttribute('aria-valuetext') ?? value}`;
      }),
    );
  }
  const said = new Set(states.map((state) => state.replace(/^\w+: /, '')));
  const right = states[0]?.startsWith('last') && states[1]?.startsWith('first');
  const steps = states[2]?.startsWith('first') === false;
  return right && steps && said.size > 1 ? '' : `a slider is at ${states.join('; ')}`;
}

/** Commits to the first choice of every prediction, so that the figures can be used. */
async function predict(page: Page): Promise<void> {
  const button = page.getByRole('button', { name: 'This is my prediction' });
  const forms = page.locator('form').filter({ has: button });
  for (let left = await forms.count(); left > 0; left--) {
    await forms.first().scrollIntoViewIfNeeded();
    await expect(button.first()).toBeEnabled();
    await forms.first().getByRole('radio').first().press('Space');
    await button.first().press('Enter');
    await expect(forms).toHaveCount(left - 1);
  }
  await page.locator('.panel:has(> astro-island figure)').first().scrollIntoViewIfNeeded();
  await expect(page.getByRole('slider').first()).toBeEnabled();
}

async function wake(page: Page): Promise<void> {
  for (const island of await page.locator('astro-island').all()) {
    await island.locator(':scope > *').first().scrollIntoViewIfNeeded();
    await expect(island).not.toHaveAttribute('ssr');
  }
}

for (const path of PAGES) {
  test(`${path}: every widget is entered, used and left by keyboard`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto(path);
    const isFigure = path.startsWith('lessons/') && path !== WHOLE;
    const widgets = page.locator(isFigure ? '.panel:has(figure) > astro-island' : 'astro-island');
    if (!isFigure) await wake(page);
    if (path.startsWith('lessons/')) await predict(page);
    const faults: string[] = [];
    let [walked, sliders] = [0, 0];
    for (const widget of await widgets.all()) {
      const first = widget.locator(CONTROLS).filter({ visible: true }).first();
      if ((await first.count()) === 0) continue;
      await first.focus();
      const most = 3 * (await widget.locator(CONTROLS).count()) + 10;
      let stops = 0;
      for (; stops <= most; stops++) {
        const at = await focusIn(widget);
        if (!at.inside) break;
        if (at.fault) faults.push(at.fault);
        if (at.slider) {
          const fault = await slide(page);
          if (fault) faults.push(fault);
          sliders += 1;
        }
        await page.keyboard.press('Tab');
      }
      if (stops > most) faults.push('Tab does not lead out');
      const after = widget.locator(CONTROLS).filter({ visible: true }).first();
      await after.focus();
      // A group of radios is left from whichever is chosen.
      for (let back = 0; back < 3 && (await focusIn(widget)).inside; back++) {
        await page.keyboard.press('Shift+Tab');
      }
      if ((await focusIn(widget)).inside) faults.push('Shift+Tab does not lead out');
      walked += 1;
    }
    expect(walked, 'widgets with controls').toBeGreaterThan(0);
    if (isFigure || path === 'bench/') expect(sliders).toBeGreaterThan(0);
    expect(faults).toEqual([]);
  });
}

test('what closes or goes away gives the focus back', async ({ page }) => {
  await page.goto('lessons/splitting-the-depth/');
  const word = page.getByRole('button', { name: 'Free depth', exact: true });
  await word.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.term-says:popover-open')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.locator('.term-says:popover-open')).toHaveCount(0);
  await expect(word).toBeFocused();

  await wake(page);
  const predicts = page.locator('form').filter({
    has: page.getByRole('button', { name: 'This is my prediction' }),
  });
  await predicts.getByRole('radio').first().focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'This is my prediction' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'This is my prediction' })).toHaveCount(0);
  await expect(page.locator('body')).not.toBeFocused();

  await page.goto('your-work/');
  const forget = page.getByRole('button', { name: 'Forget everything …' });
  await expect(forget).toBeEnabled();
  await forget.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Keep it' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Keep it' })).toHaveCount(0);
  await expect(forget).toBeFocused();
});
