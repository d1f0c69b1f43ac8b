/** A pressure tank cut open: air above its rubber, water below it, each at its true share of the volume; a ring under it. */
import { halfWidthAt, headOf, waterLevel, type Vessel } from '../../model/string/tankShape.ts';
import type { Ratio } from '../../model/si.ts';
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path, type Point } from '../shapes.ts';
import { block, straight, stroke } from './outline.ts';
import type { Tones } from '../theme.ts';

export interface TankOnPaper {
  /** The vessel, without its ring [px]. */
  readonly box: Box;
  /** The floor [px]. */
  readonly floor: number;
  readonly tones: Tones;
  /** A picture, not a sign of a few pixels: with the level at cut-in. */
  readonly whole: boolean;
}

/** Corners of each quarter of a head. */
const BENDS = { whole: 8, sign: 3 } as const;

export function drawTank({ atCutOut, atCutIn }: { atCutOut: Ratio; atCutIn: Ratio }, on: TankOnPaper): Shape {
  const { box, floor, tones, whole } = on;
  const { tank, air, water, waterEdge, ink } = tones;
  const level = levelIn(box, atCutOut);
  const low = levelIn(box, atCutIn);
  const edge = whole ? 1.8 : 1.3;
  return group('tank', [
    path('ring', ringOf(box, floor, whole), { fill: whole ? tank.shade : tank.edge, stroke: tank.edge }),
    path('body', straight(outline(on, box.bottom, box.top)), faced(air, waterEdge, edge)),
    ...(level < box.bottom - 0.5
      ? [path('water', straight(outline(on, box.bottom, level)), faced(water, waterEdge, edge))]
      : []),
    ...(whole
      ? [
          path('rubber', across(box, level), inked(ink, 2.2)),
          path('cutIn', across(box, low), inked(waterEdge, 1.2, '5 3')),
          // Where its air is let in and measured.
          path('airValve', block(middle(box) - 2.5, box.top - 5, middle(box) + 2.5, box.top), {
            fill: tones.brass.base,
            stroke: tones.brass.edge,
          }),
        ]
      : []),
  ]);
}

/** Height of the water on paper, for the share of the volume that it fills [px]. */
export function levelIn(box: Box, share: Ratio): number {
  return box.bottom - waterLevel(vesselIn(box), share);
}

const vesselIn = ({ left, top, right, bottom }: Box): Vessel => ({ radius: (right - left) / 2, height: bottom - top });

const middle = ({ left, right }: Box): number => (left + right) / 2;

function across(box: Box, y: number): string {
  const half = halfWidthAt(vesselIn(box), box.bottom - y);
  return stroke(middle(box) - half, y, middle(box) + half, y);
}

/** The stretch of the vessel between two heights on paper. */
function outline({ box, whole }: TankOnPaper, from: number, to: number): Point[] {
  const vessel = vesselIn(box);
  const head = headOf(vessel);
  const count = whole ? BENDS.whole : BENDS.sign;
  const bends = Array.from({ length: count + 1 }, (_, i) => head * (1 - Math.cos((i / count) * (Math.PI / 2))));
  const heights = [...bends, ...bends.map((each) => vessel.height - each).reverse()];
  const [low, high] = [box.bottom - from, box.bottom - to];
  const between = [low, ...heights.filter((each) => each > low && each < high), high];
  const side = (sign: 1 | -1): Point[] =>
    between.map((each) => [middle(box) + sign * halfWidthAt(vessel, each), box.bottom - each]);
  return [...side(-1), ...side(1).reverse()];
}

/** Cut open as the tank is, so that the pipe that comes up in its middle is seen. */
function ringOf(box: Box, floor: number, whole: boolean): string {
  const wide = box.right - box.left;
  const top = box.bottom - headOf(vesselIn(box)) * 0.7;
  if (!whole) return block(box.left + wide * 0.14, box.bottom - 1, box.right - wide * 0.14, floor);
  const leg = Math.max(2, wide * 0.05);
  const [left, right] = [box.left + wide * 0.09, box.right - wide * 0.09];
  return block(left, top, left + leg, floor) + block(right - leg, top, right, floor);
}
