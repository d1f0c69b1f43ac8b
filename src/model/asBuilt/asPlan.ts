/** What was put in becomes the plan: it stands there now, and nothing moves it. */
import { datumOf, valueAt, withDepth, withValue } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import { readPlan, type PlanReading } from '../plan/readPlan.ts';
import type { Plan } from '../plan/schema.ts';
import { parseQuantity } from '../units.ts';
import type { Value } from './asked.ts';

/** What stands there may contradict the record, and then says so as it does in every plan. What was planned is kept beside it. */
export function asPlan(plan: Plan): PlanReading {
  const installed = Object.entries(plan.asBuilt?.installed ?? {});
  if (installed.length === 0) return readPlan(plan);
  const planned: Record<string, Value> = {};
  let next = plan;
  for (const [path, value] of installed) {
    const before = valueAt(plan, path);
    if (isValue(before) && before !== value) planned[path] = before;
    next = withValue(withItsList(next, path), path, value);
  }
  const status = Object.fromEntries(installed.map(([path]) => [inPlan(next, path), 'installed']));
  const kept = { ...planned, ...plan.asBuilt?.planned };
  const asBuilt = { ...next.asBuilt, ...(Object.keys(kept).length === 0 ? {} : { planned: kept }) };
  return readPlan({ ...next, status: { ...next.status, ...status }, asBuilt });
}

/** What the old pump's record says of the well itself: where its bottom is today, from where this plan counts. */
export function pulledAsFacts(plan: Plan): PlanReading {
  const sounded = plan.asBuilt?.pulled?.soundedDepth;
  if (sounded === undefined) return readPlan(plan);
  const path = 'well.soundedDepth';
  const typed = withValue(plan, path, sounded);
  const depth = parseQuantity(sounded, 'length');
  const next = datumOf(plan, path) === 0 || !depth.ok ? typed : withDepth(typed, path, depth.si);
  return readPlan({ ...next, status: { ...next.status, [path]: 'measured' } });
}

/** A list that nobody wrote down is the assumed one: a second valve stands over the first. */
function withItsList(plan: Plan, path: string): Plan {
  const [, list, index] = /^(.*)\.(\d+)$/.exec(path) ?? [];
  if (list === undefined || index === '0' || valueAt(plan, list) !== undefined) return plan;
  const assumed = readFacts(plan).assumed.find((each) => each.path === list);
  return assumed === undefined ? plan : withValue(plan, list, assumed.value.split(', '));
}

function isValue(value: unknown): value is Value {
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean';
}

/** A single casing may stand in the plan in its short form. */
function inPlan(plan: Plan, path: string): string {
  return plan.well.casing === undefined ? path : path.replace(/^well\.casings\.0(?=\.|$)/, 'well.casing');
}
