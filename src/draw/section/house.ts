/** House with tank and switch, a symbol without scale, where the line arrives at the section's edge. */
import type { HouseFacts } from '../../model/facts.ts';
import type { Solution } from '../../model/solution.ts';
import { block, roundBlock, straight, stroke } from '../parts/outline.ts';
import type { Shape } from '../scene.ts';
import { circle, digits, group, path, polygon, polyline, roundLine, tenth, type Point } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import { within, type SectionFrame } from './frame.ts';

/** A narrower house could not hold its tank [px]. */
const LEAST_HOUSE = 40;

export interface HousePlace {
  readonly left: number;
  readonly width: number;
  readonly eaves: number;
  /** Where the line from the well turns up. */
  readonly pipeX: number;
}

/** @param arrives  y of the line from the well: one above the ground needs a wall to go through */
export function housePlace(arrives: number, { right, axis, holeHalf, y }: SectionFrame): HousePlace {
  const ground = y(0);
  const wall = Math.max(30, ground - arrives + 14);
  const width = Math.min(Math.max(76, wall * 0.9), (right - axis - holeHalf) * 0.58);
  if (width < LEAST_HOUSE) return { left: right, width, eaves: ground, pipeX: right - 12 };
  const left = right - width;
  return { left, width, eaves: ground - wall, pipeX: left + width * 0.28 };
}

export function drawHouse({ facts, parts }: Solution, frame: SectionFrame): Shape[] {
  const buried = parts.find((part) => part.key === 'buriedLine');
  if (buried === undefined) return [];
  const { ink, right } = frame;
  const ground = frame.y(0);
  const arrives = within(frame, frame.y((buried.top + buried.bottom) / 2));
  const place = housePlace(arrives, frame);
  const { left, width, eaves, pipeX } = place;
  const tones = (facts.house.line ?? facts.dropPipe).material === 'PE' ? ink.tones.pipe : ink.tones.steel;
  if (width < LEAST_HOUSE) return [arrow(pipeX, arrives, tones.edge)];
  const riser = polyline([
    ...entry(arrives, Math.max(5, 2 * buried.radius * frame.kx) / 2, place, ground),
    [left + width * TANK_MIDDLE, ground - MANIFOLD],
  ]);
  const walls: Point[] = [
    [left + 4, eaves],
    [left + 4, ground],
    [right - 4, ground],
    [right - 4, eaves],
  ];
  const gable: Point[] = [
    [left, eaves + 1],
    [left + width / 2, eaves - width * 0.22],
    [right, eaves + 1],
  ];
  const { kind } = facts.house;
  return [
    group('house', [
      path('walls', polyline([...walls, ...[...gable].reverse()]), {
        fill: ink.paper,
        stroke: ink.ink2,
        'stroke-width': 1.2,
      }),
      path('roof', polyline(gable), { fill: 'none', stroke: ink.ink2, 'stroke-width': 3 }),
      path('riser/wall', riser, roundLine(tones.edge, 4)),
      path('riser/body', riser, roundLine(tones.base, 2.2)),
      ...(kind === 'open tank' ? openTank(left, width, ground, ink) : pressureTank(left, width, ground, ink)),
      ...(kind === 'open tank' ? [] : controls(facts.house, left, width, ground, ink)),
    ]),
  ];
}

/** Up through the floor from a buried line, or through the wall from one above the ground, to the pipe along the floor. */
function entry(arrives: number, half: number, { left, pipeX }: HousePlace, ground: number): Point[] {
  const floorPipe = ground - MANIFOLD;
  if (arrives > ground)
    return [
      [pipeX, arrives - half + 1],
      [pipeX, floorPipe],
    ];
  if (floorPipe - arrives < MANIFOLD) return [[left + 4, floorPipe]];
  return [
    [left + 4, arrives],
    [pipeX, arrives],
    [pipeX, floorPipe],
  ];
}

/** Height of the pipe along the floor [px]. */
const MANIFOLD = 6;
/** Where in the house's width the tank stands. */
const TANK_MIDDLE = 0.74;

function tankSides(left: number, width: number): [number, number] {
  const half = Math.max(6.5, Math.min(10, width * 0.14));
  const middle = left + width * TANK_MIDDLE;
  return [middle - half, middle + half];
}

