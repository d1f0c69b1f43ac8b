/**
 * The wells kept on this device, each under a key of its own.
 * Every save carries a revision and the tab that wrote it, so that two tabs never overwrite each other.
 */
import type { Plan } from '../../model/plan/schema.ts';
import type { Store } from './store.ts';

export interface ShelfEntry {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970, by the clock of the device. */
  readonly saved: number;
  readonly revision: number;
  readonly writer: string;
}

export interface KeptWell extends ShelfEntry {
  /** As it was stored: read it before use. */
  readonly plan: unknown;
}

export type SaveResult =
  | { readonly outcome: 'saved'; readonly revision: number }
  | { readonly outcome: 'conflict'; readonly theirs: KeptWell }
  | { readonly outcome: 'refused' };

const PREFIX = 'wellcut/well/';
const LAST = 'wellcut/last';

export class Shelf {
  readonly #store: Store;
  /** The tab that writes here. */
  readonly #writer: string;

  constructor(store: Store, writer: string) {
    this.#store = store;
    this.#writer = writer;
  }

  /** Newest first. */
  list(): ShelfEntry[] {
    return this.#store
      .keys()
      .filter((key) => key.startsWith(PREFIX))
      .map((key) => this.load(key.slice(PREFIX.length)))
      .filter((kept) => kept !== null)
      .map(({ id, title, saved, revision, writer }) => ({ id, title, saved, revision, writer }))
      .sort((a, b) => b.saved - a.saved);
  }

  load(id: string): KeptWell | null {
    return readKept(id, this.#store.get(PREFIX + id));
  }

  /** @param known  the revision that this tab last read or wrote; 0 for a new well */
  save(id: string, plan: Plan, known: number, now: number): SaveResult {
    const there = this.load(id);
    if (there !== null && there.revision !== known && there.writer !== this.#writer)
      return { outcome: 'conflict', theirs: there };
    const revision = Math.max(known, there?.revision ?? 0) + 1;
    const kept = { title: plan.title ?? '', saved: now, revision, writer: this.#writer, plan };
    if (!this.#store.set(PREFIX + id, JSON.stringify(kept))) return { outcome: 'refused' };
    this.#store.set(LAST, id);
    return { outcome: 'saved', revision };
  }

  remove(id: string): void {
    this.#store.remove(PREFIX + id);
  }

  /** The well that was open last, if it is still kept. */
  last(): KeptWell | null {
    const id = this.#store.get(LAST);
    return id === null || id === '' ? null : this.load(id);
  }

  rememberOpen(id: string | null): void {
    this.#store.set(LAST, id ?? '');
  }

  /** The id of the well that a storage event speaks of. */
  static idOf(key: string | null): string | null {
    return key !== null && key.startsWith(PREFIX) ? key.slice(PREFIX.length) : null;
  }
}

function readKept(id: string, text: string | null): KeptWell | null {
  if (text === null) return null;
  try {
    const kept: unknown = JSON.parse(text);
    if (typeof kept !== 'object' || kept === null || !('plan' in kept)) return null;
    const { title, saved, revision, writer, plan } = kept as Record<string, unknown>;
    return {
      id,
      title: typeof title === 'string' ? title : '',
      saved: typeof saved === 'number' ? saved : 0,
      revision: typeof revision === 'number' ? revision : 0,
      writer: typeof writer === 'string' ? writer : '',
      plan,
    };
  } catch (fault) {
    console.info(`wellcut: the kept well ${id} cannot be read`, fault);
    return null;
  }
}
