/** A pressure gauge on its stem. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { circle, faced, group, inked, path } from '../shapes.ts';
import { stroke } from './outline.ts';
import type { Tones } from '../theme.ts';

export function drawGauge({ left, top, right, bottom }: Box, tones: Tones): Shape {
  const r = (right - left) / 2;
  const [x, y] = [left + r, top + r];
  return group('gauge', [
    path('stem', stroke(x, y + r, x, bottom), inked(tones.brass.edge, Math.max(1.1, r * 0.3))),
    circle('dial', x, y, r, faced(tones.bore, tones.ink, Math.max(1.1, r * 0.12))),
    path('needle', stroke(x, y, x + r * 0.52, y - r * 0.52), inked(tones.ink, Math.max(1, r * 0.1))),
  ]);
}
