/**
 * What is typed and not yet part of a well: half a field, the report, a table of readings, a level in mid-drag. It is
 * kept under the well's id and a name as it is typed. A tab has its own copy, which outlives a reload; the device's copy
 * outlives the browser.
 */
import type { Rooms } from './rooms.ts';
import type { Store } from '../state/store.ts';

export interface Typed {
  readonly key: string;
  /** Null: it was done with. */
  readonly text: string | null;
}

/** Stands for the page itself: what is typed before there is a well. */
export const NO_WELL = '';

const PREFIX = 'wellcut/typed/';
/** Milliseconds between two writes of the same words. */
const PACE = 250;
/** Milliseconds after which what was refused is tried again. */
const AGAIN = 3000;

export class Drafts {
  readonly #rooms: Rooms;
  readonly #tab: Store;
  readonly #onresult: (kept: boolean) => void;
  readonly #ontyped: (well: string) => void;
  readonly #texts = new Map<string, string>();
  /** Changed in this page, so that nothing older may take its place. */
  readonly #touched = new Set<string>();
  readonly #unwritten = new Set<string>();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> | null = null;

  /**
   * @param tab       what only this tab sees
   * @param onresult  whether all that is being typed outlives the page
   * @param ontyped   something is typed beside a well
   */
  constructor(rooms: Rooms, tab: Store, onresult: (kept: boolean) => void, ontyped: (well: string) => void = () => {}) {
    this.#ontyped = ontyped;
    this.#rooms = rooms;
    this.#tab = tab;
    this.#onresult = onresult;
    for (const key of tab.keys().filter((each) => each.startsWith(PREFIX))) {
      const text = tab.get(key);
      if (text !== null) this.#texts.set(key.slice(PREFIX.length), text);
    }
  }

  /** Takes in what the device has: it gives way to what this tab has. */
  async open(): Promise<void> {
    for (const [key, text] of await this.#rooms.all('drafts')) {
      if (typeof text === 'string' && !this.#touched.has(key) && !this.#texts.has(key)) this.#texts.set(key, text);
    }
  }

  /** As it was kept: read it before use. */
  load(well: string, name: string): string | null {
    return this.#texts.get(keyOf(well, name)) ?? null;
  }

  /** The names under which something is typed beside a well. */
  names(well: string): readonly string[] {
    const start = keyOf(well, '');
    return [...this.#texts.keys()].filter((key) => key.startsWith(start)).map((key) => key.slice(start.length));
  }

  keep(well: string, name: string, text: string): void {
    this.#set(keyOf(well, name), text);
    if (well !== NO_WELL) this.#ontyped(well);
  }

  /** Whether it was typed in this page, and not before. */
  isFresh(well: string, name: string): boolean {
    return this.#touched.has(keyOf(well, name));
  }

  forget(well: string, name: string): void {
    const key = keyOf(well, name);
    if (this.#texts.has(key)) this.#set(key, null);
  }

  /** The same well goes on under another id. */
  copy(from: string, to: string): void {
    for (const name of this.names(from)) this.keep(to, name, this.load(from, name) ?? '');
  }

  /** What would be lost if the page ended now. */
  lastTyped(): readonly Typed[] {
    return [...this.#unwritten].map((key) => ({ key, text: this.#texts.get(key) ?? null }));
  }

  /** When all is written, or refused. */
  async settled(): Promise<void> {
    this.flush();
    await this.#writing;
  }

  flush(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#writing ??= this.#write().finally(() => {
      this.#writing = null;
    });
  }

  #set(key: string, text: string | null): void {
    if (this.#texts.get(key) === text) return;
    this.#touched.add(key);
    if (text === null) {
      this.#texts.delete(key);
      this.#tab.remove(PREFIX + key);
    } else {
      this.#texts.set(key, text);
      this.#tab.set(PREFIX + key, text);
    }
    this.#unwritten.add(key);
    this.#timer ??= setTimeout(() => this.flush(), this.#writing === null ? 0 : PACE);
  }

  async #write(): Promise<void> {
    let kept = true;
    for (const key of [...this.#unwritten]) {
      const text = this.#texts.get(key);
      try {
        await this.#rooms.change('drafts', key, () => ({
          puts: [{ room: 'drafts', key, value: text }],
          answer: null,
        }));
        if (this.#texts.get(key) === text) this.#unwritten.delete(key);
      } catch (fault) {
        console.info('wellcut: what is typed could not be kept', fault);
        kept = false;
      }
    }
    this.#onresult(kept && this.#rooms.lasting);
    if (this.#unwritten.size > 0) this.#timer ??= setTimeout(() => this.flush(), kept ? PACE : AGAIN);
  }
}

function keyOf(well: string, name: string): string {
  return `${well} ${name}`;
}
