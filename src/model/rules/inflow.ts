/** Where the water comes in, and whether pumping uncovers it. */
import { feet } from '../units.ts';
import { words } from './fix.ts';
import { meets } from './grace.ts';
import { drawdownMissing, lowestPumpingLevel, screenTop } from './pumpDepth.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';

export const LEVEL_ABOVE_SCREEN = feet(5);
/** A fracture that gives less than this share of the water is a minor one. */
export const MINOR_SHARE = 1 / 3;

export const levelAboveInflow = defineRule({
  number: 'PR-04',
  part: 'pumpingLevel',
  judge({ solved, facts }) {
    const level = lowestPumpingLevel(solved);
    const screen = screenTop(solved);
    if (screen === null && facts.well.inflows === null) return missing('inflows');
    if (level === null) return missing(drawdownMissing(solved));
    const water = level.depth;
    if (screen !== null) {
      const measured = screen - water;
      const margin = measured - LEVEL_ABOVE_SCREEN;
      if (meets(margin, 'length')) return holds('screenCovered', { screen, measured, margin });
      const severity = meets(measured, 'length') ? 'warning' : 'danger';
      const at = { measured, limit: LEVEL_ABOVE_SCREEN, margin, quantity: 'length', depth: water } as const;
      return measured < 0
        ? breaks('screenUncovered', severity, { screen, measured, margin }, at)
        : breaks('screenAlmostUncovered', severity, { screen, measured, margin }, at);
    }
    const inflows = facts.well.inflows ?? [];
    const inflow = inflows.reduce((least, { depth }) => Math.min(least, depth), Infinity);
    if (inflow === Infinity) return missing('inflows');
    const margin = inflow - water;
    if (meets(margin, 'length')) return holds('inflowsCovered', { water, inflow, margin });
    const share = inflows
      .filter(({ depth }) => depth < water)
      .reduce<number | null>((sum, each) => (sum === null || each.share === null ? null : sum + each.share), 0);
    const at = { measured: water, limit: inflow, margin, quantity: 'length', depth: inflow } as const;
    return share !== null && share < MINOR_SHARE
      ? breaks('minorInflowUncovered', 'note', { water, inflow, margin, share }, at)
      : breaks('inflowUncovered', 'warning', { water, inflow, margin, share }, at);
  },
  fixes: () => [words('pumpLess', {})],
});

export const inflowRules = [levelAboveInflow] as const;
