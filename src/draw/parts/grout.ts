/** Grout or gravel in the annulus: a cut face with its own hatching, left and right of the casing. */
import type { Metres } from '../../model/si.ts';
import type { BoreStretch } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path, type Point } from '../shapes.ts';
import { block, stroke, strokes } from './outline.ts';
import type { Pen } from './pen.ts';

export type AnnulusPlace = Pick<BoreStretch, 'insideRadius' | 'outsideRadius' | 'top' | 'bottom'>;

const walls = (
  pen: Pen,
  place: AnnulusPlace,
): { readonly sides: readonly (readonly [number, number])[]; readonly top: number; readonly bottom: number } => ({
  sides: [
    [pen.x(-place.outsideRadius), pen.x(-place.insideRadius)],
    [pen.x(place.insideRadius), pen.x(place.outsideRadius)],
  ],
  top: pen.y(Math.max(place.top, pen.top - 0.1)),
  bottom: pen.y(Math.min(place.bottom, pen.bottom + 0.1)),
});

const FLECK_PX = 15;

/**
 * Cement: fine crosswise strokes and flecks.
 *
 * @param known  false where nobody said how far down it goes, or whether it is there: an outline, dashed
 */
export function drawGrout(key: string, pen: Pen, place: AnnulusPlace, known: boolean): Shape {
  const { fill, ink } = pen.tones.grout;
  const { sides, top, bottom } = walls(pen, place);
  if (bottom <= top) return group(key, []);
  const d = sides.map(([left, right]) => block(left, top, right, bottom)).join('');
  if (!known) return group(key, [path('outline', d, { fill: 'none', stroke: ink, 'stroke-dasharray': '4 3' })]);
  // Flecks of aggregate, scattered evenly.
  const long: Point[] = [];
  for (const [left, right] of sides) {
    for (
      let y = Math.ceil(top / FLECK_PX) * FLECK_PX, i = Math.round(y / FLECK_PX);
      y < bottom - 4;
      y += FLECK_PX, i++
    ) {
      const wide = right - left - 5;
      long.push([Math.round(left + 1 + wide * (((i * 5) % 7) / 7)), y]);
    }
  }
  return group(key, [path('fill', d, faced(fill, ink, 0.8)), path('flecks', strokes(long, 3, -3), inked(ink, 0.8))]);
}

/** What was put back under the grout, whatever it was: an outline of dashes. */
export function drawBackfill(key: string, pen: Pen, place: AnnulusPlace): Shape {
  const { fill, ink } = pen.tones.gravel;
  const { sides, top, bottom } = walls(pen, place);
  return path(key, sides.map(([left, right]) => block(left, top, right, bottom)).join(''), {
    fill,
    stroke: ink,
    'stroke-width': 0.6,
    'stroke-dasharray': '2 2',
  });
}

/** A gravel pack stands 2 ft over its screen (common practice, no source), and never in the grout. */
export const PACK_OVER_SCREEN: Metres = 0.61;

const GRAIN_PX = 7;

/** Sorted gravel round a screen: round grains packed in rows. */
export function drawGravelPack(key: string, pen: Pen, place: AnnulusPlace): Shape {
  const { fill, ink } = pen.tones.gravel;
  const { sides, top, bottom } = walls(pen, place);
  if (bottom <= top) return group(key, []);
  // A column of grains is a stroke of round dots, every other one half a grain lower: rims first, faces over them.
  let columns = '';
  for (const [left, right] of sides) {
    const count = Math.max(1, Math.floor((right - left) / GRAIN_PX));
    const step = (right - left) / count;
    const start = Math.ceil((top + 3) / GRAIN_PX) * GRAIN_PX;
    for (let i = 0; i < count; i++) {
      const x = left + step * (i + 0.5);
      const odd = i % 2;
      columns += stroke(x, start + (odd * GRAIN_PX) / 2, x, bottom - 2);
    }
  }
  const dots = (name: string, colour: string, wide: number): Shape =>
    path(name, columns, {
      stroke: colour,
      'stroke-width': wide,
      'stroke-linecap': 'round',
      'stroke-dasharray': `0 ${GRAIN_PX}`,
    });
  return group(key, [
    path('fill', sides.map(([left, right]) => block(left, top, right, bottom)).join(''), faced(fill, ink, 0.8)),
    dots('rims', ink, 5.6),
    dots('grains', fill, 4.2),
  ]);
}
