/** A pipe in the house, seen from outside: one run of straight pieces with its bends. */
import type { Shape } from '../scene.ts';
import { path, type Point } from '../shapes.ts';
import { straight } from './outline.ts';
import type { Ramp } from '../theme.ts';

export function drawHousePipe(key: string, run: readonly Point[], wide: number, ramp: Ramp): Shape[] {
  const d = straight(run, false);
  const along = (name: string, ink: string, width: number): Shape =>
    path(`${key}/${name}`, d, { fill: 'none', stroke: ink, 'stroke-width': width, 'stroke-linejoin': 'round' });
  return [
    along('edge', ramp.edge, wide),
    along('body', ramp.base, Math.max(0.8, wide - 1.8)),
    ...(wide > 6 ? [along('shine', ramp.light, wide * 0.3)] : []),
  ];
}
