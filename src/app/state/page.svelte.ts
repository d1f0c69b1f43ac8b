/**
 * What the page is made of, put together once: the wells kept on this device, the settings, the voice, and the workspace
 * as soon as it is here. Only what the start page needs is loaded at first; the model and the drawing come while it is read.
 */
import type { Problem } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import type { FiledWells } from '../keeping/allWells.ts';
import { openRooms } from '../keeping/database.ts';
import { Drafts, NO_WELL } from '../keeping/drafts.ts';
import { isFull, Keeper, type Content, type Trouble } from '../keeping/keeper.ts';
import { deskHistory, NO_STEPS, readSteps, type KeptHistory } from '../keeping/keptHistory.ts';
import { textOf, type WellEntry, type Written } from '../keeping/keptWell.ts';
import { leave, takeInLeft } from '../keeping/lastMoment.ts';
import { newId } from '../keeping/newId.ts';
import { OnHand } from '../keeping/onHand.ts';
import { OpeningRooms } from '../keeping/rooms.ts';
import { Tabs } from '../keeping/tabs.ts';
import { takeOver } from '../keeping/takeOver.ts';
import { goesOn, loadNewest, keepOnlyMine, keepOnlyTheirs, type Conflict } from '../keeping/twoVersions.ts';
import { inOrder, Wells, type LoadedWell } from '../keeping/wells.ts';
import { isLink } from '../../link/isLink.ts';
import type { Report } from '../start/report.ts';
import type { ReportReading } from '../start/reportPlan.ts';
import { Announcer } from './announcer.svelte.ts';
import { Settings } from './settings.svelte.ts';
import { openStore, openTabStore } from './store.ts';
import type { Door, Place } from './trail.ts';
import type { Workspace } from './workspace.svelte.ts';

/** A file or a kept well that could not be read: what it was, what is wrong, and what was kept. */
export interface Unreadable {
  readonly what: string;
  readonly problems: readonly string[];
  readonly kept: string;
  /** What stands there, to be saved as a file; null where the reader has it already. */
  readonly text: string | null;
}

/** What is not kept, and since when (milliseconds since 1970). */
export interface Unkept {
  readonly trouble: Trouble | 'nothing';
  readonly since: number;
}

type Bench = typeof import('./bench.ts');

/** Where a tab remembers what lies on its desk: the id of a well, or a sample that was not changed. */
const DESK = 'wellcut/desk';
const SAMPLE = 'sample/';
/** Where the device remembers, at once and without a promise, that a well will come. */
const OPEN = 'wellcut/open';
/** Milliseconds that the start page waits for a well that this tab had; a slow database does not hold it up for longer. */
const PATIENCE = 1500;
/** Milliseconds between two looks at a level that is being dragged. */
const DRAG_PACE = 250;
const HERE = 'What was on the page is still here.';

