/**
 * A value for panels beside the drawing: at rest always the newest, while something is dragged five times a second, and then
 * in a task of its own. The drawing itself follows every frame; text that changes faster than it can be read
 * only costs the frame its time.
 */
const PAUSE = 200;

export class Calm<T> {
  current: T;
  #newest: T;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(value: T) {
    this.current = $state.raw(value);
    this.#newest = value;
  }

  /** @param hurried  a drag is on */
  follow(value: T, hurried: boolean): void {
    this.#newest = value;
    if (!hurried) this.#show();
    else this.#timer ??= setTimeout(() => this.#show(), PAUSE);
  }

  #show(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.current = this.#newest;
  }
}
