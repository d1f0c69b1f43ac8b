/** Frozen ground: a pale band from the surface and a dash-dot line with six-armed stars at its foot. */
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { digits, group, line, path, rect } from '../shapes.ts';
import { LINE } from '../theme.ts';
import { within, type SectionFrame } from './frame.ts';

/** Drawn under the hole, so that the tint never lies over the grout. */
export function drawFrost(depth: Metres | null, frame: SectionFrame): Shape[] {
  if (depth === null || depth <= 0) return [];
  const { left, right, ink } = frame;
  const top = frame.y(0);
  const foot = within(frame, frame.y(depth));
  const band = rect('frost/band', left, top, right - left, foot - top, { fill: ink.frostFill, 'fill-opacity': 0.82 });
  const edge = line('frost/line', left, foot, right, foot, {
    stroke: ink.frost,
    'stroke-width': 1.6,
    'stroke-dasharray': '9 3 1.6 3',
  });
  return [group('frost', [band, stars(frame, foot), edge])];
}

/** A star every 64 px along the line, clear of the hole. */
function stars({ left, right, axis, holeHalf, ink }: SectionFrame, y: number): Shape {
  const places: number[] = [];
  for (let x = left + 36; x < right - 8; x += 64) if (Math.abs(x - axis) > holeHalf + 10) places.push(x);
  const d = places.map((x) => star(x, y)).join('');
  return path('frost/stars', d, { fill: 'none', stroke: ink.frost, 'stroke-width': LINE.narrow });
}

function star(x: number, y: number): string {
  return [0, 60, 120]
    .map((degrees) => {
      const dx = 4 * Math.cos((degrees * Math.PI) / 180);
      const dy = 4 * Math.sin((degrees * Math.PI) / 180);
      return `M${digits(x - dx)} ${digits(y - dy)}L${digits(x + dx)} ${digits(y + dy)}`;
    })
    .join('');
}
