/** Arrows where the ground's water comes in through the slots of a screen. */
import { Pen } from '../hatch/pen.ts';

/** From arrow to arrow down the screen, and how many there are at most. */
const PITCH_PX = 26;
const MOST = 5;
/** Length of the shaft, and how far from the pack the head ends [px]. */
const SHAFT_PX = 13;
const CLEAR_PX = 1;

/**
 * Path text of the arrows on both sides.
 *
 * @param axis  the screen's middle [px]
 * @param out   half width of what the water comes through [px]
 */
export function entryArrows(axis: number, out: number, from: number, to: number): string {
  const count = Math.max(1, Math.min(MOST, Math.floor((to - from) / PITCH_PX)));
  const pitch = (to - from) / count;
  const pen = new Pen();
  for (const side of [-1, 1])
    for (let i = 0; i < count; i++) {
      const y = from + pitch * (i + 0.5);
      const head = axis + side * (out + CLEAR_PX);
      pen.stroke(head + side * SHAFT_PX, y, head, y).through([
        [head + side * 4, y - 3],
        [head, y],
        [head + side * 4, y + 3],
      ]);
    }
  return pen.path;
}
