/** House with tank and switch, a symbol without scale, where the line arrives at the section's edge. */
import { pipeRamp } from '../well/stage.ts';
import type { Facts, HouseFacts } from '../../model/facts.ts';
import { tankWater } from '../../model/figures/tankWater.ts';
import type { Solution } from '../../model/solution.ts';
import type { Box } from '../hatch/clip.ts';
import { drawGauge } from '../parts/gauge.ts';
import { drawFloat, drawOpenTank } from '../parts/openTank.ts';
import { drawPressureSwitch } from '../parts/pressureSwitch.ts';
import { drawReliefValve } from '../parts/reliefValve.ts';
import { drawTank } from '../parts/tank.ts';
import { drawWallBox } from '../parts/wallBox.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, polygon, polyline, roundLine, type Point } from '../shapes.ts';
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
  const tones = pipeRamp((facts.house.line ?? facts.dropPipe).material, ink.tones);
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
      path('walls', polyline([...walls, ...[...gable].reverse()]), faced(ink.paper, ink.ink2, 1.2)),
      path('roof', polyline(gable), faced('none', ink.ink2, 3)),
      path('riser/wall', riser, roundLine(tones.edge, 4)),
      path('riser/body', riser, roundLine(tones.base, 2.2)),
      ...drawTankSign(facts, place, frame),
      ...(kind === 'open tank' ? [] : controls(facts.house, place, frame)),
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

function tankSides({ left, width }: HousePlace): [number, number] {
  const half = Math.max(6.5, Math.min(10, width * 0.14));
  const middle = left + width * TANK_MIDDLE;
  return [middle - half, middle + half];
}

/** The tank as it is drawn large, a few pixels tall: air and water at their shares, or open with its float. */
function drawTankSign(facts: Facts, place: HousePlace, { y, ink: { tones } }: SectionFrame): Shape[] {
  const ground = y(0);
  const [from, to] = tankSides(place);
  const water = tankWater(facts);
  if (water !== null) {
    const box = { left: from, top: ground - 27, right: to, bottom: ground - 3 };
    return [drawTank(water, { box, floor: ground, tones, whole: false })];
  }
  const box = { left: from, top: ground - 26, right: to, bottom: ground - 1 };
  const level = box.top + 8;
  return [
    drawOpenTank({ box, level, tones, whole: false }),
    drawFloat([from, box.top + 3], { x: from + 8, y: level, r: 2.4 }, tones),
  ];
}

/** A narrower house shows the switch alone before its tank [px]. */
const ROOMY = 60;

/** On the pipe before the tank: gauge, relief valve, and the switch; or on the wall the drive that sets the pump's speed. */
function controls(house: HouseFacts, { left, width }: HousePlace, { y, ink: { tones } }: SectionFrame): Shape[] {
  const ground = y(0);
  const roomy = width >= ROOMY;
  const at = (share: number): number => left + width * share;
  const over = (x: number, half: number, top: number): Box => ({
    left: x - half,
    top: ground - top,
    right: x + half,
    bottom: ground - 8,
  });
  return [
    ...(roomy ? [drawGauge(over(at(0.36), 3.2, 18.2), tones)] : []),
    ...(roomy && house.reliefValve === true ? [drawReliefValve(over(at(0.45), 1.8, 17), tones, true)] : []),
    ...(house.control === 'switch'
      ? [drawPressureSwitch(over(at(roomy ? 0.55 : 0.47), 3, 18), tones)]
      : [drawWallBox('drive', { ...over(at(0.52), 4, 27), bottom: ground - 15 }, tones)]),
  ];
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
