/** Pointer, wheel and keys on one sheet, each given to whom it concerns: a level that is dragged, the zoom, a mark, a part. */
import type { FramePlace, Scene, ViewName } from '../../draw/view.ts';
import type { Handle } from '../../model/handles.ts';
import type { Metres } from '../../model/si.ts';
import type { PartKind } from '../../model/solution.ts';
import type { Workspace } from '../state/workspace.svelte.ts';
import { depthAt, frameAt, lineAt, markAt, partAt } from './lookup.ts';
import { PointerDrag } from './pointerDrag.ts';
import type { SectionZoom } from './zoom.svelte.ts';
import { ZoomGestures } from './zoomGestures.ts';

export interface PointedPart {
  readonly key: string;
  readonly kind: PartKind;
  readonly depth: Metres;
}

export interface PointerSurface {
  readonly element: HTMLElement;
  readonly workspace: Workspace;
  readonly zoom: SectionZoom;
  readonly scene: () => Scene;
  readonly coarse: () => boolean;
  /** The section, where it can be zoomed. */
  readonly zoomable: () => FramePlace | undefined;
  /** px */
  readonly width: () => number;
  readonly windowed: () => boolean;
  readonly freeze: (dragged: ViewName | null) => void;
  readonly choose: (handle: Handle) => void;
  /** Where the chosen level is, if it is in view. */
  readonly chosenDepth: () => Metres | null;
  /** The rail of depths, at this x, takes the chosen level to where it is clicked. */
  readonly onRail: (x: number) => boolean;
  readonly placeChosen: (y: number) => void;
  readonly onmark: (number: number) => void;
  readonly onpart: (part: PointedPart | null, clicked: boolean) => void;
  /** The close-up is asked for at a depth. */
  readonly onlook: (depth: Metres) => void;
}

export class SheetPointer {
  readonly #surface: PointerSurface;
  readonly #drag: PointerDrag;
  readonly #gestures: ZoomGestures;
  readonly #listeners: readonly (readonly [type: string, listener: EventListener, passive: boolean])[];
  #pointed: string | null = null;