export class Page {
  readonly #store = openStore();
  readonly #tabStore = openTabStore();
  readonly #tab = newId();
  readonly #rooms = new OpeningRooms(openRooms());
  readonly #wells = new Wells(this.#rooms);
  readonly #tabs = new Tabs((word) => {
    if (word.kind === 'pumps') void this.workspace?.pumps.open();
    else void this.#noticeOtherTab(word.id);
  });
  readonly settings = new Settings(this.#store);
  readonly announcer = new Announcer();
  readonly drafts = new Drafts(
    this.#rooms,
    this.#tabStore,
    (kept) => (this.typedKept = kept),
    (well) => this.#onHand.samples.has(well) && this.keepNow(well),
  );
  readonly keeper = new Keeper(this.#wells, {
    onwritten: (written, from) => this.#written(written, from),
    ontrouble: (trouble) => this.#tell(trouble),
  });

  /** Null until the model is loaded. */
  workspace = $state.raw<Workspace | null>(null);
  /** A well is being fetched or read. */
  busy = $state(false);
  /** The wells kept on this device, newest first. */
  kept = $state.raw<readonly WellEntry[]>([]);
  /** Wells that changed here and are not written yet, where the browser refuses. */
  unwritten = $state.raw<readonly WellEntry[]>([]);
  conflicts = $state.raw<readonly Conflict[]>([]);
  unreadable = $state.raw<Unreadable | null>(null);
  /** Null: all is kept. */
  unkept = $state.raw<Unkept | null>(null);
  /** False while something half typed cannot be kept. */
  typedKept = $state(true);
  /** The browser had thrown out what was kept; what lies on the desk was kept anew. */
  evicted = $state(false);
  door = $state<Door>('doors');
  /** One sentence beside a choice that could not be carried out. */
  choiceWords = $state('');

  #bench: Promise<Bench> | null = null;
  #benchHere: Bench | null = null;
  #onDesk: string | null = null;
  readonly #onHand = new OnHand();
  #remembered: string | null = null;
  #dragTimer: ReturnType<typeof setInterval> | undefined;

  /** When what is kept has been read, or could not be. */
  readonly opened: Promise<void>;

  constructor() {
    const desk = this.#tabStore.get(DESK);
    this.busy = desk === null ? this.#store.get(OPEN) === 'yes' : desk !== '';
    if (this.busy) setTimeout(() => (this.busy = false), PATIENCE);
    this.opened = this.#begin(desk);
    // Into a page that is open already.
    window.addEventListener('hashchange', () => void this.opened.then(() => this.#openFromAddress()));
  }

  /** The two versions that lie open here; null where there is nothing to choose. */
  readonly conflict: Conflict | null = $derived.by(() => {
    const id = this.workspace?.desk.id ?? null;
    return this.conflicts.find(({ mine, theirs }) => mine === id || theirs.id === id) ?? null;
  });

  /** Fetches the heavy half, once. */
  load(): Promise<Bench> {
    this.#bench ??= import('./bench.ts').then((bench) => {
      const pumps = new bench.OwnPumps(this.#rooms, () => this.#tabs.say({ kind: 'pumps' }));
      void pumps.open().catch(quietly);
      this.#benchHere = bench;
      void this.#refresh().catch(quietly);
      this.workspace = new bench.Workspace(this.settings, this.announcer, this.drafts, pumps);
      return bench;
    });
    return this.#bench;
  }

  /** @param desk  what this tab had on its desk; null for a tab that is new */
  async #begin(desk: string | null): Promise<void> {
    try {
      await takeInLeft(this.#store, this.#rooms, this.#wells);
      await takeOver(this.#store, this.#rooms, this.#wells);
    } catch (fault) {
      // It stays where it was, for the next page; what can be read is shown.
      console.info('wellcut: what was kept before could not be taken over', fault);
      this.#tell(isFull(fault) ? 'full' : 'refused');
    }
    try {
      await Promise.all([this.drafts.open(), this.#refresh()]);
      if (!this.#rooms.lasting) this.unkept = { trouble: 'nothing', since: Date.now() };
      if (!(await this.#openFromAddress())) await this.#resume(desk);
    } catch (fault) {
      console.info('wellcut: what is kept could not be read', fault);
      this.#tell('refused');
    }
    this.busy = false;
    void this.#wells.clearOut(Date.now()).catch(quietly);
  }

  async #resume(desk: string | null): Promise<void> {
    const id = desk ?? (await this.#wells.last());
    if (id === null || id === '') return;
    if (id.startsWith(SAMPLE)) {
      const [file, title] = JSON.parse(id.slice(SAMPLE.length)) as [string, string];
      if (this.#isFresh()) await (isLink(file) ? this.openLink(file) : this.openSample(file, title));
      return;
    }
    const loaded = await this.#wells.load(id);
    // Taken away in another tab, or gone with all that the browser kept.
    if (loaded === null || loaded.well.takenAway !== null) return;
    const read = await this.#read(loaded);
    // Whoever has begun with something else in the meantime keeps that.
    if (read === null || this.workspace === null || !this.#isFresh()) return;
    this.workspace.resume(deskHistory(id, read.plan, read.steps));
    this.#comeBack(id);
  }

  #isFresh(): boolean {
    const history = this.workspace?.history;
    const begun = this.drafts.isFresh(NO_WELL, 'report');
    return !begun && (history === undefined || (history.present.plan === null && history.past.length === 0));
  }

  /** What was in hand when the page ended: a level in mid-drag, a field beside a level. */
  #comeBack(id: string): void {
    const dragged = this.drafts.load(id, 'drag');
    if (dragged !== null && this.workspace !== null) {
      this.drafts.forget(id, 'drag');
      const reading = this.#benchHere?.readPlanText(dragged);
      if (reading?.ok === true) this.workspace.edit('Move a level', reading.plan);
    }
    const field = this.drafts.names(id).find((name) => name.startsWith('chip '));
    if (field !== undefined && this.workspace !== null) this.workspace.selected = field.slice('chip '.length);
  }

  /** To be called whenever the desk changes. */
  keep(): void {
    if (this.workspace === null) return;
    const { id, plan } = this.workspace.desk;
    if (id === null || plan === null) {
      // The empty desk that a page begins with must not make it forget the well it is about to resume.
      if (this.workspace.history.past.length > 0) this.#rememberOpen(null);
      return;
    }
    this.#rememberOpen(id);
    const came = id !== this.#onDesk;
    this.#onDesk = id;
    if (plan !== this.#onHand.plans.get(id)) this.keepNow(id);
    else if (came) void this.#cameBack(id);
  }

  /** A step back, or forth, has brought another well. */
  async #cameBack(id: string): Promise<void> {
    if (this.kept.some((entry) => entry.id === id && entry.takenAway !== null)) await this.bringBack(id);
    await this.#follow(id);
  }

  /** Keeps the well on the desk though it did not change: something is being typed beside it. */
  keepNow(id: string): void {
    const { workspace } = this;
    const plan = workspace?.desk.plan ?? null;
    if (workspace === null || plan === null || workspace.desk.id !== id) return;
    this.#onHand.plans.set(id, plan);
    this.#onHand.samples.delete(id);
    this.#tabStore.set(DESK, id);
    this.keeper.change(id, { plan, history: workspace.stepsToKeep() });
  }

  /** To be called when a level is taken in hand or let go. */
  watchDrag(held: boolean): void {
    clearInterval(this.#dragTimer);
    const { workspace } = this;
    const id = workspace?.desk.id ?? null;
    if (workspace === null || id === null) return;
    if (!held) {
      this.drafts.forget(id, 'drag');
      // What another tab did meanwhile had to wait.
      void this.#follow(id);
      return;
    }
    let last: Plan | null = null;
    this.#dragTimer = setInterval(() => {
      const { preview, held } = workspace;
      // A fact is not changed before somebody has said so, and a page that ended cannot ask any more.
      if (preview === null || preview === last || held === null || workspace.factMovedBy(held.handle) !== null) return;
      last = preview;
      this.drafts.keep(id, 'drag', JSON.stringify(preview));
    }, DRAG_PACE);
  }

  /** A plan that is new on this device. */
  openNew(plan: Plan, name: string): void {
    this.#put(newId(), plan, name);
  }

  #put(id: string, plan: Plan, name: string): void {
    this.unreadable = null;
    this.workspace?.open({ id, plan }, name);
  }

  async openKept(id: string): Promise<void> {
    if (this.workspace?.desk.id === id) return;
    await this.load();
    const waiting = this.keeper.unwritten(id);
    const loaded = waiting === null ? await this.#try(() => loadNewest(this.#wells, this.keeper, id)) : null;
    if (waiting === null && loaded === null) return;
    const read = waiting === null ? loaded && (await this.#read(loaded)) : asWritten(waiting);
    if (read === null || this.workspace === null || this.workspace.desk.id === id) return;
    this.unreadable = null;
    this.choiceWords = '';
    if (loaded !== null && loaded.well.takenAway !== null) await this.bringBack(id);
    if (this.#isFresh()) {
      this.workspace.resume(deskHistory(id, read.plan, read.steps));
      this.workspace.arrive();
    } else
      this.workspace.open({ id, plan: read.plan }, `Open ${read.plan.title ?? 'a well without a name'}`, read.steps);
    this.#comeBack(id);
  }

  /** A look at a well in the list, which opens nothing; null where there is no plan to read. */
  async planOfKept(id: string): Promise<Plan | null> {
    const { readPlan } = await this.load();
    const reading = readPlan(this.keeper.unwritten(id)?.plan ?? (await this.#wells.look(id))?.plan);
    return reading.ok ? reading.plan : null;
  }

  /** @param asked  fields that were asked for already: what may stay empty then does */
  async openReport(report: Report, asked: readonly string[]): Promise<ReportReading> {
    const reading = (await this.load()).planFromReport(report, asked);
    if (!reading.ok) return reading;
    // A step back leads to the report as it was typed.
    this.drafts.keep(NO_WELL, 'drawn', 'yes');
    this.openNew(reading.plan, 'Start from a report');
    return reading;
  }

  /**
   * A sample is looked at without being kept, until something is changed or typed.
   *
   * @param file  a name under samples/
   */
  async openSample(file: string, title: string): Promise<void> {
    const [text, { readPlanText }] = await Promise.all([fetchText(`./samples/${file}.json`), this.load()]);
    if (text === null) {
      this.unreadable = {
        what: title,
        problems: ['The sample could not be fetched.'],
        kept: HERE,
        text: null,
      };
      return;
    }
    const reading = readPlanText(text);
    if (!reading.ok) return this.#refuse(title, reading.problems, HERE, null);
    this.#lookAt(reading.plan, [file, title], `Open the sample ${title}`);
  }

  /** A sample to look at before any is opened; null where it cannot be fetched or read. */
  async samplePlan(file: string): Promise<Plan | null> {
    const [text, { readPlanText }] = await Promise.all([fetchText(`./samples/${file}.json`), this.load()]);
    const reading = text === null ? null : readPlanText(text);
    return reading?.ok === true ? reading.plan : null;
  }

  /** Not kept until it is changed; after a reload it is looked at again. */
  #lookAt(plan: Plan, from: readonly [file: string, title: string], name: string): void {
    const id = newId();
    this.#onHand.plans.set(id, plan);
    this.#onHand.samples.set(id, from);
    this.#put(id, plan, name);
  }

  /**
   * A well that came in an address: looked at as a sample is, and kept once it is changed.
   *
   * @param fragment  with its "#"
   */
  async openLink(fragment: string): Promise<void> {
    const [{ planInLink, sayCame }] = await Promise.all([import('../keeping/links.ts'), this.load()]);
    const read = planInLink(fragment);
    if (!read.ok) return this.#refuse('The link', read.problems, HERE, null);
    const { title = '' } = read.plan;
    this.#lookAt(read.plan, [fragment, title], `Open the link to ${title}`);
    this.announcer.show(sayCame(title));
  }

  /** Takes the well out of the page's address, so that it opens once and no edit stands beside an old address. */
  async #openFromAddress(): Promise<boolean> {
    const { hash, pathname, search } = window.location;
    if (!isLink(hash)) return false;
    window.history.replaceState(window.history.state, '', pathname + search);
    await this.openLink(hash);
    return true;
  }

  async openFile(file: File): Promise<void> {
    const { textOfPlan, MOST_BYTES } = await this.load();
    const bytes = await firstBytes(file, MOST_BYTES + 1);
    if (bytes === null) {
      const problem = 'It may be a folder, or it is no longer there: choose the file again.';
      this.unreadable = { what: file.name, problems: [problem], kept: UNTOUCHED, text: null };
      this.announcer.say(`${file.name} could not be opened.`);
      return;
    }
    const read = textOfPlan(bytes);
    if (read.ok) await this.openText(read.text, file.name, `Open ${file.name}`);
    else await this.#refuse(file.name, [read.problem], UNTOUCHED, null);
  }

  /** Of several only the first is opened, and that is said. */
  async openFiles(files: readonly File[]): Promise<void> {
    const [first, ...others] = files;
    if (first === undefined) return;
    await this.openFile(first);
    if (others.length > 0) this.announcer.show(`Only ${first.name} was looked at: open one file at a time.`);
  }

  async openText(text: string, what: string, name: string): Promise<void> {
    const { readFile, readPlan, readPlanText } = await this.load();
    const filed = readFile(text, (plan) => readPlan(plan).ok, Date.now());
    if (filed !== null) return this.#putInAll(filed, what);
    const reading = readPlanText(text);
    if (reading.ok) this.openNew(reading.plan, name);
    else await this.#refuse(what, reading.problems, UNTOUCHED, null);
  }

  /** All wells of this device as one file. */
  async textOfAll(): Promise<string | null> {
    await this.keeper.settled();
    const { fileOf } = await this.load();
    const wells = await this.#try(() => this.#wells.all());
    return wells === null ? null : fileOf(wells);
  }

  /** Wells of a file with many: each is new in the list unless it stands there as it is, and the desk stays as it was. */
  async #putInAll({ wells, unread }: FiledWells, what: string): Promise<void> {
    await this.keeper.settled();
    const { notThere } = await this.load();
    const fresh = notThere(wells, (await this.#try(() => this.#wells.all())) ?? []);
    const stood = wells.length - fresh.length;
    let count = stood;
    for (const { plan, saved } of fresh)
      if ((await this.#try(() => this.#wells.add(plan, saved ?? Date.now()))) !== null) count++;
    await this.#listAnew();
    const all = `${count} of ${wells.length + unread.length} wells of ${what} are now in the list.`;
    this.announcer.show(stood === 0 ? all : `${all} ${stood} stood there already.`);
    if (unread.length > 0)
      this.unreadable = {
        what: unread.join(', '),
        problems: ['This is no plan that can be read.'],
        kept: 'The file is untouched.',
        text: null,
      };
  }

  /** The same well once more, to be changed without changing the first. */
  async copy({ id, saved }: WellEntry): Promise<void> {
    const waiting = this.keeper.unwritten(id);
    const plan = waiting?.plan ?? (await this.#try(() => this.#wells.load(id)))?.well.plan;
    const reading = (await this.load()).readPlan(plan);
    if (!reading.ok) return this.openKept(id);
    const title = `${reading.plan.title ?? 'A well without a name'} (copy)`;
    // As old as the first, and under it: one that came over it would lie under a finger that taps twice.
    await this.#try(() => this.#wells.add({ ...reading.plan, title }, saved - 1));
    await this.#listAnew();
    this.announcer.say(`${title} is now in the list.`);
  }

  /** Another name for a well, wherever it stands; one that lies on the desk has a step for it. */
  async rename(entry: WellEntry, title: string): Promise<void> {
    const { workspace } = this;
    const desk = workspace?.desk;
    if (workspace !== null && desk?.id === entry.id && desk.plan !== null) {
      workspace.edit(`Name the well ${title}`, { ...desk.plan, title }, { say: () => `The well is called ${title}.` });
      await this.keeper.settled();
      return;
    }
    const { readPlan } = await this.load();
    const loaded = await this.#try(() => this.#wells.load(entry.id));
    const reading = loaded === null ? null : readPlan(loaded.well.plan);
    if (loaded === null || reading?.ok !== true) return;
    const { id, version } = loaded.well;
    const plan = { ...reading.plan, title };
    const history = this.#steps(loaded.history);
    const at = { id, version: newId(), on: [version], besideId: newId(), at: Date.now() };
    await this.#try(() => this.#wells.write({ ...at, plan, history }));
    await this.#listAnew();
    await this.#changed(id);
    this.announcer.say(`The well is called ${title}.`);
  }

  /** Wells came into the list and not on the desk. */
  async #listAnew(): Promise<void> {
    await this.#wells.rememberOpen(this.workspace?.desk.id ?? null).catch(quietly);
    await this.#refresh().catch(quietly);
    this.#tabs.say({ kind: 'well', id: '' });
  }

  /** The empty desk with its ways to start. */
  clear(): void {
    this.door = 'doors';
    if (this.drafts.load(NO_WELL, 'drawn') !== null) {
      // The report that became a well is done with; one that did not is still there.
      this.drafts.forget(NO_WELL, 'drawn');
      this.drafts.forget(NO_WELL, 'report');
    }
    this.workspace?.open({ id: null, plan: null }, 'Start another well');
  }

  /** Where the browser's own back and forth lead: to a well that was on the desk, or to a step of the start page. */
  async goTo({ well, door }: Place): Promise<void> {
    this.door = door;
    const { workspace } = this;
    if (well === (workspace?.desk.id ?? null)) return;
    const plan = well === null ? null : (this.#onHand.plans.get(well) ?? null);
    if (well === null) workspace?.open({ id: null, plan: null }, 'Back to the start');
    else if (plan !== null && this.#onHand.samples.has(well))
      workspace?.open({ id: well, plan }, `Back to ${plan.title ?? 'the well'}`);
    else await this.openKept(well);
  }

  /** Out of the list, and for thirty days among what was taken away. */
  async takeAway(entry: WellEntry): Promise<boolean> {
    const away = await this.#try(() => this.#wells.takeAway(entry.id, entry.version, Date.now()));
    await this.#changed(entry.id);
    if (away === true)
      this.announcer.say(`${entry.title || 'A well'} is taken away. Bring it back within thirty days.`);
    return away === true;
  }

  async bringBack(id: string): Promise<boolean> {
    const back = await this.#try(() => this.#wells.bringBack(id));
    await this.#changed(id);
    return back === true;
  }

  /** Both versions stay in the list. */
  keepBoth({ mine }: Conflict): void {
    this.#settle(mine);
  }

  /** The other tab's version is taken away, if it is still the one that was named. */
  async keepMine({ mine, theirs }: Conflict): Promise<void> {
    if (this.workspace?.desk.id === theirs.id) await this.openKept(mine);
    await this.#carryOut(mine, theirs.id, () => keepOnlyMine(this.#wells, { mine, theirs }, Date.now()));
  }

  /** This tab's version is taken away, and the other comes on the desk. */
  async takeTheirs(conflict: Conflict): Promise<void> {
    const { mine, theirs } = conflict;
    if (this.workspace?.desk.id === mine) await this.openKept(theirs.id);
    // The other cannot be read: this one is all there is.
    if (this.workspace?.desk.id === mine) return;
    await this.#carryOut(mine, mine, () => keepOnlyTheirs(this.#wells, this.keeper, conflict, Date.now()));
  }

  async #carryOut(mine: string, away: string, choice: () => Promise<boolean>): Promise<void> {
    const done = await this.#try(choice);
    void this.#changed(away);
    if (done === true) this.#settle(mine);
    else if (done === false) this.choiceWords = 'It has changed again in the meantime. Nothing was taken away.';
  }

  #settle(mine: string): void {
    this.choiceWords = '';
    this.conflicts = this.conflicts.filter((each) => each.mine !== mine);
  }

  /** The page is left: what the database cannot take any more goes where it can be put at once. */
  leave(): void {
    leave(this.#store, this.#tab, this.keeper.lastWritings(), this.drafts.lastTyped());
    this.keeper.flush();
    this.drafts.flush();
  }

  /** The page is hidden, or is seen again. */
  async turn(seen: boolean): Promise<void> {
    if (!seen) {
      this.keeper.flush();
      this.drafts.flush();
      return;
    }
    // A tab that slept may have missed what others said.
    await this.#refresh().catch(quietly);
    const id = this.workspace?.desk.id ?? null;
    if (id !== null) await this.#follow(id);
  }

  async #noticeOtherTab(id: string): Promise<void> {
    await this.#refresh().catch(quietly);
    if (id === this.workspace?.desk.id) await this.#follow(id);
  }

  /** Shows what another tab has written of the well on the desk, unless something of it is in hand or not written yet. */
  async #follow(id: string): Promise<void> {
    if (this.keeper.version(id) === null) return;
    const loaded = await loadNewest(this.#wells, this.keeper, id).catch(quietly);
    const { workspace } = this;
    if (loaded == null || loaded.well.raw !== null || workspace === null) return;
    const { plan } = workspace.desk;
    const inHand = workspace.desk.id !== id || workspace.held !== null || plan !== this.#onHand.plans.get(id);
    if (inHand || !goesOn(this.keeper, loaded)) return;
    const reading = this.#benchHere?.readPlan(loaded.well.plan);
    if (reading?.ok !== true) return;
    this.keeper.opened(loaded.well);
    this.#onHand.plans.set(id, reading.plan);
    workspace.follow(id, reading.plan, this.#steps(loaded.history));
    this.announcer.say('Changed in another tab.');
  }

  #written(written: Written, from: string): void {
    const { entry } = written;
    if (written.outcome === 'beside') {
      this.#onHand.rename(from, entry.id);
      this.drafts.copy(from, entry.id);
      if (this.#tabStore.get(DESK) === from) this.#tabStore.set(DESK, entry.id);
      if (this.#remembered === from) this.#remembered = entry.id;
      this.workspace?.rename(from, entry.id);
      const mended = this.conflicts.filter(({ mine }) => mine !== from);
      this.conflicts = [...mended, { mine: entry.id, theirs: written.theirs }];
      this.announcer.say('This well was changed in another tab too. Both are kept.');
    } else if (written.again) {
      this.evicted = true;
      void this.#refresh().catch(quietly);
    }
    this.#worksAgain();
    this.kept = inOrder([entry, ...this.kept.filter(({ id }) => id !== entry.id)]);
    this.#tabs.say({ kind: 'well', id: entry.id });
  }

  /** This tab changed what stands in the list. */
  async #changed(id: string): Promise<void> {
    this.#tabs.say({ kind: 'well', id });
    await this.#refresh().catch(quietly);
  }

  async #refresh(): Promise<void> {
    const bench = this.#benchHere;
    this.kept = await this.#wells.list(bench === null ? undefined : (plan) => bench.readPlan(plan).ok);
    // A choice names the version that is shown with it.
    const among = (wanted: string): WellEntry | undefined =>
      this.kept.find(({ id, takenAway }) => id === wanted && takenAway === null);
    this.conflicts = this.conflicts.flatMap(({ mine, theirs }) => {
      const now = among(theirs.id);
      // Another tab has chosen meanwhile.
      return now === undefined || among(mine) === undefined ? [] : [{ mine, theirs: now }];
    });
  }

  #rememberOpen(id: string | null): void {
    const sample = id === null ? undefined : this.#onHand.samples.get(id);
    this.#tabStore.set(DESK, sample === undefined ? (id ?? '') : SAMPLE + JSON.stringify(sample));
    if (id === this.#remembered || sample !== undefined) return;
    this.#remembered = id;
    this.#store.set(OPEN, id === null ? 'no' : 'yes');
    void this.#wells.rememberOpen(id).catch(quietly);
  }

  /** What is kept of a well, as it stands there. */
  async textOfKept(id: string): Promise<string | null> {
    const loaded = await this.#try(() => this.#wells.load(id));
    return loaded === null ? null : (loaded.well.raw ?? textOf(loaded.well.plan));
  }

  #tell(trouble: Trouble | null): void {
    const waiting = trouble === null ? [] : this.keeper.unwrittenIds();
    this.unwritten = waiting.map((id) => ({
      id,
      title: this.keeper.unwritten(id)?.plan.title ?? '',
      place: this.keeper.unwritten(id)?.plan.place ?? '',
      saved: Date.now(),
      version: '',
      beside: null,
      takenAway: null,
      raw: null,
    }));
    if (this.unkept?.trouble === 'nothing') return;
    const since = this.unkept?.since ?? Date.now();
    this.unkept = trouble === null ? null : { trouble, since };
  }

  /** What was told of the browser is taken back. */
  #worksAgain(): void {
    if (this.unkept !== null && this.keeper.unwrittenIds().length === 0) this.#tell(null);
  }

  async #try<T>(work: () => Promise<T>): Promise<T | null> {
    try {
      const done = await work();
      this.#worksAgain();
      return done;
    } catch (fault) {
      console.info('wellcut: the list of wells could not be changed', fault);
      this.#tell(isFull(fault) ? 'full' : 'refused');
      return null;
    }
  }

  async #read({ well, history }: LoadedWell): Promise<{ plan: Plan; steps: KeptHistory } | null> {
    const bench = await this.load();
    const what = well.title || 'The kept well';
    const stays = 'It stays on this device as it is.';
    if (well.raw !== null) {
      this.unreadable = { what, problems: ['What is kept of it is no plan.'], kept: stays, text: well.raw };
      return null;
    }
    const reading = bench.readPlan(well.plan);
    if (!reading.ok) {
      await this.#refuse(what, reading.problems, stays, textOf(well.plan));
      return null;
    }
    if (!this.keeper.opened(well)) {
      // It was opened twice, and changed in between.
      const newer = this.keeper.unwritten(well.id);
      return newer === null ? null : asWritten(newer);
    }
    this.#onHand.plans.set(well.id, reading.plan);
    return { plan: reading.plan, steps: this.#steps(history) };
  }

  #steps(history: unknown): KeptHistory {
    const bench = this.#benchHere;
    return bench === null ? NO_STEPS : readSteps(history, (plan) => bench.readPlan(plan).ok);
  }

  async #refuse(what: string, problems: readonly Problem[], kept: string, text: string | null): Promise<void> {
    const { sayProblem } = await this.load();
    this.unreadable = { what, problems: problems.map(sayProblem), kept, text };
    this.announcer.say(`${what} could not be opened.`);
  }
}

const UNTOUCHED = 'What was on the page is still here, and the file is untouched.';

/** Null where the browser cannot read it. */
async function firstBytes(file: File, count: number): Promise<Uint8Array | null> {
  try {
    return new Uint8Array(await file.slice(0, count).arrayBuffer());
  } catch (fault) {
    console.info(`wellcut: ${file.name} cannot be read`, fault);
    return null;
  }
}

/** What is newer here than on the device. */
function asWritten({ plan, history }: Content): { plan: Plan; steps: KeptHistory } {
  return { plan, steps: history };
}

function quietly(fault: unknown): void {
  console.info('wellcut: the browser did not answer', fault);
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
