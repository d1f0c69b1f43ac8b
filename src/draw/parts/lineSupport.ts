/** What a line above the ground rests on: a post with a cradle, on a foot. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path } from '../shapes.ts';
import { straight } from './outline.ts';
import type { Pen } from './pen.ts';
import { cylinder } from './turned.ts';

/**
 * @param x     its middle [px]
 * @param line  underside of the line as it is drawn [px]
 */
export function drawLineSupport(part: PlacedPart, pen: Pen, x: number, line: number): Shape {
  const { cast } = pen.tones;
  const half = Math.max(2.5, part.radius * pen.across * 0.6);
  const ground = pen.y(part.bottom);
  const cradle = Math.max(2.4, half * 0.5);
  return group(part.key, [
    cylinder('post', { middle: x, half, from: line + cradle, to: ground - cradle }, cast),
    path(
      'ends',
      straight([
        [x - half * 2, line - cradle],
        [x - half * 1.3, line],
        [x + half * 1.3, line],
        [x + half * 2, line - cradle],
        [x + half * 2, line + cradle],
        [x - half * 2, line + cradle],
      ]) +
        straight([
          [x - half, ground - cradle],
          [x + half, ground - cradle],
          [x + half * 2.4, ground],
          [x - half * 2.4, ground],
        ]),
      faced(cast.base, cast.edge, 0.9),
    ),
  ]);
}
