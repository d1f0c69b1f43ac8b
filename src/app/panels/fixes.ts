/** What is offered against the findings of a well. Each was tried, so it is asked for when the pointer is up. */
import { fixesOf, type Offered } from '../../model/fixes/fixesOf.ts';
import type { Finding, Solution } from '../../model/solution.ts';

export class OfferedFixes {
  #last: ReadonlyMap<string, Offered> = new Map();

  /** @param held  a level is dragged: then what was offered before stands, so that nothing on the page jumps */
  of(solution: Solution, held: boolean): ReadonlyMap<string, Offered> {
    if (!held) {
      const offered = fixesOf(solution.plan, solution);
      this.#last = new Map(solution.findings.map((finding, i) => [keyOf(finding), offered[i] ?? NOTHING]));
    }
    return this.#last;
  }
}

/** The same finding from one solution to the next. */
export function keyOf({ rule, part }: Finding): string {
  return `${rule} ${part}`;
}

const NOTHING: Offered = { button: null, words: null };
