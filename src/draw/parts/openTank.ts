/** A tank open to the air, with the water at the float that stops the pump, under a lid that breathes. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { circle, faced, group, inked, path, type Point } from '../shapes.ts';
import { pxText } from '../tenths.ts';
import { block, straight, stroke, strokes } from './outline.ts';
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
  // Where the float fails, the water leaves by itself, through a screen; the lid breathes through one too.
  const spill = (top + level) / 2;
  const out = 12;
  const drop = 20;
  const overflow = `M${pxText(left)} ${pxText(spill - 3)}H${pxText(left - out)}V${pxText(spill + drop)}h6V${pxText(spill + 3)}H${pxText(left)}z`;
  const vent = (left + right) / 2;
  const breather = `M${pxText(vent - 8)} ${pxText(top - over)}v-9q0-5 5-5h4q5 0 5 5v5h-4v-4q0-2-2-2h-2q-2 0-2 2v8z`;
  return group('tank', [
    path('water', block(left, level, right, bottom), { fill: water }),
    ...(whole ? [path('surface', stroke(left, level, right, level), inked(waterEdge, 1.4))] : []),
    path(
      'body',
      walls + stroke(left - over, top - over, right + over, top - over),
      faced('none', waterEdge, whole ? 2.4 : 1.4),
    ),
    ...(whole
      ? [
          path('overflow', overflow, { fill: tones.conduit.light, stroke: tones.conduit.edge }),
          path(
            'overflowScreen',
            strokes([[left - out, spill + drop + 1.5]], 6, 0),
            inked(tones.conduit.edge, 2, '1 1'),
          ),
          path('vent', breather, { fill: tones.conduit.light, stroke: tones.conduit.edge }),
        ]
      : []),
  ]);
}

interface Ball {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** On its arm at the rim, its ball on the water. */
export function drawFloat(rim: Point, { x, y: level, r }: Ball, tones: Tones): Shape {
  return group('float', [
    path('arm', stroke(rim[0], rim[1], x, level - 1), inked(tones.ink, 1)),
    circle('ball', x, level, r, faced(tones.bore, tones.ink, 1.1)),
  ]);
}
