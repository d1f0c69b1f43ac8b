/**
 * What a page that ends could not write any more: put where it can be put at once, and taken from there by the next page.
 * The database answers only later, and a page that is being closed has no later.
 */
import type { Store } from '../state/store.ts';
import type { Typed } from './drafts.ts';
import { NO_STEPS, readSteps, type KeptHistory, type KeptStep } from './keptHistory.ts';
import type { Writing } from './keptWell.ts';
import { newId } from './newId.ts';
import type { Rooms } from './rooms.ts';
import type { Wells } from './wells.ts';

const PREFIX = 'wellcut/left/';
/** Steps that go along: those since the last write, and some to see where they join the others. */
const STEPS = 20;

export function leave(store: Store, tab: string, wells: readonly Writing[], typed: readonly Typed[]): void {
  if (wells.length + typed.length === 0) store.remove(PREFIX + tab);
  else {
    const short = wells.map((each) => ({
      ...each,
      history: { past: each.history.past.slice(-STEPS), future: each.history.future.slice(0, STEPS) },
    }));
    store.set(PREFIX + tab, JSON.stringify({ wells: short, typed }));
  }
}

/** Writes what pages have left behind, each to where it belongs, and takes it out of there once it is written. */
export async function takeInLeft(store: Store, rooms: Rooms, wells: Wells): Promise<void> {
  const keys = store.keys().filter((key) => key.startsWith(PREFIX));
  if (keys.length === 0) return;
  const versions = new Set((await wells.list()).map(({ version }) => version));
  for (const key of keys) {
    const left = readLeft(store.get(key));
    for (const writing of left.wells) {
      if (versions.has(writing.version)) continue;
      const there = await wells.load(writing.id);
      const history = joinedAt(readSteps(there?.history, isRecord), writing.history);
      await wells.write({ ...writing, history, besideId: newId() });
    }
    for (const { key: name, text } of left.typed)
      await rooms.change('drafts', name, () => ({
        puts: [{ room: 'drafts', key: name, value: text ?? undefined }],
        answer: null,
      }));
    if (rooms.lasting) store.remove(key);
  }
}

/** The kept steps, and after them those that were taken since. */
function joinedAt(kept: KeptHistory, left: KeptHistory): KeptHistory {
  const last = kept.past.at(-1);
  if (last === undefined) return left;
  const at = left.past.findLastIndex((step) => sameStep(step, last));
  return { past: [...kept.past, ...left.past.slice(at + 1)], future: left.future };
}

function sameStep(a: KeptStep, b: KeptStep): boolean {
  return a.name === b.name && JSON.stringify(a.after) === JSON.stringify(b.after);
}

function readLeft(text: string | null): { wells: readonly Writing[]; typed: readonly Typed[] } {
  try {
    const left: unknown = JSON.parse(text ?? '{}');
    if (!isRecord(left)) return { wells: [], typed: [] };
    const { wells, typed } = left;
    return {
      wells: Array.isArray(wells) ? wells.map(readWriting).filter((each) => each !== null) : [],
      typed: Array.isArray(typed) ? typed.filter(isTyped) : [],
    };
  } catch (fault) {
    console.info('wellcut: what a page left behind cannot be read', fault);
    return { wells: [], typed: [] };
  }
}

function readWriting(value: unknown): Writing | null {
  if (!isRecord(value)) return null;
  const { id, version, on, at, plan, history, besideId } = value;
  if (typeof id !== 'string' || typeof version !== 'string' || typeof besideId !== 'string') return null;
  if (typeof at !== 'number' || !isRecord(plan)) return null;
  const names = Array.isArray(on) ? on.filter((name) => typeof name === 'string') : [];
  // It is read as a plan when it is opened, like all that is kept.
  const written = plan as unknown as Writing['plan'];
  return { id, version, on: names, at, plan: written, history: readSteps(history ?? NO_STEPS, isRecord), besideId };
}

function isTyped(value: unknown): value is Typed {
  return isRecord(value) && typeof value['key'] === 'string' && (value['text'] === null || isText(value['text']));
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
