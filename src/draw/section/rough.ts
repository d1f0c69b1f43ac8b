/** The wall of a hole in rock: it wanders a little, always the same way at the same height of the sheet. */
import type { Point } from '../shapes.ts';

const STEP = 20;

/**
 * Points down one wall between two heights.
 *
 * @param x      where a smooth wall would stand [px]
 * @param sway   how far it wanders to either side [px]
 * @param seed   another wall, another way
 */
export function roughWall(x: number, from: number, to: number, sway: number, seed: number): Point[] {
  const points: Point[] = [[x + swayAt(from, sway, seed), from]];
  for (let row = Math.floor(from / STEP) + 1; row * STEP < to; row++)
    points.push([x + swayAt(row * STEP, sway, seed), row * STEP]);
  points.push([x + swayAt(to, sway, seed), to]);
  return points;
}

/** Two waves of lengths that do not divide each other: it looks broken, and it is smooth in y, so nothing jumps. */
function swayAt(y: number, sway: number, seed: number): number {
  // To a tenth of a pixel: the wall is written three times, and it is rough.
  return Math.round(sway * (6.2 * Math.sin(y / 9.7 + seed * 2.1) + 3.8 * Math.sin(y / 4.3 + seed * 5.3))) / 10;
}
