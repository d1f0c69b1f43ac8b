/** What is being typed beside a well and is not part of its plan yet, kept on this device under the well's id. */
import type { Store } from './store.ts';

const PREFIX = 'wellcut/test/';

export class Drafts {
  readonly #store: Store;
  readonly #onresult: (kept: boolean) => void;
  /** What the store refused, by id: there for as long as the page is. */
  readonly #unkept = new Map<string, string>();

  /** @param onresult  whether all that is being typed outlives the page */
  constructor(store: Store, onresult: (kept: boolean) => void) {
    this.#store = store;
    this.#onresult = onresult;
  }

  /** As it was kept: read it before use. */
  load(id: string): string | null {
    return this.#unkept.get(id) ?? this.#store.get(PREFIX + id);
  }

  keep(id: string, text: string): void {
    if (this.#store.set(PREFIX + id, text) && this.#store.lasting) this.#unkept.delete(id);
    else this.#unkept.set(id, text);
    this.#onresult(this.#unkept.size === 0);
  }

  forget(id: string): void {
    this.#store.remove(PREFIX + id);
    this.#unkept.delete(id);
    this.#onresult(this.#unkept.size === 0);
  }

  /** The same well goes on under another id. */
  copy(from: string, to: string): void {
    const text = this.load(from);
    if (text !== null) this.keep(to, text);
  }
}
