/** The well made to run: pump on and off, valve, flow, and the frost of a season. Never part of the plan. */
import type { Moment } from '../../draw/view.ts';
import { frostShareAt, thawShareAt } from '../../model/formulas/frostSeason.ts';
import type { Metres, Ratio } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { Step } from './ticker.ts';
import { PLACES } from './timeScale.ts';
import type { TimeView } from './timeView.svelte.ts';

/** A flow mark comes to the place of the next one in so many milliseconds. */
const MARK_TO_MARK = 900;
/** A check valve opens or closes in so many. */
const VALVE_MOVES = 350;
/** A winter that plays takes so many, from the first frost to the end of the thaw. */
const WINTER = 12_000;
/** Where marks stand that do not move. */
const STILL = 0.5;

/** Of a season: the first frost, the deepest, and the end of the thaw. */
export const [AUTUMN, SPRING, THAWED] = [0, 1, 2] as const;

/** Ground that is frozen today. */
export interface Frozen {
  /** The winter has frozen it down to here. */
  readonly reached: Metres;
  /** And it has thawed again from the surface down to here. */
  readonly thawed: Metres;
}

export class WellRun {
  /** Null until somebody switches it. */
  pump = $state<'on' | 'off' | null>(null);
  paused = $state(false);
  /** Freezing season and thaw that are over, 0 to 2; null for the frost as it is planned for, which is that of spring. */
  season = $state<number | null>(null);
  #winterAsked = $state(false);
  #flow = $state<Ratio>(STILL);
  #valve = $state<Ratio>(0);

  readonly #time: TimeView;
  readonly #solution: () => Solution;
  /** Nothing may move: for one who asked for that, while a level is held, and on paper. */
  readonly #still: () => boolean;

  /** Whether the pump runs in what is drawn; null: the drawing is the usual one. */
  readonly pumping: boolean | null = $derived.by(() => {
    const { shown, curve, time } = this.#time;
    if (shown !== null && curve !== null && !('reason' in curve)) return curve.phaseAt(time) !== 'recovery';
    return this.pump === null ? null : this.pump === 'on';
  });
  /** The water of the model's time is drawn, and that time stands. */
  readonly #clockStands = $derived.by(
    () => this.#time.shown !== null && !this.#time.playing && this.#time.place < PLACES,
  );
  readonly #valveRests: Ratio = $derived(this.pumping === true && !this.isBlocked ? 1 : 0);
  readonly #flowMoves = $derived.by(
    () => this.#time.playing || (this.pumping === true && this.pump === 'on' && !this.#clockStands),
  );
  /** As planned for. */
  readonly frostDepth: Metres | null = $derived.by(() => this.#solution().values.frostDepth);
  /** Null where nobody knows how deep it freezes. */
  readonly frozen: Frozen | null = $derived.by(() => {
    const depth = this.frostDepth;
    if (depth === null || depth <= 0) return null;
    const { frostShare, thawShare } = sharesAt(this.season ?? SPRING);
    return { reached: depth * frostShare, thawed: depth * thawShare };
  });
  /** Water or valve move by themselves. */
  readonly pumpMoves: boolean = $derived.by(
    () => !this.#still() && !this.paused && (this.#flowMoves || this.#valve !== this.#valveRests),
  );
  /** The season goes on by itself. */
  readonly winterPasses: boolean = $derived.by(
    () => this.#winterAsked && this.season !== null && this.season < THAWED && this.frozen !== null && !this.#still(),
  );
  /** Something moves by itself. */
  readonly moves: boolean = $derived(this.pumpMoves || this.winterPasses);
  /** It would go on if it were told to. */
  readonly stands: boolean = $derived.by(() => this.paused || this.#clockStands);
  readonly active: boolean = $derived(this.pumping !== null || this.season !== null);

  /** What is drawn beside the plan; null for the drawing as planned. */
  readonly moment: Moment | null = $derived.by(() => {
    if (!this.active) return null;
    const { pumping } = this;
    return {
      ...(pumping === null ? {} : { pumping, flow: this.#flow, valveOpen: this.#valveNow() }),
      ...this.#water(),
      ...(this.season === null ? {} : sharesAt(this.season)),
    };
  });

  constructor(time: TimeView, solution: () => Solution, still: () => boolean) {
    this.#time = time;
    this.#solution = solution;
    this.#still = still;
  }

  /** Whether the drawing can tell how far the water falls: by the plan, or by the model's time. */
  get fallKnown(): boolean {
    return this.#solution().levels.pumping !== null || this.#time.shown !== null;
  }

  /** A check valve that points down lets no water past. */
  get isBlocked(): boolean {
    const { facts, parts } = this.#solution();
    return facts.string.arrow === 'down' && parts.some(({ kind }) => kind === 'checkValve');
  }

  /** From rest, at once or by the model's time. */
  async switchOn(): Promise<void> {
    this.pump = 'on';
    this.paused = false;
    if (this.#still() || this.isBlocked) {
      this.#time.end();
      return;
    }
    await this.#time.runFromRest();
  }

  switchOff(): void {
    const was = this.pumping;
    this.pump = 'off';
    this.paused = false;
    if (was === true && !this.#still()) this.#time.stopPump();
    else this.#time.end();
  }

  /** Lets the season go on from where it stands; from its end, and from the plan, from autumn. */
  playWinter(): void {
    if (this.season === null || this.season >= THAWED) this.season = AUTUMN;
    this.#winterAsked = true;
  }

  holdWinter(): void {
    this.#winterAsked = false;
  }

  /** Where a reader puts it, it stays. */
  setSeason(season: number | null): void {
    this.holdWinter();
    this.season = season;
  }

  /** Everything stands. */
  pause(): void {
    this.paused = true;
    this.holdWinter();
    this.#time.pause();
  }

  goOn(): void {
    this.paused = false;
    if (this.#clockStands) this.#time.play();
  }

  /** The drawing as planned, but for the season. */
  end(): void {
    this.pump = null;
    this.paused = false;
    this.#valve = 0;
    this.#flow = STILL;
  }

  readonly advance: Step = (milliseconds) => {
    if (this.winterPasses) this.#passWinter(milliseconds);
    if (this.pumpMoves) this.#movePump(milliseconds);
  };

  #passWinter(milliseconds: number): void {
    this.season = Math.min(THAWED, (this.season ?? AUTUMN) + (milliseconds / WINTER) * THAWED);
    if (this.season === THAWED) this.holdWinter();
  }

  #movePump(milliseconds: number): void {
    if (this.#flowMoves) this.#flow = (this.#flow + milliseconds / MARK_TO_MARK) % 1;
    const way = this.#valveRests - this.#valve;
    const step = milliseconds / VALVE_MOVES;
    this.#valve = Math.abs(way) <= step ? this.#valveRests : this.#valve + Math.sign(way) * step;
  }

  #valveNow(): Ratio {
    return this.#still() ? this.#valveRests : this.#valve;
  }

  #water(): { readonly water?: Metres } {
    const shown = this.#time.shown?.levels.pumping ?? null;
    if (shown !== null) return { water: shown };
    const rest = this.#solution().levels.static;
    return this.pumping === true && this.isBlocked && rest !== null ? { water: rest } : {};
  }
}

function sharesAt(season: number): { readonly frostShare: Ratio; readonly thawShare: Ratio } {
  return {
    frostShare: frostShareAt(Math.min(SPRING, season)),
    thawShare: thawShareAt(Math.max(SPRING, season) - SPRING),
  };
}
