/** What axe finds wrong with the page. */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** All that it knows of levels A and AA, and of good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

interface Asked {
  /** A selector: the rest of the page is not looked at. */
  readonly within?: string;
  /** These in place of all that belong to the tags. */
  readonly rules?: readonly string[];
}

/** Faults, each with its rule, where it is and why. */
export async function axeFinds(page: Page, { within, rules }: Asked = {}): Promise<string[]> {
  // The page has no frames: a tab to put together what was found in them need not be opened. Of what is right, one place
  // for each rule is told, and not a path to each of three thousand.
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  if (within !== undefined) axe.include(within);
  const { violations, passes } = await (rules === undefined ? axe.withTags(TAGS) : axe.withRules([...rules])).analyze();
  if (passes.length === 0) return ['axe looked at nothing'];
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')} ${failureSummary ?? ''}`),
  );
}
