/** Where nobody measured the drawdown, the water may stand anywhere between the static level and the pump. */
import { mayFallAnywhere } from '../anyFall.ts';
import { strokes } from '../parts/outline.ts';
import type { Shape } from '../scene.ts';
import { inked, path } from '../shapes.ts';
import type { Stage } from './stage.ts';

/** From one slant stroke to the next, and how far it rises [px]. */
const PITCH = 11;
const RISE = 8;
const CLEAR = 3;

export function drawUnknownZone({ solution, pen, ink }: Stage): Shape[] {
  const { facts, levels, bore } = solution;
  const still = levels.static;
  if (still === null || !mayFallAnywhere(solution)) return [];
  let d = '';
  for (const { top, bottom, insideRadius } of bore) {
    const from = pen.y(Math.max(top, still, pen.top));
    const to = pen.y(Math.min(bottom, facts.pump.setting, pen.bottom));
    const half = insideRadius * pen.across - CLEAR;
    const places: [number, number][] = [];
    for (let y = Math.ceil(from / PITCH) * PITCH; y + RISE < to; y += PITCH) places.push([pen.x(0) - half, y + RISE]);
    d += strokes(places, 2 * half, -RISE);
  }
  if (d === '') return [];
  return [path('unknownZone', d, inked(ink.pumping, 0.8, '3 3'))];
}
