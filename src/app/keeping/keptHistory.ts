/** The steps of one well as they are kept with it: those of other wells that lie between them stay out. */
import type { Plan } from '../../model/plan/schema.ts';
import { MOST_STEPS, type History, type Step } from '../state/history.ts';

export interface KeptStep {
  readonly name: string;
  readonly before: Plan;
  readonly after: Plan;
}

/** Oldest first in the past, nearest first in the future. */
export interface KeptHistory {
  readonly past: readonly KeptStep[];
  readonly future: readonly KeptStep[];
}

/** A well under its id on the device's shelf, or the empty desk. */
export interface Desk {
  readonly id: string | null;
  readonly plan: Plan | null;
}

export const NO_STEPS: KeptHistory = { past: [], future: [] };

/** The steps next to the present that are this well's alone. */
export function stepsOf(history: History<Desk>, id: string): KeptHistory {
  const past: KeptStep[] = [];
  for (const step of history.past.toReversed()) {
    const kept = keptStep(step, id);
    if (kept === null) break;
    past.unshift(kept);
  }
  const future: KeptStep[] = [];
  for (const step of history.future) {
    const kept = keptStep(step, id);
    if (kept === null) break;
    future.push(kept);
  }
  return { past, future };
}

function keptStep({ name, before, after }: Step<Desk>, id: string): KeptStep | null {
  if (before.id !== id || after.id !== id || before.plan === null || after.plan === null) return null;
  return { name, before: before.plan, after: after.plan };
}

/** Steps that were there before the well was opened, then those taken since. */
export function joined(earlier: KeptHistory | undefined, { past, future }: KeptHistory): KeptHistory {
  return { past: [...(earlier?.past ?? []), ...past].slice(-MOST_STEPS), future };
}

export function deskHistory(id: string, plan: Plan, { past, future }: KeptHistory): History<Desk> {
  const step = ({ name, before, after }: KeptStep): Step<Desk> => ({
    name,
    before: { id, plan: before },
    after: { id, plan: after },
    burst: null,
    at: 0,
  });
  return { present: { id, plan }, past: past.map(step), future: future.map(step) };
}

/** The same session with this well's steps next to the present replaced: another tab has gone on with it. */
export function followed(history: History<Desk>, id: string, plan: Plan, kept: KeptHistory): History<Desk> {
  const { past } = stepsOf(history, id);
  const others = history.past.slice(0, history.past.length - past.length);
  const theirs = deskHistory(id, plan, kept);
  return { ...theirs, past: [...others, ...theirs.past].slice(-MOST_STEPS) };
}

/** The same session with one well under another id. */
export function renamed(history: History<Desk>, from: string, to: string): History<Desk> {
  const desk = (each: Desk): Desk => (each.id === from ? { ...each, id: to } : each);
  const step = (each: Step<Desk>): Step<Desk> => ({ ...each, before: desk(each.before), after: desk(each.after) });
  return { present: desk(history.present), past: history.past.map(step), future: history.future.map(step) };
}

/**
 * What is kept as steps, up to the first from the present that cannot be read.
 *
 * @param reads  whether it is a plan
 */
export function readSteps(kept: unknown, reads: (plan: unknown) => boolean): KeptHistory {
  if (typeof kept !== 'object' || kept === null) return NO_STEPS;
  const { past, future } = kept as Record<string, unknown>;
  const known = new Map<unknown, boolean>();
  const plan = (value: unknown): value is Plan => {
    const answer = known.get(value) ?? reads(value);
    known.set(value, answer);
    return answer;
  };
  const steps = (values: unknown): KeptStep[] => {
    const read: KeptStep[] = [];
    for (const value of Array.isArray(values) ? (values as unknown[]) : []) {
      if (typeof value !== 'object' || value === null) break;
      const { name, before, after } = value as Record<string, unknown>;
      if (typeof name !== 'string' || !plan(before) || !plan(after)) break;
      read.push({ name, before, after });
    }
    return read;
  };
  const newestFirst = Array.isArray(past) ? (past as unknown[]).toReversed() : [];
  return { past: steps(newestFirst).toReversed(), future: steps(future) };
}

/**
 * The value itself, with every part that did not change taken from before: two hundred steps of a well then take little
 * more room than one, in memory and where they are kept.
 */
export function sharing<T>(before: unknown, after: T): T {
  if (Object.is(before, after) || !isContainer(before) || !isContainer(after)) return after;
  if (Array.isArray(before) !== Array.isArray(after)) return after;
  const keys = Object.keys(after);
  const parts = keys.map((key) => sharing(before[key], after[key]));
  const had = Object.keys(before);
  // In the same order too: a saved file must not change by it.
  if (keys.length === had.length && keys.every((key, i) => key === had[i] && Object.is(before[key], parts[i])))
    return before as T;
  if (Array.isArray(after)) return parts as T;
  return Object.fromEntries(keys.map((key, i) => [key, parts[i]])) as T;
}

function isContainer(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
