import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright/test';

/** The rules of axe: WCAG 2.2 AA, and what is good besides. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What axe finds wrong on a page as it stands, a line for each place.
 * @param only rules to look by; without them all that WCAG 2.2 AA asks, and what is good besides
 */
export async function axeFaults(page: Page, only?: readonly string[]): Promise<string[]> {
  const runOnly = only
    ? { type: 'rule' as const, values: [...only] }
    : { type: 'tag' as const, values: TAGS };
  // No page has frames, and nobody reads what passed: without both it takes a third of the time.
  const { violations } = await new AxeBuilder({ page })
    .options({ runOnly, resultTypes: ['violations'] })
    .setLegacyMode(true)
    .analyze();
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target }) => `${id}: ${help}: ${target.join(' ')}`),
  );
}
