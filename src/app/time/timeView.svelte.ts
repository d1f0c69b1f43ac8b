/** What the time strip holds: whether time is watched, and which. Never part of the plan, nor of its history. */
import type { Seconds } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { BreakRange, LevelCurve, Unknown } from '../../model/time/index.ts';
import type { Step, Ticker } from './ticker.ts';
import { timeLater } from './timeLater.ts';
import { FIRST, LAST, neatTime, PLACES, placeOfTime, timeAtPlace } from './timeScale.ts';

type TimeModel = typeof import('./timeModel.ts');

const BEGINS_AT: Seconds = 4 * 3600;

export class TimeView {
  on = $state(false);
  /** Its range and its words are shown too. */
  opened = $state(false);
  /** On the range, 0 to PLACES; between two places only while it plays. */
  place = $state(placeOfTime(BEGINS_AT));
  playing = $state(false);
  pumpFor = $state<Seconds | null>(null);
  drySeason = $state(false);
  #model = $state.raw<TimeModel | null>(null);
  /** The pump was stopped at no round time, and what came after is counted from there. */
  #exact = $state(false);

  readonly #solution: () => Solution;
  readonly #ticker: Ticker;

  readonly time: Seconds = $derived(
    this.playing || this.#exact ? timeAtPlace(this.place) : neatTime(timeAtPlace(this.place)),
  );
  /** Built once for a plan and a choice; null until the model is here. */
  readonly curve: LevelCurve | Unknown | null = $derived.by(() =>
    this.on && this.#model !== null
      ? this.#model.levelAgainstTime(this.#solution(), { pumpFor: this.pumpFor, start: this.#start() })
      : null,
  );
  /** From the earliest to the latest that the water can be gone. */
  readonly range: BreakRange | null = $derived.by(() =>
    this.on && this.#model !== null ? this.#model.breakRange(this.#solution(), { start: this.#start() }) : null,
  );
  /** What is drawn: the well at that time, or null for the well as usual. */
  readonly shown: Solution | null = $derived.by(() =>
    this.#model === null || this.curve === null || 'reason' in this.curve
      ? null
      : this.#model.atTime(this.#solution(), this.curve, this.time),
  );

  constructor(solution: () => Solution, ticker: Ticker) {
    this.#solution = solution;
    this.#ticker = ticker;
  }

  async start(): Promise<void> {
    this.on = true;
    this.opened = true;
    this.#model ??= await import('./timeModel.ts');
  }

  /** The pump starts now, from water at rest, and time runs. */
  async runFromRest(): Promise<void> {
    this.pause();
    this.#model ??= await import('./timeModel.ts');
    this.pumpFor = null;
    this.#exact = false;
    this.place = placeOfTime(FIRST);
    this.on = true;
    if (this.shown !== null) this.play();
  }

  /** The pump stops at the time that is drawn, and the water comes back. */
  stopPump(): void {
    if (this.shown === null) return;
    this.pumpFor = this.time;
    // Thirty days on there is nothing left to show: then the stop counts as one after the longest pumping still told.
    if (this.place >= PLACES) this.pumpFor = LAST / 2;
    this.place = placeOfTime(this.pumpFor);
    this.#exact = true;
    this.play();
  }

  /** Back to the usual level. */
  end(): void {
    this.pause();
    this.on = false;
    this.opened = false;
    if (this.#exact) this.pumpFor = null;
    this.#exact = false;
  }

  goTo(time: Seconds): void {
    this.goToPlace(placeOfTime(time));
  }

  goToPlace(place: number): void {
    this.pause();
    this.#exact = false;
    this.place = place;
  }

  play(): void {
    if (this.place >= PLACES) this.place = placeOfTime(FIRST);
    this.playing = true;
    this.#ticker.add(this.#advance);
  }

  pause(): void {
    this.#ticker.remove(this.#advance);
    this.playing = false;
  }

  readonly #advance: Step = (milliseconds) => {
    const later = timeLater(timeAtPlace(this.place), this.pumpFor, milliseconds);
    // To the end exactly, so that it is known to be the end.
    this.place = later >= LAST ? PLACES : placeOfTime(later);
    if (this.place >= PLACES) this.pause();
  };

  #start(): 'rest' | 'dry season' {
    return this.drySeason ? 'dry season' : 'rest';
  }
}
