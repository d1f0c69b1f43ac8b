/** Water levels inside the bore: static an open triangle on a solid line, pumping a filled one on long dashes. */
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { stroke } from '../parts/outline.ts';
import { pxText } from '../tenths.ts';
import type { Pen } from '../parts/pen.ts';

export function drawLevel(
  key: 'staticLevel' | 'pumpingLevel',
  pen: Pen,
  depth: Metres,
  left: number,
  right: number,
  ink: string,
  paper: string,
): Shape {
  const y = pen.y(depth);
  const x = right - 9;
  const bars = stroke(x - 5, y + 3.4, x + 5, y + 3.4) + stroke(x - 2.5, y + 6.4, x + 2.5, y + 6.4);
  return group(key, [
    path('line', stroke(left, y, right, y), {
      stroke: ink,
      'stroke-width': 2,
      ...(key === 'pumpingLevel' ? { 'stroke-dasharray': '12 4' } : {}),
    }),
    path('triangle', `M${pxText(x)} ${pxText(y - 1)}l-5.5 -9h11z`, {
      fill: key === 'staticLevel' ? paper : ink,
      stroke: ink,
      'stroke-width': 1.5,
      'stroke-linejoin': 'round',
    }),
    path('bars', bars, { stroke: ink, 'stroke-width': 1.3 }),
  ]);
}
