/**
 * Wheel, mouse, fingers and keys that zoom and pan the section.
 *
 * A plain wheel over a whole well scrolls the page, as it does past the ends of a window; one finger scrolls the page
 * or drags a level, two zoom.
 */
import type { FramePlace } from '../../draw/view.ts';
import type { Metres } from '../../model/si.ts';
import { SLOP } from './gesture.ts';
import { depthAt, metresPerPixel } from './lookup.ts';
import type { SectionZoom } from './zoom.svelte.ts';

export interface ZoomSurface {
  readonly element: HTMLElement;
  readonly zoom: SectionZoom;
  /** The section as it is drawn; undefined on a sheet without one. */
  readonly section: () => FramePlace | undefined;
  /** x at which the section's part of the sheet ends [px]. */
  readonly edge: () => number;
  /** A second finger came: a press that is not yet a drag is none. True where nothing is dragged. */
  readonly letGo: () => boolean;
  /** The ground was dragged: the click that the browser sends after it is none. */
  readonly panned: () => void;
  /** The level that is chosen, in the window. */
  readonly chosen: () => Metres | null;
}

/** One step of keys, buttons and double-clicks. */
export const STEP = 2;

/** A wheel's notch is some 100 px; a pinch on a touchpad sends a few at a time. */
const WHEEL_GAIN = 0.0025;
const PINCH_GAIN = 0.01;
const NOTCH = 50;
/** px in a line and in a page, for wheels that count in those. */
const WHEEL_UNIT = [1, 16, 400] as const;

/** Shares of the window that a page and an arrow pan. */
const PAGE = 0.8;
const ARROW = 0.1;

interface Pan {
  readonly pointerId: number;
  readonly downX: number;
  readonly downY: number;
  y: number;
  moving: boolean;
}

interface Pinch {
  readonly window: SectionZoom['window'];
  readonly depth: Metres;
  readonly apart: number;
}

const OWN = '[data-own-pointer], [data-handle]';

export class ZoomGestures {
  readonly #surface: ZoomSurface;
  #pan: Pan | null = null;
  #pinch: Pinch | null = null;
  /** What the two fingers came down on. */
  #touched: readonly EventTarget[] = [];

  constructor(surface: ZoomSurface) {
    this.#surface = surface;
  }

  get panning(): boolean {
    return this.#pan !== null;
  }

  #at({ clientX, clientY }: { clientX: number; clientY: number }): { x: number; y: number } {
    const { left, top } = this.#surface.element.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  }

