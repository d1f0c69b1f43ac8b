/** Keeps the well on this device: at once when it is new, within a second of a change, and when the page is hidden or left. */
import type { Plan } from '../../model/plan/schema.ts';
import type { KeptWell, SaveResult, Shelf } from './shelf.ts';

/** Milliseconds of quiet before a save. */
const QUIET = 600;

export class Autosave {
  #timer: ReturnType<typeof setTimeout> | undefined;
  #waiting: { id: string; plan: Plan } | null = null;
  /** By id: the revision that this tab read or wrote last. */
  readonly #known = new Map<string, number>();
  /** Ids of which a first save was tried; where the shelf refuses, each change does not try again at once. */
  readonly #begun = new Set<string>();
  /** Ids that another tab has changed and about which the user has not decided. */
  readonly #disputed = new Set<string>();

  readonly #shelf: Shelf;
  readonly #onresult: (id: string, result: SaveResult) => void;

  constructor(shelf: Shelf, onresult: (id: string, result: SaveResult) => void) {
    this.#shelf = shelf;
    this.#onresult = onresult;
  }

  /** A well was read from the shelf. */
  opened(kept: KeptWell): void {
    this.#begun.add(kept.id);
    this.#known.set(kept.id, kept.revision);
    this.#disputed.delete(kept.id);
  }

  schedule(id: string, plan: Plan): void {
    if (this.#waiting !== null && this.#waiting.id !== id) this.flush();
    this.#waiting = { id, plan };
    clearTimeout(this.#timer);
    // A well that is new on this device is kept at once: a browser that is killed takes its last change at most.
    if (!this.#begun.has(id)) {
      this.#begun.add(id);
      this.flush();
    } else this.#timer = setTimeout(() => this.flush(), QUIET);
  }

  flush(): void {
    clearTimeout(this.#timer);
    const waiting = this.#waiting;
    if (waiting === null || this.#disputed.has(waiting.id)) return;
    const result = this.#shelf.save(waiting.id, waiting.plan, this.#known.get(waiting.id) ?? 0, Date.now());
    if (result.outcome === 'saved') this.#known.set(waiting.id, result.revision);
    if (result.outcome === 'conflict') this.#disputed.add(waiting.id);
    else this.#waiting = null;
    this.#onresult(waiting.id, result);
  }

  /** Another tab wrote this well: nothing is saved over it until the user says what to do. */
  dispute(id: string): void {
    this.#disputed.add(id);
  }

  /** This tab's version wins. */
  settleWithMine(id: string, theirs: KeptWell): void {
    this.#known.set(id, theirs.revision);
    this.#disputed.delete(id);
  }

  /** This tab's version goes elsewhere or is dropped. */
  settleWithTheirs(theirs: KeptWell): void {
    if (this.#waiting?.id === theirs.id) this.#waiting = null;
    this.opened(theirs);
  }
}
