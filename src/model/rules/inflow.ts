/** Where the water comes in, and whether pumping uncovers it. */
import { feet } from '../units.ts';
import { meets } from './grace.ts';
import { words } from './mend.ts';
import { drawdownMissing, lowestPumpingLevel, screenTop } from './pumpDepth.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import { gap, toSpare } from './say.ts';

export const LEVEL_ABOVE_SCREEN = feet(5);
/** A fracture that gives less than this share of the water is a minor one. */
export const MINOR_SHARE = 1 / 3;

export const levelAboveInflow = defineRule({
  number: 'PR-04',
  part: 'pumpingLevel',
  broken: 'Pumping uncovers where the water comes in',
  holds: 'Water covers the places where it comes in',
  source:
    '35 Ill. Adm. Code 604.240(g)(4) for screens of public wells; margin and fractures: common practice, no source',
  why: 'Water that falls into the well carries air and sand and clogs the openings it came through.',
  judge({ solved, facts, show }) {
    const level = lowestPumpingLevel(solved);
    const top = screenTop(solved);
    if (top === null && facts.well.inflows === null) return missing('where water enters the well');
    if (level === null) return missing(drawdownMissing(solved));
    const mend = words('Pump less, or fit a flow-limiting valve: a deeper pump does not raise the water.');
    if (top !== null) {
      const measured = top - level.depth;
      const margin = measured - LEVEL_ABOVE_SCREEN;
      const message = `While pumping, water stands ${gap(measured, show)} ${measured < 0 ? 'below' : 'above'} the top of the screen at ${show.depth(top)}.`;
      if (meets(margin, 'length')) return holds(toSpare(margin, show), message);
      return breaks({
        severity: meets(measured, 'length') ? 'warning' : 'danger',
        measured,
        limit: LEVEL_ABOVE_SCREEN,
        margin,
        quantity: 'length',
        depth: level.depth,
        title: measured < 0 ? 'Pumping uncovers the screen' : 'Pumping almost uncovers the screen',
        amount: `${gap(margin, show)} too deep`,
        message,
        mend,
      });
    }
    const inflows = facts.well.inflows ?? [];
    const shallowest = inflows.reduce((least, { depth }) => Math.min(least, depth), Infinity);
    if (shallowest === Infinity) return missing('where water enters the well');
    const margin = shallowest - level.depth;
    if (meets(margin, 'length'))
      return holds(
        toSpare(margin, show),
        `While pumping, water stands at ${show.depth(level.depth)}; the first inflow is at ${show.depth(shallowest)}.`,
      );
    const uncovered = inflows.filter(({ depth }) => depth < level.depth);
    const share = uncovered.reduce<number | null>(
      (sum, inflow) => (sum === null || inflow.share === null ? null : sum + inflow.share),
      0,
    );
    const minor = share !== null && share < MINOR_SHARE;
    return breaks({
      severity: minor ? 'note' : 'warning',
      measured: level.depth,
      limit: shallowest,
      margin,
      quantity: 'length',
      depth: shallowest,
      ...(minor ? { title: 'Pumping uncovers a minor inflow' } : {}),
      amount: `${gap(margin, show)} uncovered`,
      message: `While pumping, water falls to ${show.depth(level.depth)}, below the inflow at ${show.depth(shallowest)}${share === null ? '' : ` (${show.percent(share)})`}.`,
      mend,
    });
  },
});

export const inflowRules = [levelAboveInflow];
