/** A relief valve, its spring housing and lever above the body, its outlet to the side; and the open pipe that leads down. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path } from '../shapes.ts';
import { block, straight, stroke } from './outline.ts';
import type { Tones } from '../theme.ts';

/** Height of its outlet, as a share of its own from the top. */
export const OUTLET = 0.52;

/** @param turnsDown  the sign of a few pixels shows its outlet turned to the floor, without a pipe */
export function drawReliefValve({ left, top, right, bottom }: Box, { brass }: Tones, turnsDown: boolean): Shape {
  const x = (left + right) / 2;
  const half = (right - left) / 2;
  const y = top + (bottom - top) * OUTLET;
  const line = faced(brass.base, brass.edge, 0.9);
  return group('reliefValve', [
    path(
      'body',
      block(x - half, y - half * 0.9, x + half, bottom - half * 0.5) +
        block(x - half * 0.5, bottom - half * 0.5, x + half * 0.5, bottom),
      line,
    ),
    path('housing', block(x - half * 0.62, top + half * 0.5, x + half * 0.62, y - half * 0.9), {
      ...line,
      fill: brass.light,
    }),
    path('lever', stroke(x - half * 0.6, top + half * 0.5, x + half * 1.4, top), inked(brass.edge, 1.3)),
    ...(turnsDown
      ? [
          path(
            'outlet',
            straight(
              [
                [right, y],
                [right + 1.6, y],
                [right + 1.6, y + 3],
              ],
              false,
            ),
            faced('none', brass.edge, 0.9),
          ),
        ]
      : []),
  ]);
}

export interface ReliefPipeOnPaper {
  /** The valve's outlet [px]. */
  readonly from: readonly [x: number, y: number];
  /** Middle of its plumb run, and its open end [px]. */
  readonly x: number;
  readonly end: number;
  readonly wide: number;
}

export function drawReliefPipe({ from, x, end, wide }: ReliefPipeOnPaper, { brass, waterEdge }: Tones): Shape {
  const run = straight([from, [x, from[1]], [x, end]], false);
  const along = (key: string, ink: string, width: number): Shape =>
    path(key, run, { fill: 'none', stroke: ink, 'stroke-width': width, 'stroke-linejoin': 'round' });
  const drop = wide * 0.9;
  return group('reliefPipe', [
    along('edge', brass.edge, wide),
    along('body', brass.light, Math.max(0.8, wide - 1.8)),
    // Open: what it lets out falls where it is seen.
    path('drops', stroke(x, end + drop * 0.8, x, end + drop * 1.6), {
      stroke: waterEdge,
      'stroke-width': 1.4,
      'stroke-linecap': 'round',
    }),
  ]);
}