  constructor(surface: PointerSurface) {
    const { element, workspace, zoom, scene, coarse, freeze, windowed, choose } = surface;
    this.#surface = surface;
    const drag = new PointerDrag({ element, workspace, scene, coarse, freeze, windowed, choose });
    const gestures = new ZoomGestures({
      element,
      zoom,
      section: surface.zoomable,
      edge: () =>
        Math.min(
          surface.width(),
          ...scene()
            .frames.filter(({ view }) => view !== 'O')
            .map(({ x }) => x),
        ),
      letGo: () => {
        if (workspace.heldHandle === null) drag.revert();
        return workspace.heldHandle === null;
      },
      panned: () => (drag.settled = true),
      chosen: surface.chosenDepth,
    });
    this.#drag = drag;
    this.#gestures = gestures;
    this.#listeners = this.#listenersOf();
    for (const [type, listener, passive] of this.#listeners)
      element.addEventListener(type, listener, passive ? undefined : { passive: false });
  }

  zoomBy(times: number): void {
    this.#gestures.zoomBy(times);
  }

  stop(): void {
    this.#drag.revert();
    this.#gestures.stop();
    this.#surface.zoom.stop();
    for (const [type, listener] of this.#listeners) this.#surface.element.removeEventListener(type, listener);
  }

  #listenersOf(): (readonly [string, EventListener, boolean])[] {
    const drag = this.#drag;
    const gestures = this.#gestures;
    const end = (event: PointerEvent): void => {
      drag.revert(event);
      gestures.up(event);
    };
    const on = {
      pointerdown: (event: PointerEvent) => {
        drag.down(event);
        if (!drag.busy) gestures.down(event);
      },
      pointermove: (event: PointerEvent) => {
        if (drag.busy) drag.move(event);
        else if (gestures.panning) gestures.move(event);
        else this.#point(event);
      },
      pointerup: (event: PointerEvent) => {
        drag.up(event);
        gestures.up(event);
      },
      pointercancel: end,
      lostpointercapture: end,
      dblclick: (event: MouseEvent) => {
        if (!this.#lookCloser(event)) gestures.doubleClick(event);
      },
      keydown: gestures.key,
      pointerleave: () => this.#leave(),
      // After a tap the browser presses a mouse that is not there, and would take the focus off the range just chosen.
      mousedown: (event: MouseEvent) => {
        if (drag.settled || (event.target instanceof Element && event.target.closest('[data-handle]') !== null))
          event.preventDefault();
      },
      click: (event: MouseEvent) => this.#click(event),
    };
    // These may keep the page from scrolling, which a browser otherwise takes for granted that they do not.
    const blocking = { wheel: gestures.wheel, touchstart: gestures.touchStart };
    return [
      ...Object.entries(on).map(([type, listener]) => [type, listener as EventListener, true] as const),
      ...Object.entries(blocking).map(([type, listener]) => [type, listener as EventListener, false] as const),
    ];
  }

  #point(event: PointerEvent): void {
    if (event.pointerType !== 'mouse') return;
    const { workspace, element, onpart } = this.#surface;
    const scene = this.#surface.scene();
    const { x, y } = this.#within(event);
    const line = lineAt(scene, workspace.handles, x, y, workspace.selected);
    const mark = markAt(scene, x, y);
    const part = partAt(scene, x, y, false);
    const ground = this.#surface.windowed() && this.#isInSection(x, y) ? 'grab' : '';
    element.style.cursor = mark !== null ? 'pointer' : line !== null ? 'ns-resize' : part !== null ? 'help' : ground;
    const key = mark !== null ? String(mark.number) : (part?.part ?? null);
    if (key === this.#pointed) return;
    this.#pointed = key;
    workspace.lit = key;
    onpart(
      part === null
        ? null
        : {
            key: part.part,
            kind: part.kind,
            depth: this.#depthUnder(part.x + part.width / 2, part.y + part.height / 2),
          },
      false,
    );
  }

  #leave(): void {
    if (this.#pointed === null || this.#drag.busy) return;
    this.#pointed = null;
    this.#surface.workspace.lit = null;
    this.#surface.onpart(null, false);
  }

  #click(event: MouseEvent): void {
    if (this.#drag.settled) {
      this.#drag.settled = false;
      return;
    }
    if (event.target instanceof Element && event.target.closest('[data-own-pointer], [data-handle]') !== null) return;
    const { coarse, onmark, onpart, onRail, placeChosen } = this.#surface;
    const scene = this.#surface.scene();
    const { x, y } = this.#within(event);
    const mark = markAt(scene, x, y);
    if (mark !== null) {
      onmark(mark.number);
    } else if (onRail(x)) {
      placeChosen(y);
    } else {
      const part = partAt(scene, x, y, coarse());
      if (part !== null) onpart({ key: part.part, kind: part.kind, depth: this.#depthUnder(x, y) }, true);
    }
  }

  /** At a part, or anywhere in a detail of the well; twice on the ground zooms. A finger taps one part after another. */
  #lookCloser(event: MouseEvent): boolean {
    if (this.#surface.coarse()) return false;
    if (event.target instanceof Element && event.target.closest('[data-own-pointer], [data-handle]') !== null)
      return false;
    const scene = this.#surface.scene();
    const { x, y } = this.#within(event);
    const view = frameAt(scene, x, y)?.view;
    if (view === undefined || view === 'D' || (view === 'O' && partAt(scene, x, y, false) === null)) return false;
    event.preventDefault();
    this.#surface.onlook(this.#depthUnder(x, y));
    return true;
  }

  #within(event: MouseEvent): { x: number; y: number } {
    const { left, top } = this.#surface.element.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  }

  #isInSection(x: number, y: number): boolean {
    const section = this.#surface.zoomable();
    if (section === undefined) return false;
    return x >= section.x && x <= section.x + section.width && y >= section.y && y <= section.y + section.height;
  }

  #depthUnder(x: number, y: number): Metres {
    const frame = this.#surface
      .scene()
      .frames.findLast((each) => x >= each.x && x <= each.x + each.width && y >= each.y && y <= each.y + each.height);
    return frame === undefined ? 0 : depthAt(frame, y);
  }
}
