/** A ball valve in a pipe, open: its lever lies along the pipe. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path } from '../shapes.ts';
import { block, roundBlock, straight } from './outline.ts';
import type { Tones } from '../theme.ts';

/** @param lying  in a level pipe */
export function drawShutOff({ left, top, right, bottom }: Box, { brass, ink }: Tones, lying: boolean): Shape {
  const line = faced(brass.base, brass.edge, 0.9);
  const x = (left + right) / 2;
  const y = (top + bottom) / 2;
  if (lying) {
    const nut = (right - left) * 0.2;
    return group('shutOff', [
      path(
        'ends',
        block(left, top + (bottom - top) * 0.3, left + nut, bottom) +
          block(right - nut, top + (bottom - top) * 0.3, right, bottom),
        line,
      ),
      path('body', roundBlock(left + nut * 0.8, top + (bottom - top) * 0.36, right - nut * 0.8, bottom - 0.5, 2), {
        ...line,
        fill: brass.light,
      }),
      path(
        'lever',
        straight(
          [
            [x, top + (bottom - top) * 0.36],
            [x, top],
            [right + nut, top],
          ],
          false,
        ),
        { fill: 'none', stroke: ink, 'stroke-width': 2.2, 'stroke-linejoin': 'round' },
      ),
    ]);
  }
  const nut = (bottom - top) * 0.2;
  return group('shutOff', [
    path('ends', block(left, top, right, top + nut) + block(left, bottom - nut, right, bottom), line),
    path('body', roundBlock(left + 0.5, top + nut * 0.8, right - 0.5, bottom - nut * 0.8, 2), {
      ...line,
      fill: brass.light,
    }),
    path(
      'lever',
      straight(
        [
          [right - 0.5, y],
          [right + (right - left) * 0.35, y],
          [right + (right - left) * 0.35, top - nut],
        ],
        false,
      ),
      { fill: 'none', stroke: ink, 'stroke-width': 2.2, 'stroke-linejoin': 'round' },
    ),
  ]);
}
