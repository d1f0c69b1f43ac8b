/**
 * Where things are kept on this device: a few rooms, each with values under keys. What is changed is changed whole:
 * what stands there is read, looked at and replaced in one transaction, whatever other tabs do meanwhile.
 */
export const ROOMS = ['wells', 'histories', 'drafts', 'pumps', 'page'] as const;
export type Room = (typeof ROOMS)[number];

export interface Put {
  readonly room: Room;
  readonly key: string;
  /** Undefined: nothing stands there afterwards. */
  readonly value: unknown;
}

export interface Decision<T> {
  readonly puts: readonly Put[];
  readonly answer: T;
}

export interface Rooms {
  /** False when what is kept is gone with the page. */
  readonly lasting: boolean;
  get(room: Room, key: string): Promise<unknown>;
  all(room: Room): Promise<readonly (readonly [key: string, value: unknown])[]>;
  /** One transaction. Rejects, with nothing changed, where the browser refuses. */
  change<T>(room: Room, key: string, decide: (there: unknown) => Decision<T>): Promise<T>;
}

/** Rooms for as long as the page is. */
export function memoryRooms(): Rooms {
  const kept = new Map<Room, Map<string, unknown>>(ROOMS.map((room) => [room, new Map<string, unknown>()]));
  return {
    lasting: false,
    get: async (room, key) => kept.get(room)?.get(key),
    all: async (room) => [...(kept.get(room) ?? [])],
    async change(room, key, decide) {
      const { puts, answer } = decide(kept.get(room)?.get(key));
      for (const put of puts) {
        if (put.value === undefined) kept.get(put.room)?.delete(put.key);
        else kept.get(put.room)?.set(put.key, put.value);
      }
      return answer;
    },
  };
}

/** Rooms that are still being opened: what is asked of them waits, the page does not. */
export class OpeningRooms implements Rooms {
  readonly #opening: Promise<Rooms>;
  lasting = true;

  constructor(opening: Promise<Rooms>) {
    this.#opening = opening.then((rooms) => {
      this.lasting = rooms.lasting;
      return rooms;
    });
  }

  async get(room: Room, key: string): Promise<unknown> {
    return (await this.#opening).get(room, key);
  }

  async all(room: Room): Promise<readonly (readonly [string, unknown])[]> {
    return (await this.#opening).all(room);
  }

  async change<T>(room: Room, key: string, decide: (there: unknown) => Decision<T>): Promise<T> {
    return (await this.#opening).change(room, key, decide);
  }
}
