/** What is being typed beside a well and is not part of its plan yet, kept on this device under the well's id. */
import type { Store } from './store.ts';

const PREFIX = 'wellcut/test/';

export class Drafts {
  readonly #store: Store;

  constructor(store: Store) {
    this.#store = store;
  }

  /** As it was kept: read it before use. */
  load(id: string): string | null {
    return this.#store.get(PREFIX + id);
  }

  keep(id: string, text: string): void {
    this.#store.set(PREFIX + id, text);
  }

  forget(id: string): void {
    this.#store.remove(PREFIX + id);
  }

  /** The same well goes on under another id. */
  copy(from: string, to: string): void {
    const text = this.load(from);
    if (text !== null) this.keep(to, text);
  }
}