/** A bladder tank on its ring: air above the bladder, water under it. */
function pressureTank(left: number, width: number, ground: number, ink: Ink): Shape[] {
  const [from, to] = tankSides(left, width);
  const top = ground - 27;
  const foot = ground - 3;
  const bladder = top + 11;
  const wide = digits(tenth(to - from));
  return [
    path('tank/ring', block(from + 2.5, foot - 1, to - 2.5, ground), { fill: ink.ink2 }),
    path('tank/body', roundBlock(from, top, to, foot, 6), {
      fill: ink.tones.bore,
      stroke: ink.static,
      'stroke-width': 1.3,
    }),
    path(
      'tank/water',
      `M${digits(tenth(from))} ${digits(tenth(bladder))}q${digits(tenth((to - from) / 2))}-5 ${wide} 0v${digits(foot - bladder - 6)}q0 6-6 6h-${digits(tenth(to - from - 12))}q-6 0-6-6z`,
      { fill: ink.tones.water, stroke: ink.static, 'stroke-width': 1 },
    ),
  ];
}

/** A tank open to the air: a lid that breathes, water up to the float that stops the pump. */
function openTank(left: number, width: number, ground: number, ink: Ink): Shape[] {
  const [from, to] = tankSides(left, width);
  const top = ground - 26;
  const level = top + 8;
  return [
    path('tank/water', block(from, level, to, ground - 1), { fill: ink.tones.water }),
    path(
      'tank/body',
      `${straight(
        [
          [from, top],
          [from, ground - 1],
          [to, ground - 1],
          [to, top],
        ],
        false,
      )}${stroke(from - 2, top - 2, to + 2, top - 2)}`,
      {
        fill: 'none',
        stroke: ink.static,
        'stroke-width': 1.4,
      },
    ),
    path('tank/float', `${stroke(from, top + 3, from + 7, level - 1)}${stroke(from, level, to, level)}`, {
      stroke: ink.ink2,
      'stroke-width': 1,
    }),
    circle('tank/ball', from + 8, level, 2.4, { fill: ink.paper, stroke: ink.ink2, 'stroke-width': 1.1 }),
  ];
}

/** A narrower house shows the switch alone before its tank [px]. */
const ROOMY = 60;

/** On the pipe before the tank: gauge, relief valve, and the switch; or on the wall the drive that sets the pump's speed. */
function controls(house: HouseFacts, left: number, width: number, ground: number, ink: Ink): Shape[] {
  const gauge = left + width * 0.36;
  const relief = left + width * 0.45;
  const roomy = width >= ROOMY;
  const box = left + width * (house.control === 'variable speed' ? 0.52 : roomy ? 0.55 : 0.47);
  const drawn = { fill: ink.paper, stroke: ink.ink2, 'stroke-width': 1.1 };
  const needle = roomy
    ? stroke(gauge, ground - 15, gauge + 1.7, ground - 16.7) + stroke(gauge, ground - 12, gauge, ground - 8)
    : '';
  return [
    ...(roomy ? [circle('gauge', gauge, ground - 15, 3.2, drawn)] : []),
    ...(roomy && house.reliefValve === true ? [reliefValve(relief, ground, ink)] : []),
    house.control === 'switch'
      ? path(
          'switch',
          `${needle}${stroke(box, ground - 12, box, ground - 8)}${roundBlock(box - 3, ground - 18, box + 3, ground - 12, 1)}${stroke(box - 1, ground - 16, box + 1, ground - 14)}`,
          drawn,
        )
      : path(
          'drive',
          `${needle}${stroke(box, ground - 15, box, ground - 8)}${roundBlock(box - 4, ground - 27, box + 4, ground - 15, 1)}M${digits(tenth(box - 2.5))} ${digits(tenth(ground - 20))}q1.2-3 2.5 0t2.5 0`,
          drawn,
        ),
  ];
}

/** Its body on the pipe, its spring housing above, its outlet turned down to the floor. */
function reliefValve(x: number, ground: number, ink: Ink): Shape {
  return path(
    'reliefValve',
    `${block(x - 1.6, ground - 14, x + 1.6, ground - 8)}${straight(
      [
        [x + 1.6, ground - 11.5],
        [x + 3, ground - 11.5],
        [x + 3, ground - 9],
      ],
      false,
    )}${stroke(x - 2.4, ground - 15.4, x + 2.4, ground - 15.4)}`,
    { fill: ink.tones.brass.base, stroke: ink.tones.brass.edge, 'stroke-width': 0.9 },
  );
}

/** Where there is no room for a house: on to it. */
function arrow(x: number, y: number, fill: string): Shape {
  return path(
    'house',
    polygon([
      [x, y - 6],
      [x + 11, y],
      [x, y + 6],
    ]),
    { fill },
  );
}
