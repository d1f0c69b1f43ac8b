/** A flow sleeve, cut open: closed above the intake, open below the motor, so that water passes the motor first. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { straight } from './outline.ts';
import type { Pen } from './pen.ts';

export function drawShroud(part: PlacedPart, pen: Pen, pumpRadius: number): Shape {
  const { fill, ink } = pen.tones.plasticWall;
  const outside = part.radius * pen.across;
  const inside = Math.min(outside - 1.6, (part.insideRadius ?? part.radius * 0.96) * pen.across);
  const neck = pumpRadius * pen.across;
  const centre = pen.x(0);
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const slope = Math.min(8, (bottom - top) * 0.06);
  const wall = (side: 1 | -1): string =>
    straight([
      [centre + side * neck, top],
      [centre + side * outside, top + slope],
      [centre + side * outside, bottom],
      [centre + side * inside, bottom],
      [centre + side * inside, top + slope + 1.6],
      [centre + side * neck, top + 2],
    ]);
  return group(part.key, [path('walls', wall(-1) + wall(1), { fill, stroke: ink })]);
}
