/** The bond: a ground clamp on a metal casing and its wire up into the cap. */
import { inches } from '../../model/units.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path, rect } from '../shapes.ts';
import { stroke } from './outline.ts';
import { pxText } from '../tenths.ts';
import type { Pen } from './pen.ts';

export function drawBond(part: PlacedPart, pen: Pen, casingOutsideRadius: Metres, capBottom: Metres): Shape {
  const { brass, bond } = pen.tones;
  const wall = pen.x(-casingOutsideRadius);
  const top = pen.y(part.top);
  const tall = Math.max(5, (part.bottom - part.top) * pen.down);
  const wide = Math.max(6, inches(0.55) * pen.across);
  const x = wall - wide * 0.55;
  return group(part.key, [
    path(
      'wire',
      `M${pxText(x)} ${pxText(top)}C${pxText(x)} ${pxText(top - 8)} ${pxText(x - 7)} ${pxText(pen.y(capBottom) + 4)} ${pxText(x - 1)} ${pxText(pen.y(capBottom))}`,
      faced('none', bond, 2.2),
    ),
    rect('clamp', wall - wide, top, wide, tall, { fill: brass.base, stroke: brass.edge }),
    path('screw', stroke(wall - wide - 3, top + tall / 2, wall - wide, top + tall / 2), inked(brass.edge, 2.4)),
  ]);
}
