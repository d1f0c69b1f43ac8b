/** Casings in section: cut walls with the hatching of their material, and the hardened shoe under a driven steel one. */
import { inches } from '../../model/units.ts';
import type { CasingFacts } from '../../model/facts.ts';
import type { Metres } from '../../model/si.ts';
import type { BoreStretch } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path } from '../shapes.ts';
import { block, straight, strokes } from './outline.ts';
import type { Pen } from './pen.ts';
import type { Cut } from '../theme.ts';

/** From afar, a wall thinner than this is too thin for hatching [px]. */
const HATCHED_PX = 5;
/** A wall thinner than this would vanish. */
const LEAST_WALL_PX = 3;
const SHOE: Metres = inches(5);

export function wallCut(material: CasingFacts['material'], pen: Pen): Cut {
  if (material === 'PVC') return pen.tones.plasticWall;
  if (material === 'concrete') return pen.tones.concreteWall;
  return pen.tones.metalWall;
}

export interface CasingPlace extends Pick<BoreStretch, 'insideRadius' | 'outsideRadius' | 'top'> {
  /** Null where nobody said: it is drawn dashed as far as the frame goes. */
  readonly bottom: Metres | null;
  readonly shoe: boolean;
}

export function drawCasing(key: string, pen: Pen, place: CasingPlace, cut: Cut): Shape {
  const inside = place.insideRadius * pen.across;
  const outside = Math.max(inside + LEAST_WALL_PX, place.outsideRadius * pen.across);
  const centre = pen.x(0);
  const top = pen.y(Math.max(place.top, pen.top - 0.1));
  const bottom = pen.y(Math.min(place.bottom ?? pen.bottom + 0.1, pen.bottom + 0.1));
  if (bottom <= top) return group(key, []);
  const walls = [
    [centre - outside, centre - inside],
    [centre + inside, centre + outside],
  ] as const;
  const d = walls.map(([left, right]) => block(left, top, right, bottom)).join('');
  const dashed = place.bottom === null ? { 'stroke-dasharray': '4 3' } : {};
  const shapes = [path('walls', d, { fill: cut.fill, stroke: cut.ink, ...dashed })];
  if (pen.closed === null || outside - inside >= HATCHED_PX)
    shapes.push(
      path('hatch', walls.map(([left, right]) => slants(left, right, top, bottom)).join(''), inked(cut.ink, 0.8)),
    );
  if (place.shoe && place.bottom !== null && place.bottom < pen.bottom + SHOE)
    shapes.push(drawShoe(pen, inside, outside, place.bottom));
  return group(key, shapes);
}

const PITCH_PX = 16;

/** Slant strokes across a wall, at an even pitch that hangs on the sheet and not on the wall's end. */
function slants(left: number, right: number, top: number, bottom: number): string {
  const rise = Math.round(Math.min(right - left, 7));
  const places: [number, number][] = [];
  for (let y = Math.ceil((top + rise) / PITCH_PX) * PITCH_PX; y <= bottom; y += PITCH_PX) places.push([left, y]);
  // Whole pixels are enough across a wall of a few, and half as long to write.
  return strokes(places, Math.max(3, Math.round(right - left)), -rise);
}

/** The shoe: a thick ring round the foot, bevelled to a cutting edge. */
function drawShoe(pen: Pen, inside: number, outside: number, foot: Metres): Shape {
  const centre = pen.x(0);
  const { steel, metalWall } = pen.tones;
  const bottom = pen.y(foot);
  const top = bottom - Math.max(9, SHOE * pen.down);
  const thick = Math.max(3.5, (outside - inside) * 0.9);
  const ring = (side: 1 | -1): string =>
    straight([
      [centre + side * outside, top],
      [centre + side * (outside + thick), top + 2],
      [centre + side * (outside + thick), bottom - 3],
      [centre + side * inside, bottom + 2],
      [centre + side * outside, bottom - 1],
    ]);
  return path('shoe', ring(-1) + ring(1), { fill: metalWall.ink, stroke: steel.edge });
}
