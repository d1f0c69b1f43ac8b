/** Takes over, once, what an earlier form of the page kept in the browser's small storage: wells, tests, pumps. */
import type { Plan } from '../../model/plan/schema.ts';
import type { Store } from '../state/store.ts';
import { NO_STEPS } from './keptHistory.ts';
import { newId } from './newId.ts';
import type { Rooms } from './rooms.ts';
import type { Wells } from './wells.ts';

const WELL = 'wellcut/well/';
const TEST = 'wellcut/test/';
const PUMPS = 'wellcut/pumps';
const LAST = 'wellcut/last';

/** What was there is taken out only after it is written; where that fails it stays, and the next page tries again. */
export async function takeOver(store: Store, rooms: Rooms, wells: Wells): Promise<void> {
  const take = async (key: string, write: (text: string) => Promise<boolean>): Promise<void> => {
    const text = store.get(key);
    if (text === null || !(await write(text))) return;
    // Another tab of the earlier form may have gone on with it meanwhile: that is taken over next time.
    if (rooms.lasting && store.get(key) === text) store.remove(key);
  };
  for (const key of startingWith(store, WELL))
    await take(key, (text) => takeWell(key.slice(WELL.length), text, rooms, wells));
  for (const key of startingWith(store, TEST))
    await take(key, (text) => putIfFree(rooms, 'drafts', `${key.slice(TEST.length)} test`, text));
  await take(PUMPS, async (text) => {
    for (const [name, pump] of pumpsIn(text)) await putIfFree(rooms, 'pumps', name, pump);
    return true;
  });
  await take(LAST, async (id) => {
    if (id !== '') await wells.rememberOpen(id);
    return true;
  });
}

async function takeWell(id: string, text: string, rooms: Rooms, wells: Wells): Promise<boolean> {
  const kept = parsed(text);
  const { saved, revision, writer, plan } = kept ?? {};
  // What cannot be read stays as it is written, and stands in the list as that.
  if (typeof plan !== 'object' || plan === null) return putIfFree(rooms, 'wells', id, { raw: text, takenAway: null });
  // The same text gives the same name: taken over twice, it is there once.
  const version = `earlier/${String(writer)}/${String(revision)}`;
  const at = typeof saved === 'number' ? saved : 0;
  await wells.write({ id, version, on: [], at, plan: plan as Plan, history: NO_STEPS, besideId: newId() });
  return true;
}

function pumpsIn(text: string): [string, unknown][] {
  const pumps: unknown = parsed(text);
  if (!Array.isArray(pumps)) return [];
  return pumps
    .filter((pump): pump is { name: string } => typeof (pump as { name?: unknown } | null)?.name === 'string')
    .map((pump) => [pump.name, pump]);
}

/** @returns  whether it stands there now: what stood there before is not written over */
function putIfFree(rooms: Rooms, room: 'wells' | 'drafts' | 'pumps', key: string, value: unknown): Promise<boolean> {
  return rooms.change(room, key, (there) =>
    there === undefined
      ? { puts: [{ room, key, value }], answer: true }
      : { puts: [], answer: JSON.stringify(there) === JSON.stringify(value) },
  );
}

function parsed(text: string): Record<string, unknown> | null {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : null;
  } catch (fault) {
    console.info('wellcut: something kept earlier cannot be read', fault);
    return null;
  }
}

function startingWith(store: Store, prefix: string): string[] {
  return store.keys().filter((key) => key.startsWith(prefix));
}
