/** What was put in becomes the plan: it stands there now, and nothing moves it. */
import { withValue } from '../plan/editPlan.ts';
import { readPlan, type PlanReading } from '../plan/readPlan.ts';
import type { Plan } from '../plan/schema.ts';

/** As read: what stands there may contradict the record, and then says so as any plan does. */
export function asPlan(plan: Plan): PlanReading {
  const installed = Object.entries(plan.asBuilt?.installed ?? {});
  let next = plan;
  for (const [path, value] of installed) next = withValue(next, path, value);
  const status = {
    ...next.status,
    ...Object.fromEntries(installed.map(([path]) => [inPlan(next, path), 'installed'])),
  };
  return readPlan(installed.length === 0 ? plan : { ...next, status });
}

/** What the old pump's record says of the well itself: where its bottom is today. */
export function pulledAsFacts(plan: Plan): PlanReading {
  const sounded = plan.asBuilt?.pulled?.soundedDepth;
  if (sounded === undefined) return readPlan(plan);
  const next = withValue(plan, 'well.soundedDepth', sounded);
  return readPlan({ ...next, status: { ...next.status, 'well.soundedDepth': 'measured' } });
}

/** A single casing may stand in the plan in its short form. */
function inPlan(plan: Plan, path: string): string {
  return plan.well.casing === undefined ? path : path.replace(/^well\.casings\.0(?=\.|$)/, 'well.casing');
}
