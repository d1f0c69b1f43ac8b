/** What the time strip holds: whether time is watched, and which. Never part of the plan, nor of its history. */
import type { Seconds } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { LevelCurve, PoorWell, Unknown } from '../../model/time/index.ts';
import { FIRST, neatTime, PLACES, placeOfTime, timeAtPlace } from './timeScale.ts';

type TimeModel = typeof import('./timeModel.ts');

/** A minute to thirty days in so many milliseconds. */
const WHOLE_SPAN = 12_000;
const BEGINS_AT: Seconds = 4 * 3600;

export class TimeView {
  on = $state(false);
  /** On the range, 0 to PLACES; between two places only while it plays. */
  place = $state(placeOfTime(BEGINS_AT));
  playing = $state(false);
  pumpFor = $state<Seconds | null>(null);
  drySeason = $state(false);
  #model = $state.raw<TimeModel | null>(null);
  #frame = 0;

  readonly #solution: () => Solution;

  readonly time: Seconds = $derived(this.playing ? timeAtPlace(this.place) : neatTime(timeAtPlace(this.place)));
  /** Built once for a plan and a choice; null until the model is here. */
  readonly curve: LevelCurve | Unknown | null = $derived.by(() =>
    this.on && this.#model !== null
      ? this.#model.levelAgainstTime(this.#solution(), { pumpFor: this.pumpFor, start: this.#start() })
      : null,
  );
  readonly poor: PoorWell | null = $derived.by(() => {
    if (!this.on || this.#model === null) return null;
    const poor = this.#model.poorWell(this.#solution(), { start: this.#start() });
    return 'reason' in poor ? null : poor;
  });
  /** What is drawn: the well at that time, or null for the well as usual. */
  readonly shown: Solution | null = $derived.by(() =>
    this.#model === null || this.curve === null || 'reason' in this.curve
      ? null
      : this.#model.atTime(this.#solution(), this.curve, this.time),
  );

  constructor(solution: () => Solution) {
    this.#solution = solution;
  }

  async start(): Promise<void> {
    this.on = true;
    this.#model ??= await import('./timeModel.ts');
  }

  /** Back to the usual level. */
  end(): void {
    this.pause();
    this.on = false;
  }

  goTo(time: Seconds): void {
    this.pause();
    this.place = placeOfTime(time);
  }

  play(): void {
    if (this.place >= PLACES) this.place = placeOfTime(FIRST);
    this.playing = true;
    let last = performance.now();
    const advance = (now: number): void => {
      this.place = Math.min(this.place + ((now - last) / WHOLE_SPAN) * PLACES, PLACES);
      last = now;
      if (this.place >= PLACES) this.pause();
      else this.#frame = requestAnimationFrame(advance);
    };
    this.#frame = requestAnimationFrame(advance);
  }

  pause(): void {
    cancelAnimationFrame(this.#frame);
    this.playing = false;
  }

  #start(): 'rest' | 'dry season' {
    return this.drySeason ? 'dry season' : 'rest';
  }
}
