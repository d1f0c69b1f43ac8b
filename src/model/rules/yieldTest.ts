/** How long the well was pumped before its level was read. */
import type { PumpingFacts } from '../facts.ts';
import type { Plan } from '../plan/schema.ts';
import type { Seconds } from '../si.ts';
import { meets } from './grace.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';

export const LEAST_TEST: Seconds = 4 * 3600;

/** All steps together; null where any duration is unknown. */
export function timePumped(pumping: PumpingFacts): Seconds | null {
  if (pumping.kind === 'test') return pumping.after;
  if (pumping.kind !== 'steps') return null;
  return pumping.steps.reduce<Seconds | null>(
    (sum, { after }) => (sum === null || after === null ? null : sum + after),
    0,
  );
}

/** Field of the first duration that nobody said. */
function durationField({ water }: Plan): string {
  if (water.pumping?.kind !== 'steps') return 'water.pumping.after';
  const at = water.pumping.steps.findIndex(({ after }) => after === undefined);
  return `water.pumping.steps.${Math.max(at, 0)}.after`;
}

export const testedLongEnough = defineRule({
  number: 'PR-42',
  part: 'pumpingLevel',
  restsOn: [],
  asks: { least: LEAST_TEST },
  judge({ solved, facts }) {
    const { pumping } = facts.water;
    // What was told of the aquifer was tested elsewhere, and a level is written down without its hours.
    if (pumping?.kind === 'aquifer' || pumping?.kind === 'level') return doesNotApply;
    if (pumping === null || pumping.kind === 'yield only') return missing('pumpingTest');
    const measured = timePumped(pumping);
    if (measured === null) return missing('testDuration', {}, [durationField(solved.plan)]);
    const least = LEAST_TEST;
    const margin = measured - least;
    if (meets(margin, 'time')) return holds('longEnough', { measured, least });
    const at = { measured, limit: least, margin, quantity: 'time', depth: solved.levels.pumping } as const;
    return breaks('short', 'note', { measured, least, margin }, at);
  },
});

export const yieldTestRules = [testedLongEnough] as const;
