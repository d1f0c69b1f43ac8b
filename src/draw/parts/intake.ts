/** The intake: a ring of strainer slots where the water enters, between motor and pump. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, path, rect } from '../shapes.ts';
import { stroke } from './outline.ts';
import type { Pen } from './pen.ts';

const SLOTS = 11;

export function drawIntake(part: PlacedPart, pen: Pen): Shape {
  const { fill, ink } = pen.tones.strainer;
  const centre = pen.x(0);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const inset = Math.min(2, (bottom - top) * 0.18);
  let slots = '';
  for (let i = 0; i < SLOTS; i++) {
    // Slots stand evenly round the ring, so they crowd towards its rims.
    const x = centre + half * 0.96 * Math.sin(((i + 0.5) / SLOTS - 0.5) * Math.PI);
    slots += stroke(x, top + inset, x, bottom - inset);
  }
  return group(part.key, [
    rect('ring', centre - half, top, half * 2, bottom - top, { fill, stroke: pen.tones.pump.edge }),
    path('slots', slots, { stroke: ink, 'stroke-width': Math.min(2.4, Math.max(0.8, half * 0.075)), fill: 'none' }),
  ]);
}
