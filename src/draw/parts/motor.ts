/** The motor: a sealed can with a flange at its head, welded rings and a rounded foot. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import { turned } from './turned.ts';

export function drawMotor(part: PlacedPart, pen: Pen): Shape {
  const centre = pen.x(0);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const height = pen.y(part.bottom) - top;
  const at = (share: number): number => top + height * share;
  const body = turned(
    'body',
    centre,
    [
      [top, half * 0.84],
      [at(0.05), half * 0.84],
      [at(0.05), half],
      [at(0.89), half],
      [at(0.965), half * 0.86],
      [at(1), half * 0.62],
    ],
    pen.tones.motor,
  );
  const ring = (share: number, reach: number): string =>
    stroke(centre - half * reach, at(share), centre + half * reach, at(share));
  const rings = path('rings', ring(0.1, 1) + ring(0.83, 1) + ring(0.89, 1) + ring(0.965, 0.86), {
    stroke: pen.tones.motor.edge,
    'stroke-width': 0.8,
    fill: 'none',
  });
  return group(part.key, [body, rings]);
}