  #isOver(x: number): boolean {
    return this.#surface.section() !== undefined && x < this.#surface.edge();
  }

  readonly wheel = (event: WheelEvent): void => {
    const section = this.#surface.section();
    const { x, y } = this.#at(event);
    if (section === undefined || !this.#isOver(x)) return;
    const { zoom } = this.#surface;
    const px = event.deltaY * (WHEEL_UNIT[event.deltaMode] ?? 1);
    if (event.ctrlKey || event.metaKey) {
      // The page must not grow as well, even at the end of what the section can show.
      event.preventDefault();
      const gain = Math.abs(px) < NOTCH ? PINCH_GAIN : WHEEL_GAIN;
      zoom.about(this.#depthAt(section, y), Math.exp(-px * gain));
    } else if (zoom.window !== null && !event.shiftKey && zoom.pan(px * metresPerPixel(section))) {
      event.preventDefault();
    }
  };

  /** The depth under the pointer; beside the section its nearest end. */
  #depthAt(section: FramePlace, y: number): Metres {
    return Math.min(section.bottomDepth, Math.max(section.topDepth, depthAt(section, y)));
  }

  readonly doubleClick = (event: MouseEvent): void => {
    const section = this.#surface.section();
    if (section === undefined || (event.target instanceof Element && event.target.closest(OWN) !== null)) return;
    const { x, y } = this.#at(event);
    if (x < section.x || x > section.x + section.width || y < section.y || y > section.y + section.height) return;
    event.preventDefault();
    this.#surface.zoom.about(depthAt(section, y), STEP);
  };

  /** Mouse and pen take hold of the ground; a finger there scrolls the page. */
  down(event: PointerEvent): void {
    const section = this.#surface.section();
    if (event.pointerType === 'touch' || event.button !== 0 || section === undefined) return;
    if (this.#surface.zoom.window === null || this.#pan !== null) return;
    if (event.target instanceof Element && event.target.closest(OWN) !== null) return;
    const { x } = this.#at(event);
    if (x < section.x || x > section.x + section.width) return;
    const { pointerId, clientX, clientY } = event;
    this.#pan = { pointerId, downX: clientX, downY: clientY, y: clientY, moving: false };
  }

  move(event: PointerEvent): void {
    const pan = this.#pan;
    const section = this.#surface.section();
    if (pan === null || section === undefined || event.pointerId !== pan.pointerId) return;
    if (!pan.moving) {
      if (Math.hypot(event.clientX - pan.downX, event.clientY - pan.downY) < SLOP.mouse) return;
      pan.moving = true;
      this.#surface.element.setPointerCapture(event.pointerId);
    }
    this.#surface.zoom.pan((pan.y - event.clientY) * metresPerPixel(section));
    pan.y = event.clientY;
  }

  up(event: PointerEvent): void {
    const pan = this.#pan;
    if (pan === null || event.pointerId !== pan.pointerId) return;
    this.#pan = null;
    if (!pan.moving) return;
    this.#surface.panned();
    const { element } = this.#surface;
    if (element.hasPointerCapture(event.pointerId)) element.releasePointerCapture(event.pointerId);
  }

  readonly touchStart = (event: TouchEvent): void => {
    const section = this.#surface.section();
    const fingers = this.#fingers(event);
    if (section === undefined || fingers === null || !this.#isOver(Math.max(fingers.left, fingers.right))) return;
    if (!this.#surface.letGo()) return;
    // Else the browser would scroll and enlarge the page with the same two fingers.
    if (event.cancelable) event.preventDefault();
    this.#pinch = { window: this.#surface.zoom.window, depth: depthAt(section, fingers.y), apart: fingers.apart };
    // A finger's events go on to the shape that it came down on, even when that is no longer on the page.
    this.#leave();
    this.#touched = [...new Set([...event.touches].map(({ target }) => target))];
    for (const target of this.#touched) {
      target.addEventListener('touchmove', this.#touchMove as EventListener, { passive: false });
      target.addEventListener('touchend', this.#touchEnd as EventListener);
      target.addEventListener('touchcancel', this.#touchEnd as EventListener);
    }
  };

  #leave(): void {
    for (const target of this.#touched) {
      target.removeEventListener('touchmove', this.#touchMove as EventListener);
      target.removeEventListener('touchend', this.#touchEnd as EventListener);
      target.removeEventListener('touchcancel', this.#touchEnd as EventListener);
    }
    this.#touched = [];
  }

  readonly #touchMove = (event: TouchEvent): void => {
    const pinch = this.#pinch;
    const section = this.#surface.section();
    const fingers = this.#fingers(event);
    if (pinch === null || section === undefined || fingers === null) return;
    if (event.cancelable) event.preventDefault();
    const share = (fingers.y - section.y) / section.height;
    this.#surface.zoom.pinch(pinch, { share, apart: fingers.apart });
  };

  readonly #touchEnd = (event: TouchEvent): void => {
    if (event.touches.length >= 2) return;
    this.#pinch = null;
    this.#leave();
  };

  /** The sheet leaves the page. */
  stop(): void {
    this.#pinch = null;
    this.#leave();
  }

  /** Their middle and how far they are apart [px]; null unless there are two. */
  #fingers({ touches }: TouchEvent): { left: number; right: number; y: number; apart: number } | null {
    const [first, second] = [touches[0], touches[1]];
    if (first === undefined || second === undefined || touches.length !== 2) return null;
    const a = this.#at(first);
    const b = this.#at(second);
    return { left: a.x, right: b.x, y: (a.y + b.y) / 2, apart: Math.max(20, Math.hypot(a.x - b.x, a.y - b.y)) };
  }

  readonly key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey || !(event.target instanceof Element)) return;
    const onHandle = event.target.closest('[data-handle]') !== null;
    const onButton = event.target.closest('[data-zoom]') !== null;
    // A field's keys are the field's own, and on a level the pages and arrows move the level.
    if (!onHandle && !onButton) return;
    if (this.press(event.key, event.shiftKey, onButton)) event.preventDefault();
  };

  /** True where the key is one of these. */
  press(key: string, shift: boolean, mayPan: boolean): boolean {
    const { zoom } = this.#surface;
    switch (key) {
      case '+':
      case '=':
        this.zoomBy(STEP);
        return true;
      case '-':
      case '_':
      case '−':
        this.zoomBy(1 / STEP);
        return true;
      case '0':
        zoom.showWhole();
        return true;
    }
    const share = mayPan && zoom.window !== null ? panOf(key, shift) : null;
    if (share === null) return false;
    zoom.panShare(share);
    return true;
  }

  /** About the chosen level, or the middle of what is seen. */
  zoomBy(times: number): void {
    const section = this.#surface.section();
    if (section === undefined) return;
    const middle = (section.topDepth + section.bottomDepth) / 2;
    this.#surface.zoom.about(this.#surface.chosen() ?? middle, times);
  }
}

function panOf(key: string, shift: boolean): number | null {
  if (key === 'PageDown') return PAGE;
  if (key === 'PageUp') return -PAGE;
  if (!shift) return null;
  if (key === 'ArrowDown') return ARROW;
  return key === 'ArrowUp' ? -ARROW : null;
}
