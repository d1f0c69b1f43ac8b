/** What the page is made of, put together once: the desk, the shelf, the settings, the voice. */
import type { Plan } from '../../model/plan/schema.ts';
import { readPlan, readPlanText, sayProblem, type Problem } from '../../model/plan/readPlan.ts';
import { Announcer } from './announcer.svelte.ts';
import { Autosave } from './autosave.ts';
import { Settings } from './settings.svelte.ts';
import { Shelf, type KeptWell, type ShelfEntry } from './shelf.ts';
import { openStore } from './store.ts';
import { Workspace } from './workspace.svelte.ts';

/** A file or a kept well that could not be read: what it was, what is wrong, and what was kept. */
export interface Unreadable {
  readonly what: string;
  readonly problems: readonly string[];
  readonly kept: string;
}

export class Page {
  readonly #store = openStore();
  readonly settings = new Settings(this.#store);
  readonly announcer = new Announcer();
  readonly workspace = new Workspace(this.settings, this.announcer);
  readonly shelf = new Shelf(this.#store, crypto.randomUUID());
  readonly autosave: Autosave;

  /** The wells kept on this device. */
  kept = $state.raw<readonly ShelfEntry[]>([]);
  /** Another tab's version of the well on the desk. */
  conflict = $state.raw<KeptWell | null>(null);
  unreadable = $state.raw<Unreadable | null>(null);
  /** False once a save was refused, or where nothing can be kept. */
  saving = $state(this.#store.lasting);
  /** The plan that the shelf holds. */
  #shelved: Plan | null = null;

  constructor() {
    this.autosave = new Autosave(this.shelf, (_, result) => {
      if (result.outcome === 'conflict') this.conflict = result.theirs;
      if (result.outcome === 'refused') this.saving = false;
      if (result.outcome === 'saved') this.kept = this.shelf.list();
    });
    this.kept = this.shelf.list();
    this.#resume();
  }

  #resume(): void {
    const last = this.shelf.last();
    if (last === null) return;
    const plan = this.#readKept(last);
    if (plan !== null) this.workspace.resume({ id: last.id, plan });
  }

  /** To be called whenever the desk changes. */
  keep(): void {
    const { id, plan } = this.workspace.desk;
    if (id === null || plan === null) {
      this.shelf.rememberOpen(null);
      return;
    }
    if (plan === this.#shelved) return;
    this.#shelved = plan;
    this.autosave.schedule(id, plan);
  }

  /** A plan that is new on this device. */
  openNew(plan: Plan, name: string): void {
    this.unreadable = null;
    this.autosave.flush();
    this.workspace.open({ id: crypto.randomUUID(), plan }, name);
  }

  openKept(id: string): void {
    const kept = this.shelf.load(id);
    if (kept === null) return;
    this.autosave.flush();
    const plan = this.#readKept(kept);
    if (plan === null) return;
    this.unreadable = null;
    this.conflict = null;
    this.shelf.rememberOpen(id);
    this.workspace.open({ id, plan }, `Open ${kept.title || 'a well without a name'}`);
  }

  /** The empty desk with its three ways to start. */
  clear(): void {
    this.autosave.flush();
    this.workspace.open({ id: null, plan: null }, 'Start another well');
  }

  forget(id: string): void {
    this.shelf.remove(id);
    this.kept = this.shelf.list();
  }

  async openFile(file: File): Promise<void> {
    const reading = readPlanText(await file.text());
    if (reading.ok) this.openNew(reading.plan, `Open ${file.name}`);
    else this.#refuse(file.name, reading.problems, 'What was on the page is still here, and the file is untouched.');
  }

  /** Another tab changed something on the shelf. */
  noticeOtherTab(key: string | null): void {
    this.kept = this.shelf.list();
    const id = Shelf.idOf(key);
    if (id === null || id !== this.workspace.desk.id) return;
    const theirs = this.shelf.load(id);
    if (theirs === null) return;
    this.autosave.dispute(id);
    this.conflict = theirs;
  }

  keepMine(): void {
    const { conflict } = this;
    const { plan } = this.workspace.desk;
    if (conflict === null || plan === null) return;
    this.autosave.settleWithMine(conflict.id, this.shelf.load(conflict.id) ?? conflict);
    this.autosave.schedule(conflict.id, plan);
    this.autosave.flush();
    this.conflict = null;
  }

  takeTheirs(): void {
    if (this.conflict === null) return;
    const theirs = this.shelf.load(this.conflict.id) ?? this.conflict;
    const plan = this.#readKept(theirs);
    if (plan === null) return;
    this.autosave.settleWithTheirs(theirs);
    this.conflict = null;
    this.workspace.open({ id: theirs.id, plan }, 'Take the version of the other tab');
  }

  /** Mine goes on under an id of its own; theirs stays. */
  keepBoth(): void {
    if (this.conflict === null) return;
    const theirs = this.shelf.load(this.conflict.id) ?? this.conflict;
    const { plan } = this.workspace.desk;
    this.autosave.settleWithTheirs(theirs);
    this.conflict = null;
    const id = crypto.randomUUID();
    this.workspace.rename(id);
    if (plan !== null) this.autosave.schedule(id, plan);
    this.autosave.flush();
  }

  /** The page is hidden or left: nothing may be lost, not even an undecided conflict. */
  leave(): void {
    if (this.conflict !== null) this.keepBoth();
    this.autosave.flush();
  }

  #readKept(kept: KeptWell): Plan | null {
    const reading = readPlan(kept.plan);
    if (!reading.ok) {
      this.#refuse(kept.title || 'The kept well', reading.problems, 'It stays on this device as it is.');
      return null;
    }
    this.autosave.opened(kept);
    this.#shelved = reading.plan;
    return reading.plan;
  }

  #refuse(what: string, problems: readonly Problem[], kept: string): void {
    this.unreadable = { what, problems: problems.map(sayProblem), kept };
    this.announcer.say(`${what} could not be opened.`);
  }
}
