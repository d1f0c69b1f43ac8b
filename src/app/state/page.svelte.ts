/**
 * What the page is made of, put together once: the shelf, the settings, the voice, and the workspace as soon as it is here.
 * Only what the start page needs is loaded at first; the model and the drawing come while it is read.
 */
import type { Problem } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import type { Report, ReportReading } from '../start/reportPlan.ts';
import { Announcer } from './announcer.svelte.ts';
import { Autosave } from './autosave.ts';
import { Drafts } from './drafts.ts';
import { Settings } from './settings.svelte.ts';
import { Shelf, type KeptWell, type ShelfEntry } from './shelf.ts';
import { openStore } from './store.ts';
import type { Workspace } from './workspace.svelte.ts';

/** A file or a kept well that could not be read: what it was, what is wrong, and what was kept. */
export interface Unreadable {
  readonly what: string;
  readonly problems: readonly string[];
  readonly kept: string;
}

type Bench = typeof import('./bench.ts');

export class Page {
  readonly #store = openStore();
  readonly settings = new Settings(this.#store);
  readonly announcer = new Announcer();
  readonly shelf = new Shelf(this.#store, crypto.randomUUID());
  readonly autosave: Autosave;
  readonly drafts = new Drafts(this.#store, (kept) => (this.testKept = kept));

  /** Null until the model is loaded. */
  workspace = $state.raw<Workspace | null>(null);
  /** A well is being fetched or read. */
  busy = $state(false);
  /** The wells kept on this device. */
  kept = $state.raw<readonly ShelfEntry[]>([]);
  /** Another tab's version of the well on the desk. */
  conflict = $state.raw<KeptWell | null>(null);
  unreadable = $state.raw<Unreadable | null>(null);
  /** False once a save was refused, or where nothing can be kept. */
  saving = $state(this.#store.lasting);
  /** False while a pumping test that is being typed cannot be kept. */
  testKept = $state(true);
  #bench: Promise<Bench> | null = null;
  /** The plan that the shelf holds. */
  #shelved: Plan | null = null;

  constructor() {
    this.autosave = new Autosave(this.shelf, (_, result) => {
      if (result.outcome === 'conflict') this.conflict = result.theirs;
      if (result.outcome === 'refused') this.saving = false;
      if (result.outcome === 'saved') this.kept = this.shelf.list();
    });
    this.kept = this.shelf.list();
    const last = this.shelf.last();
    if (last !== null) void this.#resume(last);
  }

  /** Fetches the heavy half, once. */
  load(): Promise<Bench> {
    this.#bench ??= import('./bench.ts').then((bench) => {
      this.workspace = new bench.Workspace(this.settings, this.announcer, this.drafts, new bench.OwnPumps(this.#store));
      return bench;
    });
    return this.#bench;
  }

  async #resume(last: KeptWell): Promise<void> {
    this.busy = true;
    const plan = await this.#readKept(last);
    this.busy = false;
    if (plan !== null) this.workspace?.resume({ id: last.id, plan });
  }

  /** To be called whenever the desk changes. */
  keep(): void {
    if (this.workspace === null) return;
    const { id, plan } = this.workspace.desk;
    if (id === null || plan === null) {
      // The empty desk that a page begins with must not make it forget the well it is about to resume.
      if (this.workspace.history.past.length > 0) this.shelf.rememberOpen(null);
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
    this.workspace?.open({ id: crypto.randomUUID(), plan }, name);
  }

  async openKept(id: string): Promise<void> {
    const kept = this.shelf.load(id);
    if (kept === null) return;
    this.autosave.flush();
    const plan = await this.#readKept(kept);
    if (plan === null) return;
    this.unreadable = null;
    this.conflict = null;
    this.shelf.rememberOpen(id);
    this.workspace?.open({ id, plan }, `Open ${kept.title || 'a well without a name'}`);
  }

  /** @param asked  fields that were asked for already: what may stay empty then does */
  async openReport(report: Report, asked: readonly string[]): Promise<ReportReading> {
    const reading = (await this.load()).planFromReport(report, asked);
    if (reading.ok) this.openNew(reading.plan, 'Start from a report');
    return reading;
  }

  /** @param file  a name under samples/ */
  async openSample(file: string, title: string): Promise<void> {
    const [text] = await Promise.all([fetchText(`./samples/${file}.json`), this.load()]);
    if (text === null)
      this.unreadable = {
        what: title,
        problems: ['The sample could not be fetched.'],
        kept: 'What was on the page is still here.',
      };
    else await this.openText(text, title, `Open the sample ${title}`);
  }

  async openFile(file: File): Promise<void> {
    await this.openText(await file.text(), file.name, `Open ${file.name}`);
  }

  async openText(text: string, what: string, name: string): Promise<void> {
    const { readPlanText } = await this.load();
    const reading = readPlanText(text);
    if (reading.ok) this.openNew(reading.plan, name);
    else await this.#refuse(what, reading.problems, 'What was on the page is still here, and the file is untouched.');
  }

  /** The empty desk with its ways to start. */
  clear(): void {
    this.autosave.flush();
    this.workspace?.open({ id: null, plan: null }, 'Start another well');
  }

  forget(id: string): void {
    this.shelf.remove(id);
    this.drafts.forget(id);
    this.kept = this.shelf.list();
  }

  /** Another tab changed something on the shelf. */
  noticeOtherTab(key: string | null): void {
    this.kept = this.shelf.list();
    const id = Shelf.idOf(key);
    if (id === null || id !== this.workspace?.desk.id) return;
    const theirs = this.shelf.load(id);
    if (theirs === null) return;
    this.autosave.dispute(id);
    this.conflict = theirs;
  }

  keepMine(): void {
    const plan = this.workspace?.desk.plan ?? null;
    if (this.conflict === null || plan === null) return;
    const { id } = this.conflict;
    this.autosave.settleWithMine(id, this.shelf.load(id) ?? this.conflict);
    this.autosave.schedule(id, plan);
    this.autosave.flush();
    this.conflict = null;
  }

  async takeTheirs(): Promise<void> {
    if (this.conflict === null) return;
    const theirs = this.shelf.load(this.conflict.id) ?? this.conflict;
    const plan = await this.#readKept(theirs);
    if (plan === null) return;
    this.autosave.settleWithTheirs(theirs);
    this.conflict = null;
    this.workspace?.open({ id: theirs.id, plan }, 'Take the version of the other tab');
  }

  /** Mine goes on under an id of its own; theirs stays. */
  keepBoth(): void {
    if (this.conflict === null) return;
    const plan = this.workspace?.desk.plan ?? null;
    this.autosave.settleWithTheirs(this.shelf.load(this.conflict.id) ?? this.conflict);
    this.conflict = null;
    if (plan === null) return;
    const id = crypto.randomUUID();
    this.drafts.copy(this.workspace?.desk.id ?? id, id);
    this.workspace?.rename(id);
    this.autosave.schedule(id, plan);
    this.autosave.flush();
  }

  /** The page is left: nothing may be lost, not even with a conflict undecided. */
  leave(): void {
    if (this.conflict !== null) this.keepBoth();
    this.autosave.flush();
  }

  async #readKept(kept: KeptWell): Promise<Plan | null> {
    const { readPlan } = await this.load();
    const reading = readPlan(kept.plan);
    if (!reading.ok) {
      await this.#refuse(kept.title || 'The kept well', reading.problems, 'It stays on this device as it is.');
      return null;
    }
    this.autosave.opened(kept);
    this.#shelved = reading.plan;
    return reading.plan;
  }

  async #refuse(what: string, problems: readonly Problem[], kept: string): Promise<void> {
    const { sayProblem } = await this.load();
    this.unreadable = { what, problems: problems.map(sayProblem), kept };
    this.announcer.say(`${what} could not be opened.`);
  }
}

async function fetchText(address: string): Promise<string | null> {
  try {
    const answer = await fetch(address);
    return answer.ok ? await answer.text() : null;
  } catch (fault) {
    console.info(`wellcut: ${address} could not be fetched`, fault);
    return null;
  }
}
