/** A plan being placed: what it was, what it is by now, and why each field was set. */
import { valueAt, withValue } from '../plan/editPlan.ts';
import type { Plan } from '../plan/schema.ts';
import type { WhyPlaced } from './told.ts';

export interface PlacedChange {
  readonly path: string;
  /** What stood there as typed; undefined where nothing did. */
  readonly from: unknown;
  readonly to: unknown;
  /** The rule that set it; null where the thing itself ends and no rule does. */
  readonly rule: string | null;
  readonly why: WhyPlaced;
}

export interface Draft {
  readonly typed: Plan;
  readonly plan: Plan;
  /** By path: each field is told once, however often it was set. */
  readonly changes: ReadonlyMap<string, PlacedChange>;
}

export function draftOf(plan: Plan): Draft {
  return { typed: plan, plan, changes: new Map() };
}

/** The draft with one field set. A field that comes back to what was typed is no change. */
export function withChange(
  { typed, plan, changes }: Draft,
  path: string,
  to: unknown,
  rule: string | null,
  why: WhyPlaced,
): Draft {
  const from = valueAt(typed, path);
  const told = new Map(changes);
  told.delete(path);
  if (!sameValue(from, to)) told.set(path, { path, from, to, rule, why });
  return { typed, plan: withValue(plan, path, to), changes: told };
}

/** Values of a plan are text, numbers, flags and lists of text. */
function sameValue(one: unknown, other: unknown): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
