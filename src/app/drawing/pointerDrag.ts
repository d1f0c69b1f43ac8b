/**
 * Mouse, pen and finger on one drawing: from press to release, with every way out.
 *
 * A press becomes a drag after a few pixels; a finger's only on a level that was chosen before, or that it rests on, for
 * a thumb that scrolls comes down anywhere. The newest position counts once a frame; release makes one step of the
 * history; Escape, a cancelled pointer, a lost capture and all that takes a hand away put everything back.
 */
import type { FramePlace, Scene, ViewName } from '../../draw/view.ts';
import type { Handle } from '../../model/handles.ts';
import type { Plan } from '../../model/plan/schema.ts';
import type { Solution } from '../../model/solution.ts';
import { sayBlock, sayHandle } from '../../words/sayLevel.ts';
import { en } from '../firstLanguage.ts';
import type { Fact, Workspace } from '../state/workspace.svelte.ts';
import { Gesture, HOLD, SLOP, type Reach } from './gesture.ts';
import { chipAt, isOnRail, lineAt, metresPerPixel } from './lookup.ts';
import { fieldFor } from './fieldFor.ts';
import { nameOfMove, noticeOf, originOf, planWith } from './moving.ts';
import { sameFields } from './sameFields.ts';
import { snapsFor } from './snaps.ts';
import { whenTakenAway } from './takenAway.ts';

export interface DragSurface {
  readonly element: HTMLElement;
  readonly workspace: Workspace;
  readonly scene: () => Scene | null;
  readonly coarse: () => boolean;
  /** A drag begins in a view, whose scale is kept until it ends (null). */
  readonly freeze: (view: ViewName | null) => void;
  /** The section shows a part of the well: a level dragged there goes no further than the part's ends. */
  readonly windowed: () => boolean;
  /** A chip was pressed and released without a drag. */
  readonly choose: (handle: Handle) => void;
}

interface Press {
  readonly pointerId: number;
  readonly captured: Element;
  readonly handle: Handle;
  readonly frame: FramePlace;
  /** Its level is not in the window: it is chosen there, not dragged. */
  readonly beyond: boolean;
  readonly plan: Plan;
  readonly solution: Solution;
  readonly downX: number;
  readonly downY: number;
  readonly byTouch: boolean;
  /** Asked for before it changes. */
  readonly fact: Fact | null;
  /** Takes the level when a finger has rested on it for long enough; undefined where it may be dragged at once. */
  readonly resting: ReturnType<typeof setTimeout> | undefined;
  /** To be called at its end: nothing can take it away any more. */
  readonly ended: () => void;
  gesture: Gesture | null;
  /** Where the level was asked to go last. */
  reach: Reach | null;
  newest: PointerEvent;
}

export class PointerDrag {
  readonly #surface: DragSurface;
  #press: Press | null = null;
  #frameRequest = 0;
  /** Done with: what the browser still sends after it, a click and for a finger the press of a mouse, is none. */
  settled = false;

  constructor(surface: DragSurface) {
    this.#surface = surface;
  }

  get busy(): boolean {
    return this.#press !== null;
  }

  down(event: PointerEvent): void {
    this.settled = false;
    if (!event.isPrimary || event.button !== 0 || this.#press !== null) return;
    const target = event.target;
    if (!(target instanceof Element) || target.closest('[data-own-pointer]') !== null) return;
    const { workspace, element } = this.#surface;
    const { solution } = workspace;
    const { plan } = workspace.desk;
    const scene = this.#surface.scene();
    if (scene === null || solution === null || plan === null) return;
    const { left, top } = element.getBoundingClientRect();
    const found = this.#find(scene, event.clientX - left, event.clientY - top, event.pointerType);
    if (found === null) {
      // A chosen level is placed by the click that follows: the focus, and with it the choice, must stay until then.
      if (workspace.selected !== null && isOnRail(scene, event.clientX - left)) event.preventDefault();
      return;
    }
    const byTouch = event.pointerType === 'touch';
    if (found.handle.locked !== null) {
      // A finger may only be about to scroll: its tap asks.
      if (byTouch) return;
      workspace.notice = {
        handle: found.handle.id,
        words: sayBlock(found.handle.locked, en),
        field: fieldFor(found.handle),
      };
      return;
    }
    workspace.endBurst();
    workspace.notice = null;
    workspace.answer(false);
    const captured = target.closest('[data-handle]') ?? element;
    captured.setPointerCapture(event.pointerId);
    // Without this a mouse would select text while dragging; touch keeps its click.
    if (!byTouch) event.preventDefault();
    const press: Press = {
      pointerId: event.pointerId,
      captured,
      ...found,
      plan,
      solution,
      downX: event.clientX,
      downY: event.clientY,
      byTouch,
      fact: workspace.factMovedBy(found.handle),
      resting:
        byTouch && !found.beyond && workspace.selected !== found.handle.id
          ? setTimeout(() => this.#take(press), HOLD)
          : undefined,
      ended: whenTakenAway(event.pointerId, () => this.revert()),
      gesture: null,
      reach: null,
      newest: event,
    };
    this.#press = press;
  }

  /** A finger has rested on the level: it has it in hand, and sees that it has. */
  #take(press: Press): void {
    this.#begin(press);
    this.#apply();
  }

  #find(
    scene: Scene,
    x: number,
    y: number,
    pointerType: string,
  ): { handle: Handle; frame: FramePlace; beyond: boolean } | null {
    const { workspace, coarse } = this.#surface;
    const last = workspace.selected;
    const chip = chipAt(scene, x, y, coarse() || pointerType === 'touch', last);
    const frame = scene.frames.find(({ view }) => view === 'O') ?? scene.frames[0];
    if (chip !== null && frame !== undefined) {
      const handle = workspace.handles.find(({ id }) => id === chip.handle);
      return handle === undefined ? null : { handle, frame, beyond: chip.beyond !== undefined };
    }
    const line = pointerType === 'touch' ? null : lineAt(scene, workspace.handles, x, y, last);
    return line === null ? null : { ...line, beyond: false };
  }

