/** The conduit: out of the cap, down along the casing to trench depth, then to the house. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path } from '../shapes.ts';
import { block, tenth } from './outline.ts';
import { nextTenths, tenthsText } from '../tenths.ts';
import type { Pen } from './pen.ts';

export interface ConduitPlace {
  /** Where it leaves the cap or seal [px]. */
  readonly from: readonly [x: number, y: number];
  /** It stands on a seal and turns over; out of a cap it leaves sideways. */
  readonly up: boolean;
  /** x of its plumb run [px]. */
  readonly plumb: number;
  /** y of its middle in the trench [px]. */
  readonly trench: number;
  readonly to: number;
}

export const conduitWidth = (part: PlacedPart, pen: Pen): number => Math.max(4, part.radius * 2 * pen.across);

export function drawConduit(part: PlacedPart, pen: Pen, place: ConduitPlace): Shape {
  const { conduit } = pen.tones;
  const wide = conduitWidth(part, pen);
  const d = course(place, wide);
  const along = (key: string, ink: string, width: number): Shape => path(key, d, inked(ink, tenth(width)));
  const [x, y] = place.from;
  const reach = wide * 0.62;
  const nut = place.up ? block(x - reach, y - 4, x + reach, y + 1) : block(x - 1, y - reach, x + 4, y + reach);
  return group(
    part.key,
    [
      along('edge', conduit.edge, wide),
      along('shade', conduit.shade, wide - 2),
      along('base', conduit.light, Math.max(1.5, wide * 0.55)),
      along('shine', conduit.shine, Math.max(0.8, wide * 0.2)),
      // The locknut where it leaves the cap or stands on the seal.
      path('nut', nut, { fill: conduit.base, stroke: conduit.edge }),
    ],
    { fill: 'none' },
  );
}

/** Its middle: out of the cap or up from the seal, over to the plumb run, down, and away to the house. */
function course({ from: [x, y], up, plumb, trench, to }: ConduitPlace, wide: number): string {
  const over = up ? y - wide * 1.1 : y;
  const bend = Math.min(wide * 1.1, Math.abs(plumb - x) * (up ? 0.5 : 0.9), Math.max(4, trench - over) / 2);
  const sweep = Math.min(wide * 1.6, Math.max(4, trench - over) / 2, 22);
  // In steps of a tenth, each from where the last one ended: it is written four times, for its four tones.
  const [left, right, high, low] = [x, plumb, over, trench].map((at) => Math.round(at * 10)) as [
    number,
    number,
    number,
    number,
  ];
  const [b, s] = [Math.round(bend * 10), Math.round(sweep * 10)];
  const start = Math.round(y * 10);
  const rise = up ? `v${tenthsText(high + b - start)}q0${nextTenths(-b)}${nextTenths(b)}${nextTenths(-b)}` : '';
  const across = right - b - left - (up ? b : 0);
  return (
    `M${tenthsText(left)}${nextTenths(start)}${rise}h${tenthsText(across)}q${tenthsText(b)} 0${nextTenths(b)}${nextTenths(b)}` +
    `v${tenthsText(low - s - high - b)}q0${nextTenths(s)}${nextTenths(s)}${nextTenths(s)}H${tenthsText(Math.round(to * 10))}`
  );
}
