/** A browser's database for tests in Node, empty, and the two kinds of rooms that must behave alike. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { DatabaseRooms } from '../../src/app/keeping/database.ts';
import { memoryRooms, type Rooms } from '../../src/app/keeping/rooms.ts';
import type { Writing } from '../../src/app/keeping/keptWell.ts';
import { NO_STEPS } from '../../src/app/keeping/keptHistory.ts';
import type { Plan } from '../../src/model/plan/schema.ts';

export function emptyDatabase(): DatabaseRooms {
  globalThis.indexedDB = new IDBFactory();
  return new DatabaseRooms();
}

export const KINDS: readonly (readonly [name: string, make: () => Rooms])[] = [
  ['the database', emptyDatabase],
  ['memory', memoryRooms],
];

export function writing(id: string, version: string, on: readonly string[], at = 1): Writing {
  const plan = { title: `${id} as ${version}` } as Plan;
  return { id, version, on, at, plan, history: NO_STEPS, besideId: `${id} beside ${version}` };
}
