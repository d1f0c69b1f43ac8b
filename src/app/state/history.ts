/**
 * Undo and redo as plain values: every step knows what was before and after, and what it is called.
 * A burst of key presses on the same handle in the same direction counts as one step.
 */
export interface Step<T> {
  readonly name: string;
  readonly before: T;
  readonly after: T;
  /** Steps with the same word may merge; null never merges. */
  readonly burst: string | null;
  /** Milliseconds on the caller's clock. */
  readonly at: number;
}

export interface History<T> {
  readonly present: T;
  readonly past: readonly Step<T>[];
  readonly future: readonly Step<T>[];
}

export interface Recording<T> {
  /** A name, or how to name it from what stood before the (merged) step. */
  readonly name: string | ((before: T) => string);
  readonly burst?: string | null;
  readonly at?: number;
  readonly same?: (a: T, b: T) => boolean;
}

/** A pause longer than this ends a burst of keys, in milliseconds. */
export const BURST_PAUSE = 500;

/** More steps than anyone takes back, few enough to hold in memory. */
export const MOST_STEPS = 200;

export function startHistory<T>(present: T): History<T> {
  return { present, past: [], future: [] };
}

/** The history after one more step; unchanged when the step changes nothing. */
export function record<T>(history: History<T>, next: T, recording: Recording<T>): History<T> {
  const { name, burst = null, at = 0, same = Object.is } = recording;
  const last = history.past.at(-1);
  const merges =
    last !== undefined &&
    burst !== null &&
    last.burst === burst &&
    at - last.at <= BURST_PAUSE &&
    history.future.length === 0;
  const before = merges ? last.before : history.present;
  const kept = merges ? history.past.slice(0, -1) : history.past;
  if (same(before, next)) return merges ? { present: before, past: kept, future: [] } : history;
  const step = { name: typeof name === 'string' ? name : name(before), before, after: next, burst, at };
  return { present: next, past: [...kept, step].slice(-MOST_STEPS), future: [] };
}

/** Ends a burst: the next key press starts a step of its own. */
export function endBurst<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  if (last === undefined || last.burst === null) return history;
  return { ...history, past: [...history.past.slice(0, -1), { ...last, burst: null }] };
}

export function undo<T>(history: History<T>): History<T> {
  const step = history.past.at(-1);
  if (step === undefined) return history;
  return {
    present: step.before,
    past: history.past.slice(0, -1),
    future: [{ ...step, burst: null }, ...history.future],
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [step, ...rest] = history.future;
  if (step === undefined) return history;
  return { present: step.after, past: [...history.past, step], future: rest };
}
