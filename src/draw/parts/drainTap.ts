/** A drain: a hose tap under the tank tee, its spout turned down, its wheel to the side. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path } from '../shapes.ts';
import { block, straight } from './outline.ts';
import type { Tones } from '../theme.ts';

export function drawDrainTap({ left, top, right, bottom }: Box, { brass, cast }: Tones): Shape {
  const wide = right - left;
  const tall = bottom - top;
  const x = left + wide * 0.56;
  const neck = wide * 0.16;
  const line = faced(brass.base, brass.edge, 0.9);
  return group('drain', [
    path('neck', block(x - neck, top, x + neck, top + tall * 0.4), line),
    path(
      'spout',
      straight([
        [x - neck * 1.6, top + tall * 0.3],
        [x + neck * 1.6, top + tall * 0.3],
        [x + neck * 1.6, top + tall * 0.66],
        [left + wide * 0.42, top + tall * 0.66],
        [left + wide * 0.42, bottom],
        [left + wide * 0.06, bottom],
        [left + wide * 0.06, top + tall * 0.56],
        [x - neck * 1.6, top + tall * 0.42],
      ]),
      line,
    ),
    path(
      'wheel',
      block(right - wide * 0.14, top + tall * 0.24, right, top + tall * 0.74),
      faced(cast.base, cast.edge, 0.8),
    ),
  ]);
}
