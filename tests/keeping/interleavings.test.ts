/**
 * Two and three tabs of one browser that edit, switch, choose, close and are killed, while the database answers when it
 * likes: every version that was reported kept is listed, or is an ancestor of one that is.
 */
import fc from 'fast-check';
import { beforeEach, expect, test, vi } from 'vitest';
import { Keeper } from '../../src/app/keeping/keeper.ts';
import { NO_STEPS } from '../../src/app/keeping/keptHistory.ts';
import { leave, takeInLeft } from '../../src/app/keeping/lastMoment.ts';
import { memoryRooms, type Rooms } from '../../src/app/keeping/rooms.ts';
import { goesOn, keepOnlyMine, keepOnlyTheirs, loadNewest, type Conflict } from '../../src/app/keeping/twoVersions.ts';
import { Wells } from '../../src/app/keeping/wells.ts';
import { memoryStore, type Store } from '../../src/app/state/store.ts';
import type { Plan } from '../../src/model/plan/schema.ts';

// Refusals are said there, and here they are made by the thousand.
beforeEach(() => void vi.spyOn(console, 'info').mockImplementation(() => {}));

/** What happens to the next transaction: it is carried out, refused, or carried out without its answer. */
type Fate = 'good' | 'refused' | 'unanswered';

/** Everything that is asked of the browser waits until the scheduler lets it through, there and back. */
function slowRooms(inner: Rooms, wait: () => Promise<void>, fate: () => Fate): Rooms {
  const through = async <T>(work: () => Promise<T>): Promise<T> => {
    await wait();
    const answer = await work();
    await wait();
    return answer;
  };
  return {
    lasting: true,
    get: (room, key) => through(() => inner.get(room, key)),
    all: (room) => through(() => inner.all(room)),
    change: (room, key, decide) =>
      through(async () => {
        const what = fate();
        if (what === 'refused') throw new Error('refused');
        const answer = await inner.change(room, key, decide);
        if (what === 'unanswered') throw new Error('broken off');
        return answer;
      }),
  };
}

/** What was made from what, by title: every edit has a title of its own. */
class Descent {
  readonly #parent = new Map<string, string | null>();
  readonly reported = new Set<string>();
  /** Titles that a choice named as the ones to take away. */
  readonly given = new Set<string>();
  /** What a tab put its own later edit beside. */
  readonly againstItself: string[] = [];
  /** How often both had changed a well. */
  forks = 0;

