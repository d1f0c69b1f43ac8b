/**
 * Writes what changes in this tab: each edit at once, and where they come faster than the disk takes them, the newest
 * as soon as the one before is written. One write at a time; each names the version that it builds on.
 */
import type { Plan } from '../../model/plan/schema.ts';
import type { KeptHistory } from './keptHistory.ts';
import type { KeptWell, Writing, Written } from './keptWell.ts';
import { newId } from './newId.ts';

export interface Content {
  readonly plan: Plan;
  readonly history: KeptHistory;
}

/** Why something is not kept: no room, the browser refuses, or it has not answered yet. */
export type Trouble = 'full' | 'refused' | 'late';

/** It has its name before it is written: the same edit written by two hands is there once. */
interface Edit extends Content {
  readonly version: string;
}

export interface Hooks {
  /** A version is on the disk. `from` is the id it was written under: another, where it went beside another tab's. */
  readonly onwritten: (written: Written, from: string) => void;
  /** Null: all that changed is kept again. */
  readonly ontrouble: (trouble: Trouble | null) => void;
}

export interface Writes {
  write(writing: Writing): Promise<Written>;
}

/** Milliseconds between two writes, so that a key held down does not keep the disk busy. */
const PACE = 200;
/** Milliseconds after which a refused write is tried again by itself. */
const AGAIN = 3000;
/** Milliseconds after which a write without an answer is told. */
const LATE = 4000;
/** Writes without an answer that are remembered, for each well. */
const MOST_TRIED = 20;

export class Keeper {
  readonly #wells: Writes;
  readonly #hooks: Hooks;
  readonly #pace: number;
  readonly #clock: () => number;
  /** By id: the version that this tab read or wrote last. */
  readonly #kept = new Map<string, string>();
  /** By id: versions written since, of which no answer came: they may be there all the same. */
  readonly #tried = new Map<string, readonly string[]>();
  /** What is not written yet, by id, the oldest first. */
  readonly #waiting = new Map<string, Edit>();
  #writing: { readonly writing: Writing; readonly edit: Edit } | null = null;
  #round: Promise<void> | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #troubled = false;
  #changes = 0;
  /** When the last write began. */
  #begun = 0;

  constructor(wells: Writes, hooks: Hooks, options: { pace?: number; clock?: () => number } = {}) {
    this.#wells = wells;
    this.#hooks = hooks;
    this.#pace = options.pace ?? PACE;
    this.#clock = options.clock ?? Date.now;
  }

  /**
   * A well was read: what is written of it from now on builds on this version.
   *
   * @returns  false, and nothing is changed, where this tab has edits of it that were made on another version
   */
  opened({ id, version }: Pick<KeptWell, 'id' | 'version'>): boolean {
    if (!this.isClean(id)) return false;
    this.#builtOn(id, version);
    return true;
  }

  #builtOn(id: string, version: string): void {
    this.#kept.set(id, version);
    this.#tried.delete(id);
  }

  /** The version that this tab read or wrote last; null for a well that is new here. */
  version(id: string): string | null {
    return this.#kept.get(id) ?? null;
  }

  /** All that this tab changed of it is written. */
  isClean(id: string): boolean {
    return !this.#waiting.has(id) && this.#writing?.writing.id !== id;
  }

  /** What is newer here than on the disk. */
  unwritten(id: string): Content | null {
    return this.#waiting.get(id) ?? (this.#writing?.writing.id === id ? this.#writing.edit : null);
  }

  /** Counts every edit of this tab. */
  get changes(): number {
    return this.#changes;
  }

  unwrittenIds(): readonly string[] {
    return [...new Set([...this.#waiting.keys(), ...(this.#writing === null ? [] : [this.#writing.writing.id])])];
  }

  change(id: string, content: Content): void {
    this.#changes++;
    this.#waiting.set(id, { ...content, version: newId() });
    if (this.#troubled) this.flush();
    // A timer that runs is not put off: the longest wait is one pace.
    else if (this.#round === null && this.#timer === undefined) this.#wait(this.#untilNext());
  }

  /** Writes what waits without waiting any longer. */
  flush(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    if (this.#round === null) void this.#go();
  }

  /** When all is written, or refused. */
  async settled(): Promise<void> {
    this.flush();
    while (this.#round !== null) {
      await this.#round;
      if (this.#waiting.size > 0 && !this.#troubled) this.flush();
    }
  }

  /** What would be lost if the page ended now, as it would be written. */
  lastWritings(): readonly Writing[] {
    const waiting = [...this.#waiting].map(([id, edit]) => this.#writingOf(id, edit));
    const flying = this.#writing;
    return flying === null || this.#waiting.has(flying.writing.id) ? waiting : [flying.writing, ...waiting];
  }

  #go(): Promise<void> {
    this.#round ??= this.#writeNext().finally(() => {
      // Not before this round is over: the next one would be taken for it.
      this.#round = null;
      if (this.#waiting.size === 0) this.#tell(null);
      else this.#wait(this.#troubled ? AGAIN : this.#untilNext());
    });
    return this.#round;
  }

  async #writeNext(): Promise<void> {
    const [next] = this.#waiting;
    if (next === undefined) return;
    const [id, edit] = next;
    this.#waiting.delete(id);
    const writing = this.#writingOf(id, edit);
    this.#writing = { writing, edit };
    this.#tried.set(id, [...(this.#tried.get(id) ?? []), writing.version].slice(-MOST_TRIED));
    this.#begun = this.#clock();
    const late = setTimeout(() => this.#tell('late'), LATE);
    try {
      const written = await this.#wells.write(writing);
      this.#writing = null;
      this.#settle(id, writing, written);
    } catch (fault) {
      this.#writing = null;
      console.info('wellcut: a well could not be kept', fault);
      if (!this.#waiting.has(id)) this.#waiting.set(id, edit);
      this.#tell(isFull(fault) ? 'full' : 'refused');
    } finally {
      clearTimeout(late);
    }
  }

  #settle(id: string, { version }: Writing, written: Written): void {
    this.#tell(null);
    const { entry } = written;
    const again = written.outcome === 'kept' && written.again && this.#kept.has(id);
    this.#builtOn(entry.id, version);
    if (entry.id !== id) {
      // Another tab's version keeps the id. What was typed meanwhile belongs to this one.
      this.#kept.delete(id);
      this.#tried.delete(id);
      const newer = this.#waiting.get(id);
      this.#waiting.delete(id);
      if (newer !== undefined) this.#waiting.set(entry.id, newer);
    }
    this.#hooks.onwritten(written.outcome === 'kept' ? { ...written, again } : written, id);
  }

  /** The first edit after a pause waits for nothing. */
  #untilNext(): number {
    return Math.min(this.#pace, Math.max(0, this.#begun + this.#pace - this.#clock()));
  }

  #wait(milliseconds: number): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    if (milliseconds === 0) return void this.#go();
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      void this.#go();
    }, milliseconds);
  }

  #writingOf(id: string, { plan, history, version }: Edit): Writing {
    const kept = this.#kept.get(id);
    const on = [...(kept === undefined ? [] : [kept]), ...(this.#tried.get(id) ?? [])];
    return { id, version, on, at: this.#clock(), plan, history, besideId: newId() };
  }

  #tell(trouble: Trouble | null): void {
    if (trouble === null && !this.#troubled) return;
    this.#troubled = trouble !== null;
    this.#hooks.ontrouble(trouble);
  }
}

export function isFull(fault: unknown): boolean {
  return fault instanceof Error && fault.name === 'QuotaExceededError';
}
