/** The rope: slack beside the cable, from its knot at the pump's eye to where it is tied; it carries nothing. */
import { inches } from '../../model/units.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { circle, faced, group, path } from '../shapes.ts';
import { Pen as Line } from '../hatch/pen.ts';
import { curveDown, tenth } from './outline.ts';
import { pxText } from '../tenths.ts';
import type { Pen } from './pen.ts';
import { runPoints, type Runs } from './runs.ts';
import { sealEye } from './seal.ts';
import type { StringAxis } from './stringAxis.ts';

export interface RopePlace {
  readonly eye: { readonly offset: Metres; readonly depth: Metres };
  readonly casingInsideRadius: Metres;
  /** Top of the cap or seal, and the casing's rim under it. */
  readonly coverTop: Metres;
  readonly casingTop: Metres;
  /** Underside of a seal, whose eye takes the rope; null in a casing with a hook. */
  readonly underSeal: Metres | null;
  readonly tied: 'casing hook' | 'cap' | 'through cap' | 'loose';
}

export function drawRope(part: PlacedPart, pen: Pen, axis: StringAxis, place: RopePlace): Shape {
  const { rope, ropeTwist, steel } = pen.tones;
  const depthAt = (y: number): Metres => pen.top + (y - pen.y(pen.top)) / pen.down;
  const run = ropeRun(part, axis, place);
  const atEye = isAtEye(place);
  const x = (y: number): number => pen.x(run(depthAt(y)));
  const from = Math.max(upperEnd(part, place), pen.top - 0.2);
  const leaves = place.eye.depth - 0.25;
  const to = Math.min(leaves, pen.bottom + 0.2);
  const pieces = Math.max(2, Math.min(12, Math.ceil((to - from) / 0.8)));
  let d = to > from ? curveDown(x, pen.y(from), pen.y(to), pieces) : '';
  if (leaves < pen.bottom)
    d +=
      (d === '' ? `M${pxText(x(pen.y(leaves)))} ${pxText(pen.y(leaves))}` : '') + toEye(pen, x(pen.y(leaves)), place);
  const wide = Math.max(2.2, part.radius * 2 * pen.across);
  const hook =
    part.top > pen.top && place.tied === 'casing hook' && !atEye
      ? drawHook(pen, x(pen.y(part.top)), part.top, place.casingInsideRadius)
      : [];
  const ends = part.top > pen.top && place.tied === 'through cap';
  return group(part.key, [
    path('rope', d, faced('none', rope, tenth(wide))),
    path('twist', d, {
      fill: 'none',
      stroke: ropeTwist,
      'stroke-width': tenth(wide * 0.5),
      'stroke-dasharray': '2 3.4',
    }),
    ...hook,
    ...(ends ? [drawStopper(pen, x(pen.y(from)), pen.y(from), wide)] : []),
    ...(place.eye.depth < pen.bottom
      ? [
          circle(
            'knot',
            pen.x(place.eye.offset),
            pen.y(place.eye.depth),
            Math.max(2, wide * 0.75),
            faced(rope, steel.edge, 0.7),
          ),
        ]
      : []),
  ]);
}

type Hung = Pick<RopePlace, 'tied' | 'underSeal' | 'casingInsideRadius'>;

const isAtEye = ({ tied, underSeal }: Hung): boolean => underSeal !== null && tied === 'casing hook';

/** Its middle across: slack, so that it wanders a little, and from a seal's eye it finds its own way within a foot. */
export function ropeRun({ top }: PlacedPart, axis: StringAxis, place: Hung): (depth: Metres) => Metres {
  const free = (depth: Metres): Metres => axis.rope(depth) + SWAY * Math.sin(depth * 2.1);
  const fromEye = isAtEye(place) ? sealEye(place.casingInsideRadius) - free(top) : 0;
  return (depth) => free(depth) + fromEye * Math.max(0, 1 - Math.max(0, depth - top) / FROM_EYE) ** 2;
}

const SWAY: Metres = inches(0.12);
const FROM_EYE: Metres = inches(12);

/** Through a cap it stands out over it, held by a knot; tied under the cap it ends at the rim. */
export function upperEnd(
  { top }: PlacedPart,
  { tied, coverTop, casingTop, underSeal }: Pick<RopePlace, 'tied' | 'coverTop' | 'casingTop' | 'underSeal'>,
): Metres {
  if (tied === 'through cap') return Math.min(top, coverTop - OUT);
  return tied === 'cap' ? Math.min(top, underSeal ?? casingTop) : top;
}

const OUT: Metres = inches(1.5);

function drawStopper(pen: Pen, x: number, y: number, wide: number): Shape {
  const { rope, steel } = pen.tones;
  return circle('stopper', x, y, Math.max(3.4, wide), faced(rope, steel.edge, 0.8));
}

function toEye(pen: Pen, x: number, { eye }: RopePlace): string {
  const bottom = pen.y(eye.depth);
  const end = pen.x(eye.offset);
  return `C${pxText(x)} ${pxText(bottom)} ${pxText(x)} ${pxText(bottom + 2)} ${pxText(end)} ${pxText(bottom)}`;
}

/** A hook fixed to the casing's inside: metal with an edge, so that it is seen on light and on dark. */
function drawHook(pen: Pen, x: number, depth: Metres, casingInsideRadius: Metres): Shape[] {
  const { edge, base } = pen.tones.steel;
  const y = pen.y(depth);
  const wall = pen.x(-casingInsideRadius);
  const d = `M${pxText(wall)} ${pxText(y - 5)}h3C${pxText(x + 5)} ${pxText(y - 5)} ${pxText(x + 5)} ${pxText(y + 2)} ${pxText(x)} ${pxText(y + 2)}s-3 -2.5 -1.5 -3.5`;
  const bent = { fill: 'none', 'stroke-linecap': 'round' } as const;
  return [
    path('hook', d, { ...bent, stroke: edge, 'stroke-width': 2.6 }),
    path('hookGlint', d, { ...bent, stroke: base, 'stroke-width': 1.1 }),
  ];
}

/** From afar: a twisted line. */
export function closedRope(part: PlacedPart, pen: Pen, runs: Runs): Shape {
  const d = new Line().through(runPoints((depth) => runs.rope(depth), part, runs.centredFrom, pen)).path;
  return path(part.key, d, {
    fill: 'none',
    stroke: pen.tones.rope,
    'stroke-width': 1.8,
    'stroke-dasharray': '4 1.6',
  });
}
