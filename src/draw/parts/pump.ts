/** The pump's wet end: shell seen on the left, cut open on the right to its stack of stages; above it the discharge head with the rope's eye. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { circle, faced, group, path, rect } from '../shapes.ts';
import { block, straight, stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import { turned } from './turned.ts';

/** A stage of a 4 in pump is about this tall (common practice, no source), and never so small on paper that it blurs. */
const STAGE: Metres = 0.035;
const LEAST_STAGE_PX = 9;

/** Shares of the pump's height: the discharge neck, its shoulder, the foot of the shell. */
const NECK = 0.07;
const SHOULDER = 0.17;

export function drawPump(part: PlacedPart, pen: Pen): Shape {
  const { pump } = pen.tones;
  const centre = pen.x(0);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const height = bottom - top;
  const neck = top + height * NECK;
  const shoulder = top + height * SHOULDER;
  const shapes = [
    turned(
      'shell',
      {
        centre,
        profile: [
          [top, half * 0.5],
          [neck, half * 0.5],
          [shoulder, half],
          [bottom, half],
        ],
      },
      pump,
    ),
    path(
      'threads',
      stroke(centre - half * 0.5, top + 1.5, centre + half * 0.5, top + 1.5) +
        stroke(centre - half, shoulder, centre + half, shoulder),
      {
        stroke: pump.edge,
        'stroke-width': 0.8,
        fill: 'none',
      },
    ),
  ];
  if (pen.looks.pumpOpen) shapes.push(...openStages(pen, half, shoulder + 4, bottom - 3));
  shapes.push(drawEye(centre - half * 0.66, (neck + shoulder) / 2, Math.min(3.2, half * 0.14), pump.edge));
  return group(part.key, shapes);
}

/** Where the rope is tied: the eye on the shoulder of the discharge head. */
export const eyeOf = (part: PlacedPart): { readonly offset: number; readonly depth: number } => ({
  offset: -part.radius * 0.66,
  depth: part.top + (part.bottom - part.top) * ((NECK + SHOULDER) / 2),
});

function drawEye(x: number, y: number, r: number, edge: string): Shape {
  return circle('eye', x, y, r, faced('none', edge, 1.6));
}

/** Right half cut open: the shaft, and on it one impeller a stage, each under the bowl that turns its water up to the next. */
function openStages(pen: Pen, half: number, top: number, bottom: number): Shape[] {
  const { pump: shell, steel: metal, water } = pen.tones;
  const centre = pen.x(0);
  const room = bottom - top;
  const right = centre + half * 0.86;
  const count = Math.max(3, Math.round(room / Math.max(LEAST_STAGE_PX, STAGE * pen.down)));
  const step = room / count;
  const shaft = Math.max(1.2, half * 0.1);
  const reach = right - centre;
  let bowls = '';
  let impellers = '';
  for (let i = 0; i < count; i++) {
    const y = top + step * i;
    const x = (share: number): number => centre + reach * share;
    bowls += straight([
      [right, y + step * 0.02],
      [x(0.8), y + step * 0.1],
      [x(0.42), y + step * 0.24],
      [x(0.42), y + step * 0.36],
      [x(0.86), y + step * 0.24],
      [right, y + step * 0.3],
    ]);
    impellers += straight([
      [centre + shaft, y + step * 0.5],
      [x(0.8), y + step * 0.6],
      [x(0.8), y + step * 0.88],
      [centre + shaft, y + step * 0.88],
    ]);
  }
  return [
    rect('cut', centre, top, reach, room, { fill: water, stroke: shell.edge }),
    path('bowls', bowls, faced(shell.base, shell.edge, 0.6)),
    path('impellers', impellers, faced(metal.light, metal.edge, 0.7)),
    path('shaft', block(centre, top, centre + shaft, top + room), faced(metal.shine, metal.edge, 0.8)),
  ];
}
