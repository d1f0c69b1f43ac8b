/** A union in a lying line: two ends that a ring nut draws together, so that the line opens without turning. */
import type { Shape } from '../scene.ts';
import { group, inked, path } from '../shapes.ts';
import { stroke } from './outline.ts';
import type { Ramp } from '../theme.ts';
import type { Piece } from './piece.ts';
import { turned } from './turned.ts';

/** @param line  the stretch of it that the union takes */
export function drawUnion(key: string, line: Piece, ramp: Ramp): Shape {
  const { from, to, middle, half } = line;
  const at = (share: number): number => from + (to - from) * share;
  const ring = stroke(at(0.4), middle - half * 1.5, at(0.4), middle + half * 1.5);
  return group(key, [
    turned(
      'body',
      {
        centre: middle,
        profile: [
          [from, half],
          [at(0.28), half],
          [at(0.28), half * 1.5],
          [at(0.72), half * 1.5],
          [at(0.72), half * 1.2],
          [to, half * 1.2],
        ],
        lying: true,
      },
      ramp,
    ),
    path('ring', ring + stroke(at(0.72), middle - half * 1.2, at(0.72), middle + half * 1.2), inked(ramp.edge, 0.8)),
  ]);
}
