/** A spring check valve in half section: outside with its arrow on the left, poppet, seat and spring on the right. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres, Ratio } from '../../model/si.ts';
import type { Attributes, Shape } from '../scene.ts';
import { digits, faced, group, path, polyline, rect } from '../shapes.ts';
import { straight } from './outline.ts';
import { onPaper, dashIfSymbol } from './closed.ts';
import type { Pen } from './pen.ts';
import { turned, type Profile } from './turned.ts';

export interface ValvePlace {
  readonly arrow: 'up' | 'down';
  /** 0: the poppet is on its seat; 1: lifted as far as it goes. */
  readonly open: Ratio;
  readonly offset: Metres;
  /** Of its outline, where nobody said that it is there. */
  readonly dash: Attributes;
}

/** The valve as it is drawn. */
interface ValveOnPaper extends Pick<ValvePlace, 'arrow' | 'open'> {
  readonly centre: number;
  readonly half: number;
  /** Height of a share of it from its top [px]. */
  readonly at: (share: number) => number;
}

/** How far the poppet lifts, in shares of the valve's height. */
const LIFT = 0.13;

export function drawCheckValve(part: PlacedPart, pen: Pen, { arrow, open, offset, dash }: ValvePlace): Shape {
  const { brass, ink } = pen.tones;
  const centre = pen.x(offset);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const height = pen.y(part.bottom) - top;
  const at = (share: number): number => top + height * share;
  const valve: ValveOnPaper = { arrow, open, centre, half, at };
  const profile: Profile = [
    [top, half * 0.66],
    [at(0.16), half * 0.66],
    [at(0.28), half],
    [at(0.76), half],
    [at(0.88), half * 0.66],
    [at(1), half * 0.66],
  ];
  return group(part.key, [
    turned('body', { centre, profile, few: true, attrs: dash }, brass),
    ...inside(valve, pen),
    path('arrow', arrowPath(valve), {
      fill: ink,
      stroke: brass.shine,
      'stroke-width': 0.9,
      'paint-order': 'stroke',
    }),
  ]);
}

/** The right half cut: wall, waterway, seat, poppet on its stem, spring. Upside down when the arrow points down. */
function inside({ centre, half, at, arrow, open }: ValveOnPaper, pen: Pen): Shape[] {
  const down = arrow === 'down';
  const lift = LIFT * open;
  const { brassCut, water, ink, rubber } = pen.tones;
  const flip = (share: number): number => at(down ? 1 - share : share);
  const wall = straight([
    [centre, at(0)],
    [centre + half * 0.66, at(0)],
    [centre + half * 0.66, at(0.16)],
    [centre + half, at(0.28)],
    [centre + half, at(0.76)],
    [centre + half * 0.66, at(0.88)],
    [centre + half * 0.66, at(1)],
    [centre, at(1)],
  ]);
  const way = straight([
    [centre, flip(0.02)],
    [centre + half * 0.46, flip(0.02)],
    [centre + half * 0.46, flip(0.2)],
    [centre + half * 0.82, flip(0.32)],
    [centre + half * 0.82, flip(0.66)],
    [centre + half * 0.42, flip(0.74)],
    [centre + half * 0.42, flip(0.98)],
    [centre, flip(0.98)],
  ]);
  const poppet = straight([
    [centre, flip(0.5)],
    [centre + half * 0.1, flip(0.5)],
    [centre + half * 0.2, flip(0.58)],
    [centre + half * 0.66, flip(0.64)],
    [centre + half * 0.56, flip(0.72)],
    [centre, flip(0.78)],
  ]);
  const turns = [0.14, 0.22, 0.3, 0.38, 0.46, 0.54].map((share, i): readonly [number, number] => [
    centre + half * (i % 2 === 0 ? 0.06 : 0.36),
    // Squeezed by the poppet from its foot up.
    flip(share - ((share - 0.14) / 0.4) * lift),
  ]);
  return [
    path('wall', wall, faced(brassCut.fill, brassCut.ink, 0.9)),
    path('way', way, faced(water, brassCut.ink, 0.7)),
    path('spring', straight(turns, false), { fill: 'none', stroke: ink }),
    path('poppet', poppet, {
      fill: rubber.shade,
      stroke: rubber.edge,
      'stroke-width': 0.6,
      ...(open > 0 ? { transform: `translate(0 ${digits(flip(0) - flip(lift))})` } : {}),
    }),
  ];
}

/** On the left half, which is not cut. */
function arrowPath({ centre, half, at, arrow }: ValveOnPaper): string {
  const x = centre - half * 0.5;
  const [tip, tail] = arrow === 'up' ? [at(0.22), at(0.82)] : [at(0.82), at(0.22)];
  const neck = tip + (tail - tip) * 0.52;
  const wide = Math.min(half * 0.34, Math.abs(tail - tip) * 0.6);
  const slim = wide * 0.36;
  return straight([
    [x, tip],
    [x + wide, neck],
    [x + slim, neck],
    [x + slim, tail],
    [x - slim, tail],
    [x - slim, neck],
    [x - wide, neck],
  ]);
}

const LEAST_HALF_PX = 6;

/** From afar: its body with the arrow that is cast on it. */
export function closedCheckValve(part: PlacedPart, pen: Pen, centre: number, arrow: ValvePlace['arrow']): Shape {
  const { brass } = pen.tones;
  const { middle, tall } = onPaper(part, pen);
  const half = Math.max(LEAST_HALF_PX, part.radius * pen.across);
  const up = arrow === 'up' ? 1 : -1;
  return group(part.key, [
    rect('body', centre - half, middle - tall / 2, half * 2, tall, {
      rx: 2,
      fill: brass.base,
      stroke: brass.edge,
      'stroke-width': 1,
      ...dashIfSymbol(part, pen),
    }),
    path(
      'arrow',
      polyline([
        [centre - 2.6, middle + 1.5 * up],
        [centre, middle - 2.5 * up],
        [centre + 2.6, middle + 1.5 * up],
      ]),
      faced('none', brass.edge, 1.6),
    ),
  ]);
}
