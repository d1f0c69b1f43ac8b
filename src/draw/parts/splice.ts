/** The splice: every conductor joined under its own tube, the tubes staggered so that the joint stays slim. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path, rect } from '../shapes.ts';
import { pxText } from '../tenths.ts';
import { onPaper } from './closed.ts';
import { block, straight, tenth } from './outline.ts';
import type { Pen } from './pen.ts';

/** Tube length as part of the whole splice. */
const TUBE = 0.25;

/** On a slimmer tube neither glint nor tapered end is seen [px]. */
const GLINT_FROM = 4.5;

export interface SplicePlace {
  /** Middle of the cable there. */
  readonly offset: Metres;
  readonly cableRadius: Metres;
  /** The cables' own ends are drawn with them. */
  readonly bare?: boolean;
  /** Power conductors and ground. */
  readonly conductors: number;
}

export function drawSplice(
  part: PlacedPart,
  pen: Pen,
  place: SplicePlace,
  dash: Readonly<Record<string, string>> = {},
): Shape {
  const { leads, rubber, cable, ink } = pen.tones;
  const centre = pen.x(place.offset);
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const tall = bottom - top;
  const pitch = Math.max(4.4, place.cableRadius * pen.across * 0.72);
  const wide = Math.max(2.8, pitch * 0.8);
  const count = Math.min(4, Math.max(2, place.conductors));
  const neck = Math.min(5, tall * 0.06);
  const shapes: Shape[] = [];
  let tubes = '';
  let glints = '';
  for (let i = 0; i < count; i++) {
    // The bundle leans off the pipe, where there is room.
    const x = centre - (i - 0.7) * pitch;
    const lead = leads[count === 4 ? i : ([0, 1, 3][i] ?? 0)] ?? ink;
    shapes.push(
      path(
        `lead${['Black', 'Red', 'Yellow', 'Ground'][i] ?? ''}`,
        straight(
          [
            [centre, top],
            [x, top + neck],
            [x, bottom - neck],
            [centre, bottom],
          ],
          false,
        ),
        { stroke: lead },
      ),
    );
    const start = top + neck + ((tall - neck * 2 - tall * TUBE) * i) / Math.max(1, count - 1);
    const end = start + tall * TUBE;
    if (wide < GLINT_FROM) {
      tubes += block(x - wide / 2, start, x + wide / 2, end);
      continue;
    }
    tubes += `M${pxText(x - wide / 2)} ${pxText(start + 1)}l${pxText(wide / 2)} -1l${pxText(wide / 2)} 1v${pxText(tall * TUBE - 2)}l${pxText(-wide / 2)} 1l${pxText(-wide / 2)} -1z`;
    glints += `M${pxText(x - wide * 0.18)} ${pxText(start + 2.5)}v${pxText(tall * TUBE - 5)}`;
  }
  const jackets = path(
    'jackets',
    `M${pxText(centre)} ${pxText(top - 3)}v5M${pxText(centre)} ${pxText(bottom - 2)}v5`,
    inked(cable, Math.max(3, place.cableRadius * 2 * pen.across)),
  );
  return group(
    part.key,
    [
      ...shapes,
      path('tubes', tubes, { fill: rubber.base, stroke: rubber.edge, 'stroke-width': 0.9, ...dash }),
      ...(glints === '' ? [] : [path('glints', glints, inked(rubber.shine, 0.8))]),
      ...(place.bare === true ? [] : [jackets]),
    ],
    { fill: 'none', 'stroke-width': tenth(Math.max(1.4, wide * 0.45)) },
  );
}

/** From afar: a thicker stretch of the cable. */
export function closedSplice(part: PlacedPart, pen: Pen, cable: number): Shape {
  const { middle, tall } = onPaper(part, pen);
  return rect(part.key, cable - 2.4, middle - tall / 2, 4.8, tall, { rx: 2, fill: pen.tones.tape });
}
