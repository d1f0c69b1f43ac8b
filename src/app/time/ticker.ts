/** Calls back once a frame for as long as anybody asks for it: all that moves on a page moves in the same frame. */
export type Step = (milliseconds: number) => void;

/** After a page was hidden or a frame was late, time goes on from there and does not leap. */
const LONGEST = 100;

export class Ticker {
  readonly #steps = new Set<Step>();
  #frame = 0;
  #last: number | null = null;

  /** @returns  ends it */
  add(step: Step): () => void {
    this.#steps.add(step);
    this.#ask();
    return () => this.remove(step);
  }

  remove(step: Step): void {
    this.#steps.delete(step);
    if (this.#steps.size > 0) return;
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#last = null;
  }

  #ask(): void {
    if (this.#frame === 0) this.#frame = requestAnimationFrame(this.#tick);
  }

  readonly #tick = (now: number): void => {
    this.#frame = 0;
    const gone = this.#last === null ? 0 : Math.min(now - this.#last, LONGEST);
    this.#last = now;
    for (const step of [...this.#steps]) step(gone);
    if (this.#steps.size > 0) this.#ask();
  };
}
