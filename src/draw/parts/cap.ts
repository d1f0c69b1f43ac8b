/** The cap: left half outside with bolts and the down-turned screened vent, right half cut, the cable passing out. */
import { inches } from '../../model/units.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, line, path, rect } from '../shapes.ts';
import { block, stroke } from './outline.ts';
import { pxText } from '../tenths.ts';
import type { Pen } from './pen.ts';
import { turned } from './turned.ts';

export interface CapPlace {
  readonly casingTop: Metres;
  readonly casingOutsideRadius: Metres;
  /** A well that flows by itself would run out of a vent. */
  readonly vented: boolean;
}

export function drawCap(part: PlacedPart, pen: Pen, place: CapPlace): Shape {
  const { cast, air, rubber, steel } = pen.tones;
  const centre = pen.x(0);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const rim = pen.y(place.casingTop);
  const tall = bottom - top;
  const shell = Math.max(1.8, tall * 0.16);
  const dome = turned(
    'dome',
    {
      centre,
      profile: [
        [top, half * 0.72],
        [top + tall * 0.12, half * 0.86],
        [top + tall * 0.34, half * 0.95],
        [rim - 1, half * 0.97],
        [rim - 1, half],
        [bottom, half],
      ],
    },
    cast,
  );
  const cavity = `M${pxText(centre)} ${pxText(top + shell)}H${pxText(centre + half * 0.7)}Q${pxText(centre + half * 0.88)} ${pxText(top + shell)} ${pxText(centre + half * 0.92)} ${pxText(rim)}H${pxText(centre)}z`;
  const boltX = [-0.86, -0.3].map((share) => centre + half * share);
  const bolt = Math.max(2.2, half * 0.03);
  const gasket = Math.max(1.6, tall * 0.14);
  return group(part.key, [
    dome,
    path('cavity', cavity, faced(air, cast.edge, 0.8)),
    rect(
      'gasket',
      pen.x(-place.casingOutsideRadius) - 1,
      rim - gasket,
      place.casingOutsideRadius * 2 * pen.across + 2,
      gasket,
      { fill: rubber.base },
    ),
    path(
      'bolts',
      boltX.map((x) => block(x - bolt, rim - 1, x + bolt, bottom - 1.5)).join(''),
      faced(steel.light, cast.edge, 0.8),
    ),
    ...(place.vented
      ? drawVent(centre - half * 0.97, top + tall * 0.42, Math.max(5, inches(0.5) * pen.across), pen)
      : []),
  ]);
}

/** A short elbow that opens downwards behind a screen. */
export function drawVent(x: number, y: number, wide: number, pen: Pen): Shape[] {
  const { cast, air } = pen.tones;
  const out = x - wide * 1.5;
  const foot = y + wide * 1.5;
  return [
    path(
      'vent',
      `M${pxText(x)} ${pxText(y - wide / 2)}H${pxText(out)}Q${pxText(out - wide / 2)} ${pxText(y - wide / 2)} ${pxText(out - wide / 2)} ${pxText(y + wide * 0.2)}V${pxText(foot)}H${pxText(out + wide / 2)}V${pxText(y + wide / 2)}H${pxText(x)}z`,
      {
        fill: cast.base,
        stroke: cast.edge,
      },
    ),
    path('ventScreen', block(out - wide / 2, foot, out + wide / 2, foot + 3.4), faced(air, cast.edge, 0.9)),
    path(
      'ventMesh',
      [0.25, 0.5, 0.75]
        .map((share) => stroke(out - wide / 2 + wide * share, foot, out - wide / 2 + wide * share, foot + 3.4))
        .join('') + stroke(out - wide / 2, foot + 1.7, out + wide / 2, foot + 1.7),
      inked(cast.edge, 0.6),
    ),
  ];
}

const CLOSED_TALL_PX = 7;

export interface ClosedCover {
  readonly half: number;
  readonly top: number;
  readonly bottom: number;
}

/** @param casingTop  the rim that it sits on; a cap reaches down over it, a seal into it */
export function closedCoverOn(part: PlacedPart, casingTop: Metres, pen: Pen): ClosedCover {
  const tall = Math.max(CLOSED_TALL_PX, (part.bottom - part.top) * pen.down);
  const bottom = pen.y(casingTop) + tall * 0.35;
  return { half: part.radius * pen.across + 3, top: bottom - tall, bottom };
}

/** From afar: cap or seal as one block on the casing. */
export function closedCover(part: PlacedPart, { half, top, bottom }: ClosedCover, pen: Pen): Shape {
  const { cast } = pen.tones;
  const centre = pen.x(0);
  return group(part.key, [
    rect('body', centre - half, top, half * 2, bottom - top, {
      rx: 2.5,
      fill: cast.base,
      stroke: cast.edge,
      'stroke-width': 1.2,
    }),
    line('shine', centre - half + 4, top + 2.2, centre + half - 4, top + 2.2, inked(cast.light, 1.4)),
  ]);
}
