/** The wells kept on this device: read, written, taken away for a while and brought back. */
import {
  entryOf,
  place,
  readKept,
  storing,
  textOf,
  type KeptWell,
  type WellEntry,
  type Writing,
  type Written,
} from './keptWell.ts';
import { newId } from './newId.ts';
import type { Put, Rooms } from './rooms.ts';
import { NO_STEPS } from './keptHistory.ts';
import type { Plan } from '../../model/plan/schema.ts';

/** Milliseconds for which a well that was taken away can be brought back: thirty days. */
export const REGRET = 30 * 24 * 3600 * 1000;

export interface LoadedWell {
  readonly well: KeptWell;
  /** As they were stored: read them before use. */
  readonly history: unknown;
}

export class Wells {
  readonly #rooms: Rooms;

  constructor(rooms: Rooms) {
    this.#rooms = rooms;
  }

  /**
   * Newest first; what cannot be read is among them, and so is what was taken away.
   *
   * @param reads  whether it is a plan, where that is known already
   */
  async list(reads: (plan: unknown) => boolean = () => true): Promise<readonly WellEntry[]> {
    const all = await this.#rooms.all('wells');
    const wells = all.map(([id, there]) => readKept(id, there));
    return inOrder(
      wells
        .map((well) => (well.raw === null && !reads(well.plan) ? { ...well, raw: textOf(well.plan) } : well))
        .map(entryOf),
    );
  }

  /** All that stands there, newest first. */
  async all(): Promise<readonly KeptWell[]> {
    const all = await this.#rooms.all('wells');
    return all.map(([id, there]) => readKept(id, there)).toSorted((a, b) => b.saved - a.saved);
  }

  /** A well that is new in the list, without steps. */
  add(plan: Plan, now: number): Promise<Written> {
    const at = { id: newId(), version: newId(), besideId: newId(), at: now };
    return this.write({ ...at, on: [], plan, history: NO_STEPS });
  }

  /** As it stands there, without its steps; null where there is none. */
  async look(id: string): Promise<KeptWell | null> {
    const there = await this.#rooms.get('wells', id);
    return there === undefined ? null : readKept(id, there);
  }

  async load(id: string): Promise<LoadedWell | null> {
    // The steps must be those of this version: another tab may write between two looks.
    for (;;) {
      const there = await this.#rooms.get('wells', id);
      if (there === undefined) return null;
      const well = readKept(id, there);
      const history = await this.#rooms.get('histories', id);
      const after = await this.#rooms.get('wells', id);
      if (after === undefined || readKept(id, after).version === well.version) return { well, history };
    }
  }

  write(writing: Writing): Promise<Written> {
    return this.#rooms.change('wells', writing.id, (there) => place(there, writing));
  }

  /**
   * @param version  the one that was seen when this was asked for
   * @returns        whether it is away: one that has changed since stays
   */
  takeAway(id: string, version: string, now: number): Promise<boolean> {
    return this.#rooms.change('wells', id, (there) => {
      if (there === undefined) return { puts: [], answer: true };
      const well = readKept(id, there);
      if (well.version !== version) return { puts: [], answer: false };
      return { puts: [storing({ ...well, takenAway: now })], answer: true };
    });
  }

  bringBack(id: string): Promise<boolean> {
    return this.#rooms.change('wells', id, (there) => {
      if (there === undefined) return { puts: [], answer: false };
      return { puts: [storing({ ...readKept(id, there), takenAway: null })], answer: true };
    });
  }

  /** Lets go of what was taken away longer ago than anyone regrets, with all that was kept of it. */
  async clearOut(now: number): Promise<void> {
    const gone = (await this.list()).filter(({ takenAway }) => isOver(takenAway, now));
    if (gone.length === 0) return;
    const typed = await this.#rooms.all('drafts');
    for (const { id } of gone) {
      const drafts = typed.map(([key]) => key).filter((key) => key.startsWith(`${id} `));
      await this.#rooms.change('wells', id, (there) => {
        // Brought back in the meantime.
        if (there === undefined || !isOver(readKept(id, there).takenAway, now)) return { puts: [], answer: null };
        const puts: Put[] = [
          { room: 'wells', key: id, value: undefined },
          { room: 'histories', key: id, value: undefined },
          ...drafts.map((key): Put => ({ room: 'drafts', key, value: undefined })),
        ];
        return { puts, answer: null };
      });
    }
  }

  /** The well that was open last. */
  async last(): Promise<string | null> {
    const id = await this.#rooms.get('page', 'last');
    return typeof id === 'string' && id !== '' ? id : null;
  }

  rememberOpen(id: string | null): Promise<void> {
    return this.#rooms.change('page', 'last', () => ({
      puts: [{ room: 'page', key: 'last', value: id ?? '' }],
      answer: undefined,
    }));
  }
}

export function inOrder(entries: readonly WellEntry[]): readonly WellEntry[] {
  return entries.toSorted((a, b) => b.saved - a.saved || (a.id < b.id ? -1 : 1));
}

function isOver(takenAway: number | null, now: number): boolean {
  return takenAway !== null && now - takenAway > REGRET;
}
