/** The drawing of one sheet, as the page shows it while nothing and while something is held. */
import { createDrawer } from '../../draw/index.ts';
import type { DetailDrawing, Looks, Scene, View } from '../../draw/view.ts';
import type { Solution } from '../../model/solution.ts';
import type { Workspace } from '../state/workspace.svelte.ts';

/**
 * What is found, and the details, follow a drag in tasks of their own, a frame or two later [ms], so that the level under
 * the pointer never waits.
 */
const FOLLOW_PAUSE = 20;

export interface SceneSource {
  readonly workspace: () => Workspace;
  readonly solution: () => Solution;
  readonly view: () => View;
}

export class SheetScene {
  readonly #source: SceneSource;
  /** What did not change since the drawing before is not drawn again. */
  readonly #drawer = createDrawer();
  /** How fine the parts were drawn last, so that none flickers while the scale wanders about a threshold. */
  #shown: { readonly well: string | null; readonly looks: Looks } | null = null;
  /** The newest whole drawing of a drag; between two of them the section alone is drawn anew. */
  #whole = $state.raw<{ readonly solution: Solution; readonly view: View; readonly scene: Scene } | null>(null);
  #following: ReturnType<typeof setTimeout> | undefined;

  readonly current: Scene = $derived.by(() => {
    const workspace = this.#source.workspace();
    const solution = this.#source.solution();
    const view = this.#source.view();
    const whole = this.#whole;
    if (whole === null || workspace.heldHandle === null || view.frozen?.windows.O === undefined)
      return this.#draw(solution, view);
    if (whole.solution === solution && whole.view === view) return whole.scene;
    return this.#draw(solution, view, whole.scene.details);
  });

  /** To be made while a component is set up: it lives as long as that. */
  constructor(source: SceneSource) {
    this.#source = source;
    $effect(() => this.#follow());
  }

  /** Another well begins without a history. */
  #draw(solution: Solution, view: View, kept?: readonly DetailDrawing[]): Scene {
    const well = this.#source.workspace().wellKey;
    const shown = this.#shown;
    const scene = this.#drawer(solution, shown?.well === well ? { ...view, looks: shown.looks } : view, kept);
    this.#shown = { well, looks: scene.scales.looks };
    return scene;
  }

  #follow(): void {
    const workspace = this.#source.workspace();
    if (workspace.heldHandle === null) {
      clearTimeout(this.#following);
      this.#following = undefined;
      this.#whole = null;
      workspace.judgeAtOnce();
      return;
    }
    if (this.#whole?.solution === this.#source.solution() && this.#whole.view === this.#source.view()) return;
    this.#following ??= setTimeout(() => {
      this.#following = undefined;
      workspace.judgeHeld();
      const solution = this.#source.solution();
      const view = this.#source.view();
      this.#whole = { solution, view, scene: this.#draw(solution, view) };
    }, FOLLOW_PAUSE);
  }
}
