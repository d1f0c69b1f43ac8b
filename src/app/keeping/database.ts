/** The rooms in the browser's own database, which reaches the disk at once; in memory where there is none. */
import { openDB, type IDBPDatabase } from 'idb';
import { memoryRooms, ROOMS, type Decision, type Room, type Rooms } from './rooms.ts';

const NAME = 'wellcut';

export async function openRooms(): Promise<Rooms> {
  const rooms = new DatabaseRooms();
  try {
    await rooms.open();
    return rooms;
  } catch (refusal) {
    // A private window or a sandboxed frame may forbid it: the page goes on without.
    console.info('wellcut: nothing can be kept in this browser', refusal);
    return memoryRooms();
  }
}

export class DatabaseRooms implements Rooms {
  readonly lasting = true;
  #database: Promise<IDBPDatabase> | null = null;

  open(): Promise<IDBPDatabase> {
    const opening = (this.#database ??= openDB(NAME, 1, {
      upgrade(database) {
        for (const room of ROOMS) database.createObjectStore(room);
      },
      // A later form of the page wants to change the rooms: it must not wait for this one.
      blocking: (_, __, event) => {
        (event.target as IDBDatabase).close();
        this.#database = null;
      },
      // The browser threw it out or broke it off: the next one who asks opens it anew.
      terminated: () => (this.#database = null),
    }));
    opening.catch(() => (this.#database = null));
    return opening;
  }

  async get(room: Room, key: string): Promise<unknown> {
    return this.#twice(async (database) => (await database.get(room, key)) as unknown);
  }

  async all(room: Room): Promise<readonly (readonly [string, unknown])[]> {
    return this.#twice(async (database) => {
      const transaction = database.transaction(room);
      const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
      return keys.map((key, i) => [String(key), values[i] as unknown] as const);
    });
  }

  async change<T>(room: Room, key: string, decide: (there: unknown) => Decision<T>): Promise<T> {
    return this.#twice(async (database) => {
      // Strict: what is reported kept is on the disk, not in a buffer on the way there.
      const transaction = database.transaction(ROOMS, 'readwrite', { durability: 'strict' });
      const done = transaction.done;
      done.catch(() => {});
      try {
        const { puts, answer } = decide(await transaction.objectStore(room).get(key));
        for (const put of puts) {
          const into = transaction.objectStore(put.room);
          const putting = put.value === undefined ? into.delete(put.key) : into.put(put.value, put.key);
          // What fails here ends the transaction, and is told by it.
          putting.catch(() => {});
        }
        await done;
        return answer;
      } catch (fault) {
        abort(transaction);
        throw fault;
      }
    });
  }

  /** A connection that the browser closed without a word is opened once more. */
  async #twice<T>(work: (database: IDBPDatabase) => Promise<T>): Promise<T> {
    const database = await this.open();
    try {
      return await work(database);
    } catch (fault) {
      if (!(fault instanceof DOMException) || fault.name !== 'InvalidStateError') throw fault;
      this.#database = null;
      return work(await this.open());
    }
  }
}

function abort(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch (fault) {
    // It is over already, by the fault that is being reported.
    if (!(fault instanceof DOMException)) throw fault;
  }
}
