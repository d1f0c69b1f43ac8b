/** The sanitary seal in section: two plates that bolts draw together, squeezing rubber against casing, pipe, cable and vent. */
import { inches } from '../../model/units.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { circle, faced, group, inked, path, type Point } from '../shapes.ts';
import { block, stroke, strokes } from './outline.ts';
import type { Pen } from './pen.ts';
import type { Ramp } from '../theme.ts';

export interface SealPlace {
  readonly casingTop: Metres;
  readonly casingInsideRadius: Metres;
  readonly casingOutsideRadius: Metres;
  readonly pipeRadius: Metres;
  /** Middle of the cable's hole. */
  readonly cableOffset: Metres;
  readonly cableRadius: Metres;
  /** Middle of the eye under it that a rope is tied to; null where none is. */
  readonly eye: Metres | null;
}

/** Bolts across, as shares of the inside radius; the first one ends in the eye. */
const BOLTS = [-0.88, -0.4, 0.4, 0.88];

/** Middle of the eye across. */
export const sealEye = (casingInsideRadius: Metres): Metres => (BOLTS[0] ?? 0) * casingInsideRadius;

export function drawSeal(part: PlacedPart, pen: Pen, place: SealPlace): Shape {
  const { cast, rubber, steel } = pen.tones;
  const top = pen.y(part.top);
  const rim = pen.y(place.casingTop);
  const bottom = pen.y(part.bottom);
  const inside = place.casingInsideRadius * pen.across - 0.8;
  const outside = (place.casingOutsideRadius + 0.012) * pen.across;
  const centre = pen.x(0);
  const plate = Math.max(2.6, (rim - top) * 0.9);
  const upper = block(centre - outside, rim - plate, centre + outside, rim);
  const lower = block(centre - inside, bottom - plate, centre + inside, bottom);
  const filling = block(centre - inside, rim, centre + inside, bottom - plate);
  const boltHalf = Math.max(1.2, inches(0.14) * pen.across);
  const bolts = BOLTS.map((share) => centre + inside * share);
  const heads = bolts
    .map(
      (x) =>
        block(x - boltHalf * 2.2, rim - plate - 3.4, x + boltHalf * 2.2, rim - plate) +
        block(x - boltHalf * 2, bottom, x + boltHalf * 2, bottom + 2.6),
    )
    .join('');
  const shanks = bolts.map((x) => block(x - boltHalf, rim - plate, x + boltHalf, bottom)).join('');
  return group(part.key, [
    path('rubber', filling, { fill: rubber.base, stroke: rubber.edge }),
    path(
      'squeeze',
      [0.3, 0.6]
        .map((share) =>
          stroke(
            centre - inside,
            rim + (bottom - plate - rim) * share,
            centre + inside,
            rim + (bottom - plate - rim) * share,
          ),
        )
        .join(''),
      inked(rubber.light, 0.8),
    ),
    path('plates', upper + lower, { fill: cast.light, stroke: cast.edge }),
    path(
      'plateHatch',
      cutStrokes(centre - outside, centre + outside, rim - plate, rim) +
        cutStrokes(centre - inside, centre + inside, bottom - plate, bottom),
      inked(cast.edge, 0.6),
    ),
    path('shanks', shanks, faced(steel.light, steel.edge, 0.6)),
    path('heads', heads, faced(steel.base, steel.edge, 0.9)),
    ...(place.eye === null ? [] : drawEye(bolts[0] ?? centre, bottom, pen.y(place.eye), steel)),
  ]);
}

/** The eye that the lower end of a bolt is bent to: what is tied to it pierces nothing. */
function drawEye(x: number, plate: number, y: number, { edge, base }: Ramp): Shape[] {
  const ring = Math.max(2.4, Math.min(4, (y - plate) * 0.5));
  return [
    path('eyeShank', stroke(x, plate + 2, x, y - ring), inked(edge, 2.4)),
    circle('eye', x, y, ring, faced('none', edge, 2.2)),
    circle('eyeGlint', x, y, ring, faced('none', base, 0.8)),
  ];
}
/** Over a plate: more would be grey. */
const MOST_STROKES = 24;

function cutStrokes(left: number, right: number, top: number, bottom: number): string {
  const tall = bottom - top;
  const step = Math.max(5, (right - left) / MOST_STROKES);
  const places: Point[] = [];
  for (let x = left + 1; x + tall < right; x += step) places.push([x, bottom]);
  return strokes(places, tall, -tall);
}
