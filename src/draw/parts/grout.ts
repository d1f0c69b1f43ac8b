/** Grout or gravel in the annulus: a cut face with its own hatching, left and right of the casing. */
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { block, strokes, tenth } from './outline.ts';
import type { Point } from '../shapes.ts';
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

const FLECK_PX = 10;

/** Cement: fine crosswise strokes and flecks. */
export function drawGrout(key: string, pen: Pen, place: AnnulusPlace): Shape {
  const { fill, ink } = pen.tones.grout;
  const { sides, top, bottom } = walls(pen, place);
  if (bottom <= top) return group(key, []);
  const d = sides.map(([left, right]) => block(left, top, right, bottom)).join('');
  if (place.bottom === null) return group(key, [path('outline', d, { fill: 'none', stroke: ink, 'stroke-dasharray': '4 3' })]);
  // Flecks of aggregate, scattered evenly.
  const long: Point[] = [];
  for (const [left, right] of sides) {
    for (let y = Math.ceil(top / FLECK_PX) * FLECK_PX, i = Math.round(y / FLECK_PX); y < bottom - 4; y += FLECK_PX, i++) {
      const wide = right - left - 5;
      long.push([left + 1 + wide * (((i * 5) % 7) / 7), y]);
    }
  }
  return group(key, [
    path('fill', d, { fill, stroke: ink, 'stroke-width': 0.8 }),
    path('flecks', strokes(long, 3, -3), { stroke: ink, 'stroke-width': 0.8 }),
  ]);
}

/** Sorted gravel round a screen: round grains packed in rows. */
export function drawGravelPack(key: string, pen: Pen, place: AnnulusPlace): Shape {
  const { fill, ink } = pen.tones.gravel;
  const { sides, top, bottom } = walls(pen, place);
  if (bottom <= top) return group(key, []);
  let grains = '';
  const pitch = 7;
  for (const [left, right] of sides) {
    const columns = Math.max(1, Math.floor((right - left) / pitch));
    const step = (right - left) / columns;
    for (let y = Math.ceil(top / pitch) * pitch, row = Math.round(y / pitch); y < bottom - 3; y += pitch, row++) {
      const even = row % 2 === 0;
      for (let i = 0; i < columns - (even ? 0 : 1); i++) {
        const x = left + step * (i + (even ? 0.5 : 1));
        // A grain is a zero-length stroke with round ends, drawn twice: rim and face.
        grains += i === 0 ? `M${tenth(x)} ${y + 3}h0` : `m${tenth(step)} 0h0`;
      }
    }
  }
  const dot = (name: string, colour: string, wide: number): Shape => path(name, grains, { stroke: colour, 'stroke-width': wide, 'stroke-linecap': 'round' });
  return group(key, [
    path('fill', sides.map(([left, right]) => block(left, top, right, bottom)).join(''), { fill, stroke: ink, 'stroke-width': 0.8 }),
    dot('rims', ink, 5.4), dot('grains', fill, 4),
  ]);
}
