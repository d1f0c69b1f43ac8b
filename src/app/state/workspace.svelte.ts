/**
 * The one place that holds what the user has: the well, its history, what is held and what is lit.
 * Everything else on the page is derived from it.
 */
import type { Block, HandleName } from '../../model/handleNames.ts';
import { handlesOf, type Handle } from '../../model/handles.ts';
import type { Stands } from '../../model/place/told.ts';
import { whatStands } from '../../model/place/stands.ts';
import { mayMove } from '../../model/rules/fix.ts';
import { judge, type Judgement } from '../../model/rules/index.ts';
import type { Change, Finding, Solution, Solved } from '../../model/solution.ts';
import { withValue } from '../../model/plan/editPlan.ts';
import { readPlan } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import type { Metres } from '../../model/si.ts';
import { createSolver, solve } from '../../model/solve.ts';
import { sayRefusal } from '../../words/en/plan/refusal.ts';
import { show, type Show } from '../../model/units.ts';
import { changeInFindings, countFindings, sayInAll } from '../../words/sayFindings.ts';
import { nameLevel } from '../../words/sayLevel.ts';
import { en } from '../firstLanguage.ts';
import type { Drafts } from '../keeping/drafts.ts';
import { followed, joined, renamed, sharing, stepsOf, type Desk, type KeptHistory } from '../keeping/keptHistory.ts';
import { HeadroomAhead } from '../headroom/headroomAhead.svelte.ts';
import type { Announcer } from './announcer.svelte.ts';
import { BURST_PAUSE, endBurst, record, redo, startHistory, undo, type History } from './history.ts';
import type { OwnPumps } from './ownPumps.ts';
import type { Settings, Units } from './settings.svelte.ts';

export type { Desk };

/** What a finger or the mouse is doing right now. */
export interface Held {
  readonly handle: Handle;
  readonly start: Metres;
  readonly depth: Metres;
  /** Why the part does not follow any further. */
  readonly blocked: Block | null;
  /** What it stops at, though it could go further. */
  readonly caught: string | null;
  /** Where the pointer would have it. */
  readonly wanted: Metres;
}

/** A hold, and the well as it was at that moment. */
export interface ToldHold {
  readonly held: Held;
  readonly solution: Solution;
}

/** What somebody reported or measured of the well, or hung in it. */
export interface Fact {
  readonly label: HandleName;
  readonly stands: Stands;
}

/** A fact that a hand has moved: it is held where it would be until somebody says that it is changed. */
export interface Asked {
  readonly handle: Handle;
  readonly fact: Fact;
  readonly change: () => void;
}

export interface Notice {
  readonly handle: string;
  readonly words: string;
  /** One click that makes it possible after all. */
  readonly offer?: { readonly label: string; readonly plan: Plan } | null;
  /** Path of the field in the record that would make it possible. */
  readonly field?: string | null;
}

const EMPTY_DESK: Desk = { id: null, plan: null };

export class Workspace {
  history = $state.raw<History<Desk>>(startHistory(EMPTY_DESK));
  /** The plan as it would be if the pointer went up now. */
  preview = $state.raw<Plan | null>(null);
  /** Keys of parts, or the number of a finding. */
  lit = $state.raw<string | readonly string[] | null>(null);
  /** Keys of parts that the drawing is asked to bring forward; null again once it has. */
  wantedParts = $state.raw<readonly string[] | null>(null);
  /** One line beside a handle: why it went no further, or why it cannot be moved. */
  notice = $state.raw<Notice | null>(null);
  /** The question that waits beside a level; nothing has changed before it is answered. */
  asked = $state.raw<Asked | null>(null);
  /** Path of the field that the record is asked to open; null again once it has. */
  wantedField = $state.raw<string | null>(null);
  /** The drawdown keeps its length when the static level moves (only where a level was measured). */
  drawdownLocked = $state(false);

