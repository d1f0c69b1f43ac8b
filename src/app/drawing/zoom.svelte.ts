/** Which part of the well the section shows. It belongs to the page: neither the plan nor an export knows of it. */
import type { DepthSpan, WindowRoom } from '../../draw/index.ts';
import type { Metres } from '../../model/si.ts';
import type { Show } from '../../model/units.ts';
import { broughtTo, pannedBy, pinched, shownOf, zoomedAbout } from './zoomWindow.ts';

/** What zooming needs to know of the page. */
export interface ZoomGround {
  /** Another well begins whole. */
  readonly well: () => string | null;
  /** Null where no section is shown. */
  readonly room: () => WindowRoom | null;
  /** While a level is held its scale stands still. */
  readonly isHeld: () => boolean;
  readonly show: () => Show;
  readonly say: (words: string) => void;
}

/** Words come after the last of a burst of steps [ms]. */
const SAY_PAUSE = 400;

export class SectionZoom {
  readonly #ground: ZoomGround;
  #asked = $state.raw<{ readonly well: string | null; readonly window: DepthSpan } | null>(null);
  #saying: ReturnType<typeof setTimeout> | undefined;

  /** Null while the whole well is shown. */
  readonly window: DepthSpan | null = $derived.by(() =>
    this.#asked !== null && this.#asked.well === this.#ground.well() ? this.#asked.window : null,
  );

  constructor(ground: ZoomGround) {
    this.#ground = ground;
  }

  about(depth: Metres, times: number): boolean {
    return this.#set((room) => zoomedAbout(this.window, depth, times, room));
  }

  pan(by: Metres): boolean {
    return this.#set((room) => pannedBy(this.window, by, room));
  }

  /** By a share of what is shown. */
  panShare(share: number): boolean {
    return this.#set((room) => {
      const { topDepth, bottomDepth } = shownOf(this.window, room);
      return pannedBy(this.window, share * (bottomDepth - topDepth), room);
    });
  }

  bringTo(depth: Metres): boolean {
    return this.#set((room) => broughtTo(this.window, depth, room));
  }

  pinch(start: Parameters<typeof pinched>[0], now: Parameters<typeof pinched>[1]): boolean {
    return this.#set((room) => pinched(start, now, room));
  }

  showWhole(): boolean {
    return this.#set(() => null);
  }

  /** True where something changed. */
  #set(next: (room: WindowRoom) => DepthSpan | null): boolean {
    const room = this.#ground.room();
    if (room === null || this.#ground.isHeld()) return false;
    const before = shownOf(this.window, room);
    const window = next(room);
    const after = window ?? room.whole;
    const moved = Math.max(
      Math.abs(after.topDepth - before.topDepth),
      Math.abs(after.bottomDepth - before.bottomDepth),
    );
    // Less than a pixel of any section.
    if (moved < 1e-5) return false;
    this.#asked = window === null ? null : { well: this.#ground.well(), window };
    clearTimeout(this.#saying);
    this.#saying = setTimeout(() => this.#ground.say(this.words()), SAY_PAUSE);
    return true;
  }

  /** "Section shows 150 to 200 ft." */
  words(): string {
    const room = this.#ground.room();
    if (this.window === null || room === null) return 'Section shows the whole well.';
    const { topDepth, bottomDepth } = shownOf(this.window, room);
    const { depth } = this.#ground.show();
    const to = depth(bottomDepth);
    if (topDepth < 0) return `Section shows the top of the well, to ${to}.`;
    const unit = / \D+$/.exec(to)?.[0] ?? '';
    const from = depth(topDepth);
    return `Section shows ${from.endsWith(unit) ? from.slice(0, from.length - unit.length) : from} to ${to}.`;
  }

  /** The page is left. */
  stop(): void {
    clearTimeout(this.#saying);
  }
}
