/**
 * One drag from pointer down to pointer up, as plain arithmetic: pixels in, depth out.
 * The grab offset is kept, so nothing jumps; a fine drag moves a tenth; the scale is the one that stood at the start.
 */
import type { Metres } from '../../model/si.ts';
import { dragStep, onStep } from './dragStep.ts';
import { caughtBy, type Snap } from './snaps.ts';

/** px that a pointer moves before a press becomes a drag. */
export const SLOP = { mouse: 3, pen: 3, touch: 8 } as const;

/** Milliseconds for which a finger rests on a level before it has it in hand. */
export const HOLD = 400;

/** Share of the pointer's way that a fine drag goes. */
const FINE = 0.1;

export interface GestureStart {
  readonly depth: Metres;
  readonly pointerY: number;
  readonly metresPerPixel: Metres;
  readonly units: 'us' | 'metric';
  /** Where the grid of steps counts from. */
  readonly origin: Metres;
  readonly snaps: readonly Snap[];
}

export interface Reach {
  readonly depth: Metres;
  readonly caught: Snap | null;
  /** What a written value is rounded to; undefined where the depth is exact. */
  readonly step: Metres | undefined;
}

export class Gesture {
  readonly start: GestureStart;
  #depth: Metres;
  #pointerY: number;
  #caught: Snap | null = null;

  constructor(start: GestureStart) {
    this.start = start;
    this.#depth = start.depth;
    this.#pointerY = start.pointerY;
  }

  /** @param loose  nothing catches */
  moveTo(pointerY: number, { fine, loose }: { readonly fine: boolean; readonly loose: boolean }): Reach {
    const { metresPerPixel, units, origin, snaps, depth: started } = this.start;
    const gain = fine ? FINE : 1;
    this.#depth += (pointerY - this.#pointerY) * metresPerPixel * gain;
    this.#pointerY = pointerY;
    this.#caught = loose ? null : caughtBy(this.#depth, snaps, metresPerPixel * gain, this.#caught);
    if (this.#caught !== null) return { depth: this.#caught.depth, caught: this.#caught, step: undefined };
    const step = dragStep(metresPerPixel * gain, units);
    // Back where it began, it is exactly what it was, on the grid or not.
    if (Math.abs(this.#depth - started) < step / 2) return { depth: started, caught: null, step: undefined };
    return { depth: onStep(this.#depth, step, origin), caught: null, step };
  }
}
