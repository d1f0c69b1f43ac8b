/** What grows on the ground and lies on it: grass with its roots, and snow where the ground freezes. */
import { Pen } from '../hatch/pen.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, tenth } from '../shapes.ts';
import { pxText } from '../tenths.ts';
import type { Ink } from '../theme.ts';

export interface TurfPlace {
  /** Ground that nobody drilled: grass and roots [px]. */
  readonly grown: readonly Stretch[];
  /** Ground up to the casing, where snow lies; empty where it does not freeze [px]. */
  readonly snowed: readonly Stretch[];
  readonly y: number;
  /** Another line runs where the roots would be. */
  readonly rootless?: boolean;
}

type Stretch = readonly [left: number, right: number];

/** A figure in relative steps of whole pixels, and where it ends from where it began. */
type Figure = readonly [steps: string, endX: number, endY: number];

interface Growth {
  /** From tuft to tuft [px]. */
  readonly pitch: number;
  readonly blades: readonly [Figure, Figure];
  readonly roots: readonly [Figure, Figure];
  /** Depth of the snow [px]. */
  readonly snow: number;
}

/** As large as a detail shows them. */
export const NEAR: Growth = {
  pitch: 32,
  blades: [
    ['l-2-5m2 5l1-8m-1 8l4-5', 4, -5],
    ['l-3-3m3 3l-1-7m1 7l2-6', 2, -6],
  ],
  roots: [
    ['q1 6-1 12m1-10q-1 3-5 5m5-3q1 3 5 4m-5-8l3 1', 3, 1],
    ['q-1 5 1 10m-1-8q-1 4-4 6m4-3q1 2 5 3m-1-1l1 3', 5, 10],
  ],
  snow: 6,
};

/** As small as the section shows them. */
export const FAR: Growth = {
  pitch: 28,
  blades: [
    ['l-1-3m1 3l1-5m-1 5l3-3', 3, -3],
    ['l-2-2m2 2v-5m0 5l2-4', 2, -4],
  ],
  roots: [
    ['v7m0-6l-3 3m3-1l3 4', 3, 7],
    ['l1 6m-1-5l-3 4m4-2l3 2', 4, 5],
  ],
  snow: 5,
};

export function drawTurf(ink: Ink, growth: Growth, { grown, snowed, y, rootless = false }: TurfPlace): Shape {
  const { pitch, blades, roots } = growth;
  const grass = new Pen();
  const stocks = new Pen();
  for (const [left, right] of grown) {
    // Hung on the sheet, so that nothing walks when the hole or the window moves.
    for (let i = Math.ceil((left + 5) / pitch); i * pitch < right - 9; i++) {
      const x = i * pitch + ((i * 7) % 5);
      const kind = i % 2 === 0 ? 0 : 1;
      grass.stamp(x, y - 1, ...blades[kind]);
      if (!rootless) stocks.stamp(x, y + 2, ...roots[kind]);
    }
  }
  const cover = snowed.map(([left, right]) => bank(left, right, y, growth.snow)).join('');
  return group('turf', [
    ...(rootless ? [] : [path('roots', stocks.path, faced('none', ink.ground.soil.hatch, 0.8))]),
    // Snow lies on the grass and hides it.
    cover === ''
      ? path('blades', grass.path, faced('none', ink.grass, 1.1))
      : path('snow', cover, faced(ink.snow, ink.frost, 0.9)),
  ]);
}

/** One drift of snow after another along the surface [px]. */
const DRIFT = 32;

function bank(left: number, right: number, y: number, deep: number): string {
  const drifts = Math.round((right - left) / DRIFT);
  if (drifts < 1) return '';
  const long = tenth((right - left) / drifts);
  const written = pxText(long);
  const waves = `q${pxText(long / 2)}-2.5 ${written} 0${`t${written} 0`.repeat(drifts - 1)}`;
  return `M${pxText(left)} ${pxText(y - 1.7)}v-${deep}${waves}v${deep}`;
}
