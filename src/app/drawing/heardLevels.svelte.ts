/** What is heard of the levels: while something moves five times a second, for nobody hears it sooner. */
import { handlesOf, type Handle } from '../../model/handles.ts';
import type { Solution } from '../../model/solution.ts';
import { sayHandle } from '../../words/sayLevel.ts';
import { en } from '../firstLanguage.ts';
import { Calm } from '../state/calm.svelte.ts';
import type { Workspace } from '../state/workspace.svelte.ts';

/** A level and what a screen reader says of it. */
export interface HeardLevel {
  readonly handle: Handle;
  readonly words: string;
}

export interface HeardSource {
  readonly workspace: () => Workspace;
  /** The well as it is drawn. */
  readonly solution: () => Solution;
  /** Something in the well moves by itself. */
  readonly runs: () => boolean;
}

export class HeardLevels {
  readonly #source: HeardSource;
  readonly #calm: Calm<Solution>;
  #plannedBefore: Solution | null = null;

  readonly #isHeld: boolean = $derived.by(() => this.#source.workspace().heldHandle !== null);
  readonly #moves: boolean = $derived.by(() => this.#isHeld || this.#source.runs());
  readonly #told: Solution = $derived.by(() => (this.#moves ? this.#calm.current : this.#source.solution()));
  readonly #handles: readonly Handle[] = $derived.by(() =>
    this.#isHeld ? handlesOf(this.#told) : this.#source.workspace().handles,
  );
  /** In the order of the kinds. */
  readonly all: readonly HeardLevel[] = $derived.by(() => {
    const { show } = this.#source.workspace();
    return this.#handles.map((handle) => ({ handle, words: sayHandle(handle, handle.depth, this.#told, en, show) }));
  });

  /** To be made while a component is set up: it lives as long as that. */
  constructor(source: HeardSource) {
    this.#source = source;
    this.#calm = new Calm(source.solution());
    $effect(() => this.#follow());
  }

  #follow(): void {
    const planned = this.#source.workspace().solution;
    // What somebody changed is heard at once.
    const hurried = this.#moves && (this.#isHeld || planned === this.#plannedBefore);
    this.#plannedBefore = planned;
    this.#calm.follow(this.#source.solution(), hurried);
  }
}
