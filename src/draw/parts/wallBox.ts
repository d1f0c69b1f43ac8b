/** A box on the wall: the disconnect with its lever, the control box of a three-wire motor, the drive with its wave. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path } from '../shapes.ts';
import { pxText } from '../tenths.ts';
import { block, roundBlock, stroke } from './outline.ts';
import type { Tones } from '../theme.ts';

export type WallBox = 'disconnect' | 'controlBox' | 'drive';

export function drawWallBox(kind: WallBox, box: Box, tones: Tones): Shape {
  const { left, top, right, bottom } = box;
  const { conduit, ink } = tones;
  return group(kind, [
    path(
      'box',
      roundBlock(left, top, right, bottom, Math.min(3, (right - left) * 0.12)),
      faced(conduit.light, ink, 1.2),
    ),
    ...FRONTS[kind](box, tones),
  ]);
}

const FRONTS: Readonly<Record<WallBox, (box: Box, tones: Tones) => readonly Shape[]>> = {
  disconnect: ({ left, top, right, bottom }, { ink }) => {
    const wide = right - left;
    const y = (top + bottom) / 2;
    return [
      path(
        'door',
        block(left + wide * 0.14, top + wide * 0.16, right - wide * 0.14, bottom - wide * 0.16),
        faced('none', ink, 0.7),
      ),
      path('lever', stroke(right, y, right + wide * 0.26, y - wide * 0.3), {
        stroke: ink,
        'stroke-width': Math.max(1.6, wide * 0.09),
        'stroke-linecap': 'round',
      }),
    ];
  },
  controlBox: ({ left, top, right, bottom }, { ink }) => {
    const wide = right - left;
    return [
      path(
        'cover',
        stroke(left, top + (bottom - top) * 0.72, right, top + (bottom - top) * 0.72) +
          stroke(left + wide * 0.4, bottom - wide * 0.18, left + wide * 0.6, bottom - wide * 0.18),
        inked(ink, 0.8),
      ),
    ];
  },
  drive: ({ left, top, right, bottom }, { ink }) => {
    const wide = (right - left) * 0.62;
    const y = top + (bottom - top) * 0.5;
    const rise = pxText(wide * 0.5);
    const half = pxText(wide / 2);
    return [
      path(
        'wave',
        `M${pxText((left + right) / 2 - wide / 2)} ${pxText(y)}q${pxText(wide / 4)}-${rise} ${half} 0t${half} 0`,
        faced('none', ink, 1.2),
      ),
    ];
  },
};
