/** How long the well was pumped before its level was read. */
import type { PumpingFacts } from '../facts.ts';
import type { Seconds } from '../si.ts';
import { meets } from './grace.ts';
import { words } from './mend.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';

export const LEAST_TEST: Seconds = 4 * 3600;

/** All steps together; null where any duration is unknown. */
function timePumped(pumping: PumpingFacts): Seconds | null {
  if (pumping.kind === 'test') return pumping.after;
  if (pumping.kind !== 'steps') return null;
  return pumping.steps.reduce<Seconds | null>(
    (sum, { after }) => (sum === null || after === null ? null : sum + after),
    0,
  );
}

export const testedLongEnough = defineRule({
  number: 'PR-42',
  part: 'pumpingLevel',
  broken: 'The pumping test was short',
  holds: 'The well was tested for some hours',
  source: '10 N.Y. Codes R. & Regs. App. 5-B, 5-B.4 and Ariz. Rev. Stat. 45-600: 4 h; Md. Code Regs. 26.04.04.26: 6 h',
  why: 'Water goes on falling for hours; a short test makes a well look better than it is.',
  judge({ solved, facts, show }) {
    const { pumping } = facts.water;
    if (pumping?.kind === 'aquifer') return doesNotApply;
    if (pumping === null || pumping.kind === 'yield only') return missing('a test with flow, drawdown and hours');
    const measured = timePumped(pumping);
    if (measured === null) return missing('how long the well was pumped before the level was read');
    const margin = measured - LEAST_TEST;
    const message = `The level was read after ${show.time(measured)} of pumping; ${show.time(LEAST_TEST)} is the usual least.`;
    if (meets(margin, 'time')) return holds(show.time(measured), message);
    return breaks({
      severity: 'note',
      measured,
      limit: LEAST_TEST,
      margin,
      quantity: 'time',
      depth: solved.levels.pumping,
      amount: `${show.time(-margin)} short`,
      message,
      mend: words('Have it pumped at a steady flow for four hours, and write level and time down.'),
    });
  },
});

export const yieldTestRules = [testedLongEnough];
