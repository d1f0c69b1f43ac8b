/** How a value came to stand in the plan: what each field of the record says of itself, or its part says for it. */
import type { Status } from '../../model/facts.ts';
import type { Plan } from '../../model/plan/schema.ts';

export const STATUSES: readonly Status[] = ['reported', 'measured', 'installed', 'to choose'];

/** A field's own word, and the word of the part that it belongs to. */
export interface StatusHere {
  readonly own: Status | null;
  readonly ofPart: Status | null;
}

export function statusHere(plan: Plan, path: string): StatusHere {
  const status = plan.status ?? {};
  const at = inPlan(plan, path);
  let ofPart: Status | null = null;
  for (let end = at.lastIndexOf('.'); end > 0 && ofPart === null; end = at.lastIndexOf('.', end - 1)) {
    ofPart = status[at.slice(0, end)] ?? null;
  }
  return { own: status[at] ?? null, ofPart };
}

/** The plan's account of statuses with another word for a field; undefined when none is left. */
export function withStatus(plan: Plan, path: string, status: Status | null): Plan['status'] {
  const at = inPlan(plan, path);
  const others = Object.entries(plan.status ?? {}).filter(([key]) => key !== at);
  const next = Object.fromEntries(status === null ? others : [...others, [at, status]]);
  return Object.keys(next).length > 0 ? next : undefined;
}

/** A single casing may stand in the plan in its short form. */
function inPlan(plan: Plan, path: string): string {
  return plan.well.casing === undefined ? path : path.replace(/^well\.casings\.0(?=\.|$)/, 'well.casing');
}
