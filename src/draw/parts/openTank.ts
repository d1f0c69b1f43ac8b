/** A tank open to the air, with the water at the float that stops the pump, under a lid that breathes. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { circle, group, path } from '../shapes.ts';
import { block, straight, stroke } from './outline.ts';
import type { Tones } from '../theme.ts';

export interface OpenTankOnPaper {
  /** From its rim to its foot [px]. */
  readonly box: Box;
  /** The water [px]. */
  readonly level: number;
  readonly tones: Tones;
  readonly whole: boolean;
}

export function drawOpenTank({ box, level, tones, whole }: OpenTankOnPaper): Shape {
  const { left, top, right, bottom } = box;
  const { water, waterEdge } = tones;
  const over = whole ? 4 : 2;
  const walls = straight(
    [
      [left, top],
      [left, bottom],
      [right, bottom],
      [right, top],
    ],
    false,
  );
  return group('tank', [
    path('water', block(left, level, right, bottom), { fill: water }),
    ...(whole ? [path('surface', stroke(left, level, right, level), { stroke: waterEdge, 'stroke-width': 1.4 })] : []),
    path('body', walls + stroke(left - over, top - over, right + over, top - over), {
      fill: 'none',
      stroke: waterEdge,
      'stroke-width': whole ? 2.4 : 1.4,
    }),
  ]);
}

/** On its arm at the rim, its ball on the water. */
export function drawFloat(
  rim: readonly [x: number, y: number],
  x: number,
  level: number,
  r: number,
  tones: Tones,
): Shape {
  return group('float', [
    path('arm', stroke(rim[0], rim[1], x, level - 1), { stroke: tones.ink, 'stroke-width': 1 }),
    circle('ball', x, level, r, { fill: tones.bore, stroke: tones.ink, 'stroke-width': 1.1 }),
  ]);
}
