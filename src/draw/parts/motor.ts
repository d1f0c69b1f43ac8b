/** The motor: a sealed can with a head that takes the lead, welded rings and a rounded foot. */
import { inches } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { block, stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import { turned } from './turned.ts';

/** The head that the pump is bolted on: slimmer than the can, and this tall. Common practice, no source. */
const HEAD: Metres = inches(1.5);
const HEAD_SHARE = 0.84;
/** Where the lead is plugged in: across from the axis as a share of the can's radius, down as a share of the head. */
const PLUG_AT = 0.7;
const PLUG_DOWN = 0.6;

const headOf = ({ top, bottom }: PlacedPart): Metres => Math.min(HEAD, (bottom - top) * 0.15);

/** The lead's end: a plug in the motor's head, on the side of the guard strip. */
export const plugOf = (part: PlacedPart): { readonly offset: Metres; readonly depth: Metres } => ({
  offset: -part.radius * PLUG_AT,
  depth: part.top + headOf(part) * PLUG_DOWN,
});

export function drawMotor(part: PlacedPart, pen: Pen): Shape {
  const centre = pen.x(0);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const height = pen.y(part.bottom) - top;
  const at = (share: number): number => top + height * share;
  const head = top + headOf(part) * pen.down;
  const body = turned(
    'body',
    {
      centre,
      profile: [
        [top, half * HEAD_SHARE],
        [head, half * HEAD_SHARE],
        [head, half],
        [at(0.89), half],
        [at(0.965), half * 0.86],
        [at(1), half * 0.62],
      ],
    },
    pen.tones.motor,
  );
  const ring = (share: number, reach: number): string =>
    stroke(centre - half * reach, at(share), centre + half * reach, at(share));
  const rings = path('rings', ring(0.14, 1) + ring(0.83, 1) + ring(0.89, 1) + ring(0.965, 0.86), {
    stroke: pen.tones.motor.edge,
    'stroke-width': 0.8,
    fill: 'none',
  });
  return group(part.key, [body, rings, drawPlug(part, pen)]);
}

/** Rubber, held by its nut: what of the lead shows between strip and motor. */
function drawPlug(part: PlacedPart, pen: Pen): Shape {
  const { rubber } = pen.tones;
  const { offset, depth } = plugOf(part);
  const x = pen.x(offset);
  const y = pen.y(depth);
  const tall = Math.max(2, headOf(part) * pen.down * 0.32);
  const wide = Math.max(2.4, part.radius * pen.across * 0.1);
  return path('plug', block(x - wide, y - tall, x + wide, y + tall), {
    fill: rubber.base,
    stroke: rubber.edge,
  });
}
