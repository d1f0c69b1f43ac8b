/** The guard strip: a channel along the pump, past its intake to the motor's head, that the motor's lead runs under. */
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path, rect } from '../shapes.ts';
import { stroke } from './outline.ts';
import type { Pen } from './pen.ts';

/** Part of the pump's radius that the strip covers from its left rim. */
const COVERS = 0.22;

/** The strip on paper [px]. Its outer face is the widest of pump and motor; it reaches inwards from there. */
export interface Strip {
  readonly middle: number;
  readonly width: number;
}

export function stripUnder(radius: Metres, pen: Pen): Strip {
  const width = Math.max(4, radius * COVERS * pen.across);
  return { middle: pen.x(-radius) + width / 2, width };
}

export function drawCableGuardStrip(part: PlacedPart, pen: Pen): Shape {
  const { steel } = pen.tones;
  const left = pen.x(-part.radius);
  const { width } = stripUnder(part.radius, pen);
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const edge = { stroke: steel.edge };
  return group(part.key, [
    rect('channel', left, top, width, bottom - top, { fill: steel.base, rx: Math.min(2, width / 3), ...edge }),
    path(
      'fold',
      stroke(left + width * 0.4, top + 2, left + width * 0.4, bottom - 2),
      inked(steel.shine, Math.max(1, width * 0.2)),
    ),
    path(
      'screws',
      [0.1, 0.5, 0.9]
        .map((share) => {
          const y = top + (bottom - top) * share;
          return stroke(left, y, left + width, y);
        })
        .join(''),
      edge,
    ),
  ]);
}
