/** Pictures of kept wells: drawn one at a time while the page has nothing else to do, and remembered. */
import type { Portrait, View } from '../../draw/index.ts';
import type { Plan } from '../../model/plan/schema.ts';

/** px of the drawing: it is shown at half of it, so that its lines are half as heavy. */
const SIZE = { width: 112, height: 144 } as const;
/** More wells than a list has as a rule, in two themes. */
const MOST_KEPT = 200;
/** Milliseconds after which a picture is drawn though the page is busy. */
const PATIENCE = 400;

/** Null: there is nothing that could be drawn. */
export type KeptPicture = Portrait | null;

/** Draws a plan that was read. */
export type Painter = (plan: Plan, view: Pick<View, 'width' | 'height' | 'theme'>) => Portrait;

export class KeptPictures {
  /** By version and theme, the oldest first. */
  readonly #drawn = new Map<string, KeptPicture>();
  /** When the picture before is done. */
  #turn: Promise<unknown> = Promise.resolve();

  /** Undefined where it was not drawn yet. */
  get(key: string): KeptPicture | undefined {
    return this.#drawn.get(key);
  }

  /**
   * @param plan    asked for when its turn comes
   * @param paint   draws it
   * @param wanted  whether anybody still looks; who does not gets nothing
   */
  draw(
    key: string,
    theme: View['theme'],
    plan: () => Promise<Plan | null>,
    paint: Painter,
    wanted: () => boolean,
  ): Promise<KeptPicture | undefined> {
    const drawing = this.#turn.then(async () => {
      if (wanted()) await idle();
      if (!wanted()) return undefined;
      const picture = this.#drawn.get(key) ?? (await pictureOf(plan, theme, paint));
      this.#keep(key, picture);
      return picture;
    });
    this.#turn = drawing;
    return drawing;
  }

  #keep(key: string, picture: KeptPicture): void {
    this.#drawn.set(key, picture);
    const [oldest] = this.#drawn.keys();
    if (this.#drawn.size > MOST_KEPT && oldest !== undefined) this.#drawn.delete(oldest);
  }
}

async function pictureOf(plan: () => Promise<Plan | null>, theme: View['theme'], paint: Painter): Promise<KeptPicture> {
  try {
    const read = await plan();
    return read === null ? null : paint(read, { ...SIZE, theme });
  } catch (fault) {
    console.info('wellcut: a kept well could not be shown', fault);
    return null;
  }
}

/** Between two frames, when nothing else waits; some browsers cannot tell. */
function idle(): Promise<void> {
  return new Promise((done) => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => done(), { timeout: PATIENCE });
    else setTimeout(done, 30);
  });
}
