import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** The tags of every rule that WCAG 2.2 level A and AA hold. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

/** What the page breaks of WCAG 2.2 AA, one line a place: rule, what it says, the element. Empty is good. */
export async function accessibilityFaults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(tags).analyze();
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map((node) => `${id}: ${help}: ${node.target.join(' ')} (${node.html.slice(0, 120)})`),
  );
}
