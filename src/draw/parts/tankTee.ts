/** The tank tee: water comes in from below and goes on upward at one end, to the tank at the other; its ports between them. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path } from '../shapes.ts';
import { block } from './outline.ts';
import type { Tones } from '../theme.ts';
import { turned } from './turned.ts';

export interface TankTeeOnPaper {
  readonly box: Box;
  /** Middle of the pipe that comes up, and half of what its end takes [px]. */
  readonly riser: number;
  readonly halfRiser: number;
  /** Ports above and below [px]. */
  readonly over: readonly number[];
  readonly under: readonly number[];
}

export function drawTankTee({ box, riser, halfRiser, over, under }: TankTeeOnPaper, { brass }: Tones): Shape {
  const { left, top, right, bottom } = box;
  const tall = bottom - top;
  const collar = tall * 0.3;
  const port = tall * 0.24;
  const line = faced(brass.base, brass.edge, 0.9);
  const ends =
    block(riser - halfRiser, top - collar, riser + halfRiser, top) +
    block(riser - halfRiser, bottom, riser + halfRiser, bottom + collar);
  const ports = [
    ...over.map((x) => block(x - port, top - tall * 0.16, x + port, top)),
    ...under.map((x) => block(x - port, bottom, x + port, bottom + tall * 0.16)),
  ].join('');
  return group('tankTee', [
    path('ends', ends, line),
    ...(ports === '' ? [] : [path('ports', ports, line)]),
    turned(
      'body',
      {
        centre: (top + bottom) / 2,
        profile: [
          [left, tall * 0.62],
          [left + tall * 0.7, tall * 0.62],
          [left + tall * 0.7, tall / 2],
          [right, tall / 2],
        ],
        lying: true,
      },
      brass,
    ),
  ]);
}
