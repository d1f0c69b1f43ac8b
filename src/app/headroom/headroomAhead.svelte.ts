/**
 * How far the well on the desk may go. Found after the pointer is up and the keys are still, one line in a task of its
 * own, so that the page never stands still for it; its code is fetched with the first question.
 */
import type { Headroom, HeadroomReport } from '../../model/headroom/told.ts';
import type { Band, Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import type { Plan } from '../../model/plan/schema.ts';
import type { Units } from '../state/settings.svelte.ts';
import type * as Code from './headroom.ts';
import type { Tick, ToldBeside } from './headroom.ts';

/** After the last change [ms]: longer than keys repeat. */
const PAUSE = 250;

/** Before the code is fetched. */
const NOTHING_TOLD: ReadonlyMap<string, ToldBeside> = Object.freeze(new Map<string, ToldBeside>());

interface Found {
  readonly plan: Plan;
  readonly units: Units;
  readonly report: HeadroomReport;
}

export interface Followed {
  readonly well: string | null;
  readonly units: Units;
  readonly held: boolean;
}

export class HeadroomAhead {
  #code = $state.raw<typeof Code | null>(null);
  #found = $state.raw<Found | null>(null);
  #well: string | null = null;
  #asked: Solution | null = null;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  /** As it was found last: while a level moves, of the well before. Null before the first. */
  get report(): HeadroomReport | null {
    return this.#found?.report ?? null;
  }

  /** Where the warning and the danger of a level begin. */
  ticks(handle: string): readonly Tick[] {
    return this.#code?.ticksOf(this.#linesOf(handle)) ?? [];
  }

  /** The same in words with what the bar beside the hole says, by level, to be read beside each. */
  told(bands: readonly Band[], show: Show): ReadonlyMap<string, ToldBeside> {
    return this.#code?.toldBeside(this.report?.lines ?? [], bands, show) ?? NOTHING_TOLD;
  }

  #linesOf(handle: string): readonly Headroom[] {
    return this.#code?.linesOf(handle, this.report?.lines ?? []) ?? [];
  }

  /** Whether that is of the very plan. */
  isOf(plan: Plan, units: Units): boolean {
    return this.#found?.plan === plan && this.#found.units === units;
  }

  /**
   * @param well  what is told of another one is forgotten at once
   * @param held  a level is dragged
   */
  follow(solution: Solution, { well, units, held }: Followed): void {
    clearTimeout(this.#waiting);
    this.#asked = null;
    if (well !== this.#well) this.#found = null;
    this.#well = well;
    if (held || this.isOf(solution.plan, units)) return;
    this.#asked = solution;
    this.#waiting = setTimeout(() => void this.#find(solution, units), PAUSE);
  }

  async #find(solution: Solution, units: Units): Promise<void> {
    const code = await import('./headroom.ts');
    this.#code = code;
    const { refused, finds } = code.headroomToFind(solution.plan, solution, units);
    const lines: Headroom[] = [];
    for (const find of finds) {
      await nextTask();
      // Something was changed meanwhile: what was asked is not wanted any more.
      if (this.#asked !== solution) return;
      lines.push(find());
    }
    if (this.#asked !== solution) return;
    this.#found = { plan: solution.plan, units, report: { refused, lines } };
  }
}

function nextTask(): Promise<void> {
  return new Promise((done) => setTimeout(done, 0));
}
