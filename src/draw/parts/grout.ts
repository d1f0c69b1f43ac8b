/** Grout or gravel in the annulus: a cut face with its own hatching, left and right of the casing. */
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { block, tenth } from './outline.ts';
import type { Pen } from './pen.ts';

export interface AnnulusPlace {
  readonly insideRadius: Metres;
  readonly outsideRadius: Metres;
  readonly top: Metres;
  /** Null where nobody said: outline only, dashed. */
  readonly bottom: Metres | null;
}

const walls = (pen: Pen, place: AnnulusPlace): { readonly sides: readonly (readonly [number, number])[]; readonly top: number; readonly bottom: number } => ({
  sides: [
    [pen.x(-place.outsideRadius), pen.x(-place.insideRadius)],
    [pen.x(place.insideRadius), pen.x(place.outsideRadius)],
  ],
  top: pen.y(Math.max(place.top, pen.top - 0.1)),
  bottom: pen.y(Math.min(place.bottom ?? pen.bottom + 0.1, pen.bottom + 0.1)),
});

/** Cement: fine crosswise strokes and flecks. */
export function drawGrout(key: string, pen: Pen, place: AnnulusPlace): Shape {
  const { fill, ink } = pen.tones.grout;
  const { sides, top, bottom } = walls(pen, place);
  if (bottom <= top) return group(key, []);
  const d = sides.map(([left, right]) => block(left, top, right, bottom)).join('');
  if (place.bottom === null) return group(key, [path('outline', d, { fill: 'none', stroke: ink, 'stroke-dasharray': '4 3' })]);
  let flecks = '';
  for (const [left, right] of sides) {
    for (let y = Math.ceil(top / 9) * 9, i = 0; y < bottom - 3; y += 9, i++) {
      const x = left + (right - left) * (0.2 + 0.45 * ((i * 5) % 3) / 2);
      flecks += `M${tenth(x)} ${y}l3 -3m2 5l2 -1.5`;
    }
  }
  return group(key, [
    path('fill', d, { fill, stroke: ink, 'stroke-width': 0.8 }),
    path('flecks', flecks, { fill: 'none', stroke: ink, 'stroke-width': 0.8 }),
  ]);
}

/** Sorted gravel round a screen: round grains packed in rows. */
export function drawGravelPack(key: string, pen: Pen, place: AnnulusPlace): Shape {
  const { fill, ink } = pen.tones.gravel;
  const { sides, top, bottom } = walls(pen, place);
  if (bottom <= top) return group(key, []);
  let grains = '';
  const pitch = 6;
  for (const [left, right] of sides) {
    const columns = Math.max(1, Math.floor((right - left) / pitch));
    const step = (right - left) / columns;
    for (let y = Math.ceil(top / pitch) * pitch, row = 0; y < bottom - 2; y += pitch, row++) {
      for (let i = 0; i < columns - (row % 2); i++) {
        const x = left + step * (i + (row % 2 === 0 ? 0.5 : 1));
        grains += `M${tenth(x - 2)} ${y + 2}a2 1.8 0 1 0 4 0a2 1.8 0 1 0 -4 0`;
      }
    }
  }
  return group(key, [
    path('fill', sides.map(([left, right]) => block(left, top, right, bottom)).join(''), { fill, stroke: ink, 'stroke-width': 0.8 }),
    path('grains', grains, { fill: 'none', stroke: ink, 'stroke-width': 0.7 }),
  ]);
}
