/** The conduit: out of the cap, down along the casing to trench depth, then to the house. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { block, tenth } from './outline.ts';
import type { Pen } from './pen.ts';

export interface ConduitPlace {
  /** Where it leaves the cap or seal [px]. */
  readonly from: readonly [x: number, y: number];
  /** x of its plumb run [px]. */
  readonly plumb: number;
  /** y of its middle in the trench [px]. */
  readonly trench: number;
  readonly to: number;
}

export const conduitWidth = (part: PlacedPart, pen: Pen): number => Math.max(4, part.radius * 2 * pen.across);

export function drawConduit(part: PlacedPart, pen: Pen, { from, plumb, trench, to }: ConduitPlace): Shape {
  const { conduit } = pen.tones;
  const wide = conduitWidth(part, pen);
  const bend = Math.min(wide * 1.1, Math.abs(plumb - from[0]) * 0.9, Math.max(4, trench - from[1]) / 2);
  const sweep = Math.min(wide * 1.6, Math.max(4, trench - from[1]) / 2, 22);
  const d =
    `M${tenth(from[0])} ${tenth(from[1])}H${tenth(plumb - bend)}Q${tenth(plumb)} ${tenth(from[1])} ${tenth(plumb)} ${tenth(from[1] + bend)}` +
    `V${tenth(trench - sweep)}Q${tenth(plumb)} ${tenth(trench)} ${tenth(plumb + sweep)} ${tenth(trench)}H${tenth(to)}`;
  const along = (key: string, stroke: string, width: number, extra = {}): Shape =>
    path(key, d, { fill: 'none', stroke, 'stroke-width': tenth(width), ...extra });
  return group(part.key, [
    along('edge', conduit.edge, wide),
    along('shade', conduit.shade, wide - 2),
    along('base', conduit.light, Math.max(1.5, wide * 0.55)),
    along('shine', conduit.shine, Math.max(0.8, wide * 0.2)),
    // The locknut where it leaves the cap.
    path('nut', block(from[0] - 1, from[1] - wide * 0.62, from[0] + 4, from[1] + wide * 0.62), {
      fill: conduit.base,
      stroke: conduit.edge,
    }),
  ]);
}
