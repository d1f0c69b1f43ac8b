/** Two hose clamps side by side over the barb, their screws on opposite sides. */
import type { PlacedPart } from '../../model/solution.ts';
import { BAND_PX } from '../looks.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { block, stroke } from './outline.ts';
import type { Pen } from './pen.ts';

const LEAST_GAP_PX = 1.4;

export interface Bands {
  readonly key: string;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Where the bands of one joint stand in pixels, the upper first: true where they can be told apart, else spread evenly
 * about the middle of them all.
 */
export function bandsOf(clamps: readonly PlacedPart[], pen: Pen): Bands[] {
  const sorted = [...clamps].sort((a, b) => a.top - b.top);
  const first = sorted[0];
  const last = sorted[sorted.length - 1];
  if (first === undefined || last === undefined) return [];
  if (pen.looks.bands) return sorted.map(({ key, top, bottom }) => ({ key, top: pen.y(top), bottom: pen.y(bottom) }));
  const middle = (pen.y(first.top) + pen.y(last.bottom)) / 2;
  const pitch = BAND_PX + LEAST_GAP_PX;
  return sorted.map(({ key }, i) => {
    const centre = middle + (i - (sorted.length - 1) / 2) * pitch;
    return { key, top: centre - BAND_PX / 2, bottom: centre + BAND_PX / 2 };
  });
}

export interface Grip {
  readonly centre: number;
  /** Half width of the pipe that is gripped [px]. */
  readonly half: number;
  /** The screw's housing stands on the right. */
  readonly right: boolean;
}

/** One band with its screw. */
export function drawClamp({ key, top, bottom }: Bands, { centre, half, right }: Grip, pen: Pen): Shape {
  const { steel } = pen.tones;
  const reach = half + Math.max(1.2, half * 0.1);
  const tall = bottom - top;
  const side = right ? 1 : -1;
  const near = centre + side * (reach - half * 0.28);
  const far = centre + side * (reach + Math.max(4, half * 0.42));
  const swell = tall * 0.22;
  return group(key, [
    path(
      'band',
      block(centre - reach, top, centre + reach, bottom) +
        block(Math.min(near, far), top - swell, Math.max(near, far), bottom + swell),
      {
        fill: steel.base,
        stroke: steel.edge,
      },
    ),
    path('shine', block(centre - reach * 0.5, top + 0.5, centre - reach * 0.1, bottom - 0.5), { fill: steel.shine }),
    path('slot', stroke(far - side * 1.8, top - swell, far - side * 1.8, bottom + swell), { stroke: steel.edge }),
  ]);
}
