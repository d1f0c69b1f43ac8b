/** The guard strip: a channel along the pump that the motor's leads run under. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, path, rect } from '../shapes.ts';
import { stroke } from './outline.ts';
import type { Pen } from './pen.ts';

/** Part of the pump's radius that the strip covers from its left rim. */
const COVERS = 0.2;

export function drawCableGuardStrip(part: PlacedPart, pen: Pen, pumpRadius: number): Shape {
  const { steel } = pen.tones;
  const left = pen.x(-pumpRadius);
  const width = Math.max(3, pumpRadius * COVERS * pen.across);
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const edge = { stroke: steel.edge };
  return group(part.key, [
    rect('channel', left - width * 0.35, top, width, bottom - top, {
      fill: steel.base,
      rx: Math.min(2, width / 3),
      ...edge,
    }),
    path('fold', stroke(left + width * 0.05, top + 2, left + width * 0.05, bottom - 2), {
      stroke: steel.shine,
      'stroke-width': Math.max(1, width * 0.2),
    }),
    path(
      'screws',
      [0.1, 0.5, 0.9]
        .map((share) => {
          const y = top + (bottom - top) * share;
          return stroke(left - width * 0.35, y, left + width * 0.65, y);
        })
        .join(''),
      edge,
    ),
  ]);
}