  #selected = $state<string | null>(null);
  /** The chosen level that may be moved without being asked again. */
  #agreed: string | null = null;
  #held = $state.raw<Held | null>(null);
  /**
   * Which handle is held and where it stood: unlike what is held, the same from frame to frame of a drag. Kept beside
   * it and not derived from it, so that what depends on them is left in peace by the frames between.
   */
  #heldHandle = $state<string | null>(null);
  #heldStart = $state<Metres>(0);
  readonly desk = $derived(this.history.present);
  readonly plan = $derived(this.preview ?? this.history.present.plan);
  /** Of the plan before a drag, which changes no units: nearly every word on the page depends on them. */
  readonly units: Units = $derived.by(
    () => this.settings.units ?? (this.desk.plan?.units === 'metric' ? 'metric' : 'us'),
  );
  readonly #solver = createSolver();
  readonly #placed: Solved | null = $derived(this.plan === null ? null : this.#solver.place(this.plan));
  /** What was found last while a level is dragged, and of what. */
  #judged = $state.raw<{ readonly placed: Solved; readonly judgement: Judgement } | null>(null);
  #told = $state.raw<ToldHold | null>(null);
  /** Under a pointer the level and all that hangs on it move at once; what is found of it follows by `judgeHeld`. */
  readonly solution: Solution | null = $derived.by(() => {
    const placed = this.#placed;
    if (placed === null) return null;
    const judgement = this.heldHandle === null ? null : this.#judged?.judgement;
    return { ...placed, ...(judgement ?? judge(placed)) };
  });
  /** What is said of the level that is held: words follow it together with what is found. */
  readonly told: ToldHold | null = $derived.by(() => this.#told ?? this.#holdNow());
  readonly handles: readonly Handle[] = $derived(this.solution === null ? [] : handlesOf(this.solution));
  readonly show: Show = $derived(show(this.units));

  readonly headroom = new HeadroomAhead();

  /** By id: what the well was called here before it went on under another id. */
  #before = $state.raw<Readonly<Record<string, string>>>({});
  /** Names the well on the desk for as long as it stays there, whatever becomes of its id. */
  readonly wellKey: string | null = $derived(
    this.desk.id === null ? null : (this.#before[this.desk.id] ?? this.desk.id),
  );
  /** By id: steps that had been taken before the well was opened from the shelf. */
  #earlier: Readonly<Record<string, KeptHistory | undefined>> = {};

  /** The last step back led here from another well: this one's own steps are not taken back without a word. */
  #ledBack = false;

  /** How many wells were put on the desk, so that the page can lead there. */
  #arrivals = $state(0);
  #greeted = 0;

  /** What was found before a burst of keys began, and the timer that waits for its end. */
  #findingsBefore: readonly Finding[] | null = null;
  #saying: ReturnType<typeof setTimeout> | undefined;

  readonly settings: Settings;
  readonly announcer: Announcer;
  readonly drafts: Drafts;
  readonly pumps: OwnPumps;

  constructor(settings: Settings, announcer: Announcer, drafts: Drafts, pumps: OwnPumps) {
    this.settings = settings;
    this.announcer = announcer;
    this.drafts = drafts;
    this.pumps = pumps;
  }

  /** The handle whose field and steppers show. */
  get selected(): string | null {
    return this.#selected;
  }

  set selected(handle: string | null) {
    this.#selected = handle;
    if (handle !== this.#agreed) this.#agreed = null;
  }

  get held(): Held | null {
    return this.#held;
  }

  set held(held: Held | null) {
    this.#held = held;
    this.#heldHandle = held?.handle.id ?? null;
    this.#heldStart = held?.start ?? 0;
  }

  get heldHandle(): string | null {
    return this.#heldHandle;
  }

  get heldStart(): Metres {
    return this.#heldStart;
  }

  /** Judges the level that is dragged where it stands now. */
  judgeHeld(): void {
    const placed = this.#placed;
    if (placed === null || this.#judged?.placed === placed) return;
    this.#judged = { placed, judgement: judge(placed) };
    this.#told = this.#holdNow();
  }

  /** The level was let go: it is judged with every change again. */
  judgeAtOnce(): void {
    this.#judged = null;
    this.#told = null;
  }

  /**
   * One named step. What it changed is said at once, or after the last key of a burst; what `say` tells ends with how the
   * well stands as a whole, also where the same is found as before.
   */
  edit(
    name: string | ((before: Plan | null) => string),
    plan: Plan,
    options: { burst?: string; say?: () => string } = {},
  ): void {
    if (this.asked !== null) this.#letGo();
    this.#goesOn();
    const before = this.history.present;
    const next = sharing(before.plan, plan);
    const had = this.#findingsBefore ?? (before.plan === null ? [] : solve(before.plan).findings);
    this.history = record<Desk>(
      this.history,
      { id: before.id, plan: next },
      {
        name: typeof name === 'string' ? name : (desk) => name(desk.plan),
        burst: options.burst ?? null,
        at: performance.now(),
        same: sameDesk,
      },
    );
    this.preview = null;
    this.notice = null;
    this.judgeAtOnce();
    const say = (): void => {
      this.#findingsBefore = null;
      const said = options.say?.() ?? '';
      const [changed = '', inAll = ''] = this.#sayChange(had);
      if (said !== '' || changed !== '')
        this.announcer.say([said, changed, inAll].filter((part) => part !== '').join(' '));
      // What was said of the well before holds no longer.
      else this.announcer.words = '';
    };
    clearTimeout(this.#saying);
    if (options.burst === undefined) {
      say();
    } else {
      this.#findingsBefore = had;
      this.#saying = setTimeout(say, BURST_PAUSE);
    }
  }

  /** Writes one field as typed; null when the plan reads, else in whole sentences why not and what to write instead. */
  write(path: string, value: unknown, name: string): string | null {
    const { plan } = this.history.present;
    if (plan === null) return null;
    const reading = readPlan(withValue(plan, path, value));
    if (!reading.ok) {
      const refused = reading.problems.find((problem) => problem.path === path) ?? reading.problems[0];
      return refused === undefined ? 'This cannot be read.' : sayRefusal(refused);
    }
    this.edit(name, reading.plan);
    return null;
  }

  /** A fix is one step, however many fields it touches. */
  fix(name: string, changes: readonly Change[]): void {
    const { plan } = this.history.present;
    if (plan === null) return;
    this.edit(
      name,
      changes.reduce((fixed, { path, to }) => withValue(fixed, path, to), plan),
      { say: () => `${name}.` },
    );
  }

  /** Opens the record at a field, or at what takes it: a part that is not in the plan yet, a list. */
  openField(path: string): void {
    this.notice = null;
    this.wantedField = path;
  }

  /**
   * Another well on the desk; the one before is a step back.
   *
   * @param earlier  steps that were taken with it on another day
   */
  open(desk: Desk, name: string, earlier?: KeptHistory): void {
    this.#letGo();
    this.selected = null;
    this.lit = null;
    if (desk.id !== null && earlier !== undefined) this.#earlier = { ...this.#earlier, [desk.id]: earlier };
    this.history = record(this.history, desk, { name, same: sameDesk });
    this.#goesOn();
    this.arrive(name);
  }

  /** The well that was on the desk when the page was left, with the steps that had been taken. */
  resume(history: History<Desk>): void {
    this.history = history;
  }

  /**
   * Somebody put this on the desk: it is said what was found, and the page leads there.
   *
   * @param name  what is said of a desk without a well
   */
  arrive(name = ''): void {
    this.#arrivals++;
    this.announcer.say(this.#sayDesk() || `${name}.`);
  }

  /** Whether something came on the desk since this was asked last. */
  greets(): boolean {
    const arrivals = this.#arrivals;
    const isNew = arrivals !== this.#greeted;
    this.#greeted = arrivals;
    return isNew;
  }

  /** Empty without a well. */
  #sayDesk(): string {
    const { plan, solution } = this;
    if (plan === null || solution === null) return '';
    const { findings, notJudged } = solution;
    const title = plan.title ?? 'A well without a name';
    return en.long.findings.drawn(title, countFindings(findings, en), notJudged.length);
  }

  /** Another tab has gone on with the well on the desk: so does this one, without a step of its own. */
  follow(id: string, plan: Plan, kept: KeptHistory): void {
    this.#earlier = { ...this.#earlier, [id]: undefined };
    this.history = followed(this.history, id, plan, kept);
    this.asked = null;
    this.preview = null;
    this.judgeAtOnce();
  }

  /** The same well under another id, without a step: for one that must not be written over another tab's. */
  rename(from: string, to: string): void {
    this.#earlier = { ...this.#earlier, [to]: this.#earlier[from] };
    this.#before = { ...this.#before, [to]: this.#before[from] ?? from };
    this.history = renamed(this.history, from, to);
  }

  /** The steps of the well on the desk, those of other days included. */
  stepsToKeep(): KeptHistory {
    const { id } = this.desk;
    return id === null
      ? joined(undefined, { past: [], future: [] })
      : joined(this.#earlier[id], stepsOf(this.history, id));
  }

  endBurst(): void {
    this.history = endBurst(this.history);
  }

  undo(): void {
    const step = this.history.past.at(-1);
    if (step === undefined) return;
    if (this.#ledBack && step.before.id === step.after.id) {
      this.#ledBack = false;
      const title = this.plan?.title ?? 'A well without a name';
      this.announcer.show(`${title} is open now. Undo once more takes back its last step: ${step.name}.`);
      return;
    }
    const { id } = this.desk;
    this.#step(undo, `Undone: ${step.name}.`);
    this.#ledBack = this.desk.id !== id;
  }

  redo(): void {
    const step = this.history.future[0];
    if (step === undefined) return;
    this.#step(redo, `Done again: ${step.name}.`);
  }

  /** What is found now and was not, or no longer; and how the well stands as a whole. */
  #sayChange(had: readonly Finding[]): string[] {
    const { solution } = this;
    if (solution === null) return [];
    return [changeInFindings(had, solution.findings, en, this.show), sayInAll(solution, en)];
  }

  #step(go: typeof undo, words: string): void {
    this.#letGo();
    this.#goesOn();
    const { desk, solution } = this;
    this.history = go(this.history);
    const found = this.desk.id === desk.id ? this.#sayChange(solution?.findings ?? []) : [this.#sayDesk()];
    this.announcer.say([words, ...found].filter((part) => part !== '').join(' '));
  }

  /** The fact that a hand would change with this level; null where there is none, or where that was agreed to. */
  factMovedBy(handle: Handle): Fact | null {
    if (this.solution === null || handle.id === this.#agreed) return null;
    const { facts } = this.solution;
    const carried = this.drawdownLocked && handle.id === 'staticLevel';
    const moved = this.handles.filter(
      ({ id, path }) => id === handle.id || (carried && path === 'water.pumping.level'),
    );
    const fact = moved.find(({ path }) => !mayMove(facts, path));
    return fact === undefined ? null : { label: fact.label, stands: whatStands(facts, fact.path) };
  }

  /** Leaves the moved level and the plan as it would be on show, until the answer. */
  ask(asked: Asked): void {
    this.asked = asked;
    // Nobody has decided anything that a closing page would have to keep.
    if (this.desk.id !== null) this.drafts.forget(this.desk.id, 'drag');
  }

  answer(changed: boolean): void {
    const { asked } = this;
    if (asked === null) return;
    if (!changed) {
      this.cancelHold();
      return;
    }
    this.asked = null;
    this.#agreed = asked.handle.id;
    this.held = null;
    asked.change();
  }

  /** Ends a gesture without a trace. */
  cancelHold(): void {
    if (this.held === null) return;
    const label = nameLevel(this.held.handle.label, en.short);
    this.#letGo();
    this.announcer.say(`${label}: put back where it was.`);
  }

  #holdNow(): ToldHold | null {
    const { held, solution } = this;
    return held === null || solution === null ? null : { held, solution };
  }

  /** What was shown of the step before is done with. */
  #goesOn(): void {
    this.#ledBack = false;
    this.announcer.shown = '';
  }

  #letGo(): void {
    this.asked = null;
    this.notice = null;
    this.preview = null;
    this.held = null;
  }
}

function sameDesk(a: Desk, b: Desk): boolean {
  return a.id === b.id && (a.plan === b.plan || JSON.stringify(a.plan) === JSON.stringify(b.plan));
}