  move(event: PointerEvent): void {
    const press = this.#press;
    if (press === null || event.pointerId !== press.pointerId) return;
    press.newest = event;
    if (press.gesture === null) {
      if (press.beyond) return;
      const way = Math.hypot(event.clientX - press.downX, event.clientY - press.downY);
      if (way < (press.byTouch ? SLOP.touch : SLOP.mouse)) return;
      if (press.resting !== undefined) {
        this.#end();
        return;
      }
      this.#begin(press);
    }
    if (this.#frameRequest === 0) this.#frameRequest = requestAnimationFrame(() => this.#apply());
  }

  #begin(press: Press): void {
    const { workspace, freeze } = this.#surface;
    freeze(press.frame.view);
    // The field of the level that had the focus would lie over the drag.
    if (document.activeElement instanceof HTMLElement && this.#surface.element.contains(document.activeElement))
      document.activeElement.blur();
    workspace.selected = null;
    press.gesture = new Gesture({
      depth: press.handle.depth,
      pointerY: press.downY,
      metresPerPixel: metresPerPixel(press.frame),
      units: workspace.units,
      origin: originOf(press.handle, press.solution),
      snaps: workspace.settings.snapping ? snapsFor(press.handle, press.solution, workspace.show) : [],
    });
  }

  #apply(): void {
    this.#frameRequest = 0;
    const press = this.#press;
    if (press?.gesture == null) return;
    const { workspace } = this.#surface;
    const { newest, handle } = press;
    const reach = this.#inWindow(
      press.gesture.moveTo(newest.clientY, {
        fine: newest.shiftKey,
        loose: newest.altKey || newest.ctrlKey || newest.metaKey,
      }),
      press.frame,
    );
    // Between two steps of the level there is nothing new to draw.
    if (press.reach !== null && sameFields(press.reach, reach)) return;
    press.reach = reach;
    const moved = planWith(workspace, press.plan, press.solution, handle, reach.depth, reach.step);
    workspace.preview = moved.plan;
    workspace.held = {
      handle,
      start: handle.depth,
      depth: moved.depth,
      wanted: reach.depth,
      blocked: moved.blocked,
      caught: moved.blocked === null ? (reach.caught?.reason ?? null) : null,
    };
  }

  /** The window stands still while a level is dragged in it, so its edges are as far as the level goes. */
  #inWindow(reach: Reach, { view, topDepth, bottomDepth }: FramePlace): Reach {
    if (view !== 'O' || !this.#surface.windowed()) return reach;
    const depth = Math.min(bottomDepth, Math.max(topDepth, reach.depth));
    return depth === reach.depth ? reach : { ...reach, depth, caught: null };
  }

  up(event: PointerEvent): void {
    const press = this.#press;
    if (press === null || event.pointerId !== press.pointerId) return;
    press.newest = event;
    const { workspace } = this.#surface;
    if (press.gesture === null) {
      this.#end();
      // The drawing may go to the chosen level, and something else then lies under the finger.
      this.settled = press.byTouch;
      this.#surface.choose(press.handle);
      return;
    }
    this.#apply();
    const { held, preview } = workspace;
    this.#end();
    this.settled = true;
    if (preview === null || held === null) {
      workspace.held = null;
      return;
    }
    const { handle, fact } = press;
    const change = (): void => {
      workspace.edit((before) => nameOfMove(workspace, handle, before, preview), preview, {
        say: () =>
          workspace.solution === null ? '' : sayHandle(handle, held.depth, workspace.solution, en, workspace.show),
      });
      if (held.blocked !== null) workspace.notice = noticeOf(workspace, handle, held.blocked, held.wanted);
    };
    if (fact !== null && held.depth !== held.start) {
      workspace.ask({ handle, fact, change });
      return;
    }
    workspace.held = null;
    // A finger that rested on a level and did not move it has chosen it.
    if (press.byTouch && held.depth === held.start) {
      workspace.preview = null;
      this.#surface.choose(press.handle);
      return;
    }
    change();
  }

  /** Cancelled by the system, lost, or Escape: as if the press had never been. */
  revert(event?: PointerEvent): void {
    const press = this.#press;
    if (press === null) return;
    if (
      event !== undefined &&
      (event.pointerId !== press.pointerId || (event.type === 'lostpointercapture' && event.target !== press.captured))
    )
      return;
    this.#end();
    this.settled = press.gesture !== null;
    this.#surface.workspace.cancelHold();
  }

  #end(): void {
    const press = this.#press;
    this.#press = null;
    cancelAnimationFrame(this.#frameRequest);
    this.#frameRequest = 0;
    this.#surface.freeze(null);
    if (press === null) return;
    clearTimeout(press.resting);
    press.ended();
    if (press.captured.hasPointerCapture(press.pointerId)) press.captured.releasePointerCapture(press.pointerId);
  }
}