  get made(): readonly string[] {
    return [...this.#parent.keys()];
  }

  edit(title: string, from: string | null): void {
    this.#parent.set(title, from);
  }

  withAncestors(title: string): string[] {
    const line: string[] = [];
    for (let each: string | null = title; each !== null; each = this.#parent.get(each) ?? null) line.push(each);
    return line;
  }
}

/** A page without its looks: a desk, and the same hands that the page has. */
class Tab {
  readonly name: string;
  readonly keeper: Keeper;
  readonly #wells: Wells;
  readonly #descent: Descent;
  readonly #say: (id: string) => void;
  desk: { id: string; title: string } | null = null;
  /** The title that was handed over to be written, or read, last. */
  #shown: string | null = null;
  conflicts: Conflict[] = [];
  alive = true;
  readonly #written = new Map<string, string>();
  #count = 0;

  constructor(name: string, rooms: Rooms, descent: Descent, say: (id: string) => void) {
    this.name = name;
    this.#wells = new Wells(rooms);
    this.#descent = descent;
    this.#say = say;
    this.keeper = new Keeper(
      { write: (writing) => this.#wells.write(writing) },
      {
        onwritten: (written, from) => {
          if (!this.alive) return;
          descent.reported.add(written.entry.title);
          this.#written.set(written.entry.id, written.entry.title);
          if (written.outcome === 'beside') {
            // Nobody is a stranger to what they wrote themselves.
            if (written.theirs.title.startsWith(name)) descent.againstItself.push(written.theirs.title);
            if (this.desk?.id === from) this.desk = { ...this.desk, id: written.entry.id };
            void this.hear(written.entry.id).catch(() => {});
            descent.forks++;
            this.conflicts.push({ mine: written.entry.id, theirs: written.theirs });
          }
          say(written.entry.id);
        },
        ontrouble: () => {},
      },
      { pace: 0 },
    );
  }

  edit(): void {
    const title = `${this.name}${++this.#count}`;
    this.#descent.edit(title, this.desk?.title ?? null);
    this.desk = { id: this.desk?.id ?? `well ${title}`, title };
    this.#shown = title;
    this.keeper.change(this.desk.id, { plan: planOf(title), history: NO_STEPS });
  }

  async open(nth: number): Promise<void> {
    const listed = await this.#wells.list();
    const entry = listed[nth % Math.max(1, listed.length)];
    if (entry === undefined || entry.id === this.desk?.id) return;
    const loaded = await loadNewest(this.#wells, this.keeper, entry.id);
    const newer = this.keeper.unwritten(entry.id);
    if (newer !== null) this.#show(entry.id, newer.plan);
    else if (loaded !== null && this.keeper.opened(loaded.well)) this.#show(entry.id, loaded.well.plan);
  }

  #show(id: string, plan: unknown): void {
    const title = (plan as Plan).title ?? '';
    this.desk = { id, title };
    this.#shown = title;
  }

  async hear(id: string): Promise<void> {
    if (this.desk?.id !== id) return;
    const loaded = await loadNewest(this.#wells, this.keeper, id);
    if (loaded === null || this.desk.id !== id || this.desk.title !== this.#shown || !goesOn(this.keeper, loaded))
      return;
    this.keeper.opened(loaded.well);
    this.#show(id, loaded.well.plan);
  }

  async choose(mine: boolean): Promise<void> {
    const conflict = this.conflicts.shift();
    if (conflict === undefined) return;
    const title = this.keeper.unwritten(conflict.mine)?.plan.title ?? this.#written.get(conflict.mine);
    this.#descent.given.add(mine ? conflict.theirs.title : (title ?? ''));
    if (mine) await keepOnlyMine(this.#wells, conflict, 1);
    else await keepOnlyTheirs(this.#wells, this.keeper, conflict, 1);
    this.#say(conflict.theirs.id);
  }

  close(store: Store): void {
    leave(store, this.name, this.keeper.lastWritings(), []);
    this.alive = false;
  }
}

function planOf(title: string): Plan {
  return { title } as Plan;
}

const step = fc.record({
  tab: fc.nat(2),
  what: fc.oneof(
    { weight: 6, arbitrary: fc.constant('edit' as const) },
    { weight: 2, arbitrary: fc.constant('open' as const) },
    { weight: 1, arbitrary: fc.constant('new' as const) },
    { weight: 2, arbitrary: fc.constantFrom('mine' as const, 'theirs' as const) },
    { weight: 1, arbitrary: fc.constantFrom('close' as const, 'kill' as const) },
  ),
  nth: fc.nat(5),
  /** How much of what waits is let through afterwards. */
  through: fc.nat(6),
});

async function live(
  s: fc.Scheduler,
  steps: readonly (typeof step extends fc.Arbitrary<infer T> ? T : never)[],
  fates: readonly Fate[],
  tabCount: number,
): Promise<{ descent: Descent; listed: Set<string>; killed: boolean }> {
  const inner = memoryRooms();
  const store = memoryStore();
  const descent = new Descent();
  const fate = [...fates];
  const wait = (): Promise<void> => s.schedule(Promise.resolve());
  const quietly = (): void => {};
  let opened = 0;
  const tabs: Tab[] = [];
  const say =
    (from: string) =>
    (id: string): void => {
      for (const tab of tabs)
        if (tab.alive && tab.name !== from) void wait().then(() => (tab.alive ? tab.hear(id).catch(quietly) : null));
    };
  const openTab = (): Tab => {
    const name = `t${opened++}.`;
    const rooms = slowRooms(inner, wait, () => fate.shift() ?? 'good');
    return new Tab(name, rooms, descent, say(name));
  };
  for (let i = 0; i < tabCount; i++) tabs.push(openTab());
  let killed = false;
  const letThrough = async (count: number): Promise<void> => {
    for (let i = 0; i < count && s.count() > 0; i++) await s.waitOne();
    // What was let through goes on until it waits again.
    await new Promise((done) => setImmediate(done));
  };
  // All begin on one well: that is where tabs meet.
  tabs[0]!.edit();
  while (s.count() > 0) await letThrough(s.count());
  for (const tab of tabs.slice(1)) void tab.open(0);
  while (s.count() > 0) await letThrough(s.count());
  for (const { tab: which, what, nth, through } of steps) {
    const at = which % tabCount;
    const tab = tabs[at]!;
    if (what === 'edit') tab.edit();
    else if (what === 'open') void tab.open(nth).catch(quietly);
    else if (what === 'new') tab.desk = null;
    else if (what === 'mine' || what === 'theirs') void tab.choose(what === 'mine').catch(quietly);
    else {
      if (what === 'close') tab.close(store);
      else killed = true;
      tab.alive = false;
      // What it had asked of the browser may still be carried out; the next page takes in what was left.
      tabs[at] = openTab();
      void takeInLeft(
        store,
        slowRooms(inner, wait, () => 'good'),
        new Wells(inner),
      ).catch(quietly);
    }
    await letThrough(through);
  }
  while (s.count() > 0) await letThrough(s.count());
  for (const tab of tabs) tab.close(store);
  await takeInLeft(store, { ...inner, lasting: true }, new Wells(inner));
  const wells = await new Wells(inner).list();
  // Of what was taken away, only what a choice had named is where somebody wanted it.
  const there = wells.filter(({ takenAway, title }) => takenAway === null || descent.given.has(title));
  const listed = new Set(there.flatMap(({ title }) => descent.withAncestors(title)));
  return { descent, listed, killed };
}

for (const tabCount of [2, 3]) {
  test(`${tabCount} tabs: what was reported kept is listed, or an ancestor of what is`, async () => {
    let [forks, choices] = [0, 0];
    await fc.assert(
      fc.asyncProperty(
        fc.scheduler(),
        fc.array(step, { minLength: 4, maxLength: 30 }),
        fc.array(fc.constantFrom<Fate>('good', 'good', 'good', 'refused', 'unanswered'), { maxLength: 12 }),
        async (s, steps, fates) => {
          const { descent, listed, killed } = await live(s, steps, fates, tabCount);
          forks += descent.forks;
          choices += descent.given.size;
          expect([...descent.reported].filter((title) => !listed.has(title))).toEqual([]);
          expect(descent.againstItself).toEqual([]);
          // Where no tab was killed, nothing at all is lost, reported or not.
          if (!killed) expect(descent.made.filter((title) => !listed.has(title))).toEqual([]);
        },
      ),
      { numRuns: 400, seed: 11 },
    );
    // The law says something only where tabs met.
    expect(forks).toBeGreaterThan(50);
    expect(choices).toBeGreaterThan(5);
  });
}
