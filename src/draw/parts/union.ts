/** A union in a lying line: two ends that a ring nut draws together, so that the line opens without turning. */
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { stroke } from './outline.ts';
import type { Ramp } from '../theme.ts';
import { turned } from './turned.ts';

export interface UnionPlace {
  readonly key: string;
  /** Its ends along the line, its middle, and half of the line's thickness [px]. */
  readonly from: number;
  readonly to: number;
  readonly middle: number;
  readonly half: number;
}

export function drawUnion({ key, from, to, middle, half }: UnionPlace, ramp: Ramp): Shape {
  const at = (share: number): number => from + (to - from) * share;
  const ring = stroke(at(0.4), middle - half * 1.5, at(0.4), middle + half * 1.5);
  return group(key, [
    turned(
      'body',
      middle,
      [
        [from, half],
        [at(0.28), half],
        [at(0.28), half * 1.5],
        [at(0.72), half * 1.5],
        [at(0.72), half * 1.2],
        [to, half * 1.2],
      ],
      ramp,
      {},
      true,
    ),
    path('ring', ring + stroke(at(0.72), middle - half * 1.2, at(0.72), middle + half * 1.2), {
      stroke: ramp.edge,
      'stroke-width': 0.8,
    }),
  ]);
}
